// This device's journal files in a job's folder: the file being written, and the next file after
// the disk failed on it.
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

/// The number of a journal among those of the device: 1 for DEVICE.journal, 2 for DEVICE-2.journal;
/// 0 when another device wrote it.
int own_number(const std::filesystem::path& file, std::uint64_t device);

/// From the root, without "..", without a slash at the end.
std::filesystem::path whole_path(const std::filesystem::path& folder);

/// What may be on the disk when a frame could not be saved.
enum class Remains {
    nothing,  ///< nothing: it was never written, or is certainly cut off
    struck,   ///< perhaps the frame, and certainly a strike of it
    perhaps,  ///< perhaps the frame, and no strike of it
};

/// Why a frame is not saved.
struct NotSaved {
    Problem problem;
    Remains remains = Remains::nothing;
};

/// Writes and syncs on the calling thread; only one thread may call it at a time.
class OwnJournal {
  public:
    /// `named_in`: a whole_path(), the nearest folder whose name lasts: the job's, or a folder
    /// above it where that was just made.
    OwnJournal(std::filesystem::path folder, std::filesystem::path named_in, std::uint64_t device,
               std::shared_ptr<Disk> disk);
    OwnJournal(const OwnJournal&) = delete;
    OwnJournal& operator=(const OwnJournal&) = delete;
    ~OwnJournal();

    /// Appends a frame and syncs it; the first call opens or makes the file. What could not be
    /// saved is cut off again before this returns; where that is not certain, `strike` (a frame
    /// that says it does not count; empty: none) is saved in the next file. A file that failed is
    /// never used again: the next frame begins a new file.
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
    int file_ = -1;               ///< −1: the next save opens or makes a file
    std::filesystem::path path_;  ///< of file_
    bool holds_saved_ = false;    ///< file_ holds a frame that was called saved
    bool failed_ = false;         ///< the newest file failed
};

}  // namespace hemline
