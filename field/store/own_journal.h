// This device's own journal files in a job's folder: the one that is written, and the next one
// after the disk failed on it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>

#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// The place of a journal among the device's own: 1 for DEVICE.journal, 2 for DEVICE-2.journal; 0
/// when another device wrote it.
int own_number(const std::filesystem::path& file, std::uint64_t device);

/// From the root, without "..", without a slash at the end.
std::filesystem::path whole_path(const std::filesystem::path& folder);

/// What may be on the disk of a frame that is not saved.
enum class Remains {
    nothing,  ///< it was never written, or is cut off for certain
    struck,   ///< perhaps the frame, and for certain a strike of it
    perhaps,  ///< perhaps the frame, and nothing that says it does not count
};

/// Why a frame is not saved.
struct NotSaved {
    Problem problem;
    Remains remains = Remains::nothing;
};

/// Writes and syncs, on whichever thread calls it; not on two at once.
class OwnJournal {
  public:
    /// `named_in`: a whole_path(), the nearest folder whose own name lasts: the job's, or one above
    /// it where that was made just now.
    OwnJournal(std::filesystem::path folder, std::filesystem::path named_in, std::uint64_t device,
               std::shared_ptr<Disk> disk);
    OwnJournal(const OwnJournal&) = delete;
    OwnJournal& operator=(const OwnJournal&) = delete;
    ~OwnJournal();

    /// Appends one frame and syncs it; the file is opened or made by the first. What could not be
    /// saved is cut off again before this returns; where that is not certain, `strike` (a frame
    /// that says it does not count; empty: there is none) is saved in the next file. Nothing is
    /// tried again on a file that failed: the next frame begins a new one.
    std::optional<NotSaved> save(std::span<const std::uint8_t> frame,
                                 std::span<const std::uint8_t> strike);

  private:
    std::optional<Problem> open();
    std::optional<Problem> make_names_last();
    bool cut_off(std::size_t size);
    void close();

    std::filesystem::path folder_, named_in_;
    std::uint64_t device_;
    std::shared_ptr<Disk> disk_;
    int file_ = -1;               ///< −1: the next save opens or makes one
    std::filesystem::path path_;  ///< of file_
    bool holds_saved_ = false;    ///< file_ holds a frame that was called saved
    bool failed_ = false;         ///< the newest file failed
};

}  // namespace hemline
