// This device's own journal files in a job's folder: the one that is written, and the next one
// after the disk failed on it.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>

#include "engine/result.h"
#include "field/store/disk.h"

namespace hemline {

/// The place of a journal among the device's own: 1 for DEVICE.journal, 2 for DEVICE-2.journal; 0
/// when another device wrote it.
int own_number(const std::filesystem::path& file, std::uint64_t device);

/// Why bytes are not saved, and whether some of them may have reached the file all the same.
struct NotSaved {
    Problem problem;
    bool may_be_there = false;
};

/// Whether the job's folder was made just now: then its name must be made to last too.
enum class JobFolder { there, made };

/// Writes and syncs, on whichever thread calls it; not on two at once.
class OwnJournal {
  public:
    OwnJournal(std::filesystem::path folder, JobFolder was, std::uint64_t device,
               std::shared_ptr<Disk> disk);
    OwnJournal(const OwnJournal&) = delete;
    OwnJournal& operator=(const OwnJournal&) = delete;
    ~OwnJournal();

    /// Appends one frame and syncs it; the file is opened or made by the first. Nothing is tried
    /// again on a file that failed: the next frame begins a new one.
    std::optional<NotSaved> save(std::span<const std::uint8_t> frame);

  private:
    std::optional<Problem> open();
    std::optional<Problem> make_names_last();
    void close();

    std::filesystem::path folder_;
    JobFolder was_;
    std::uint64_t device_;
    std::shared_ptr<Disk> disk_;
    int file_ = -1;               ///< −1: the next save opens or makes one
    std::filesystem::path path_;  ///< of file_
    bool holds_saved_ = false;    ///< file_ holds a frame that was called saved
    bool failed_ = false;         ///< the newest file failed
};

}  // namespace hemline
