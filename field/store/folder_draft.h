// Builds a job's folder so that it is there completely or not at all: built beside its name,
// synced, and moved into place.
//
//   jobs/.House.new/   being built: the list of jobs skips it
//   jobs/House/        all of it
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string_view>

#include "engine/words/result_declared.h"
#include "engine/words/text.h"
#include "field/store/disk.h"

namespace hemline {

class FolderDraft {
  public:
    /// Makes and locks the folder to build in; what a killed program left of an earlier try is
    /// removed. Problem: `folder` holds a job or anything else than such remains; another program
    /// is building it; it cannot be made.
    static Result<std::shared_ptr<FolderDraft>> begin(Disk& disk,
                                                      const std::filesystem::path& folder);

    /// Where to build.
    [[nodiscard]] const std::filesystem::path& path() const { return draft_; }
    [[nodiscard]] bool cleaned() const { return cleaned_; }
    /// For a JournalFile, which takes the lock itself.
    void unlock();
    /// Moves it into place; the files in it must be synced already. Problem: `folder` is as it was.
    std::optional<Problem> put_in_place();

    FolderDraft(const FolderDraft&) = delete;
    FolderDraft& operator=(const FolderDraft&) = delete;
    /// Removes the draft if it was not moved into place.
    ~FolderDraft();

  private:
    FolderDraft(Disk& disk, std::filesystem::path folder);
    std::optional<Problem> look_at_place();
    std::optional<Problem> make();
    std::optional<Problem> clear_place();

    Disk& disk_;
    std::filesystem::path folder_, draft_;
    int lock_ = -1;
    int place_lock_ = -1;  ///< lock of `folder`, if remains are in it
    bool made_ = false;    ///< the draft is ours
    bool cleaned_ = false;
    bool in_place_ = false;
};

/// Whether a folder of that name is being built.
bool is_folder_draft(std::string_view name);

/// Whether a folder holds only what a program left when it was stopped before it saved the first
/// event, and no program has it open. Problem: it cannot be listed.
Result<bool> holds_only_remains(const std::filesystem::path& folder);

/// The notice about remains that were removed.
Text said_of_remains(const std::filesystem::path& folder);

}  // namespace hemline
