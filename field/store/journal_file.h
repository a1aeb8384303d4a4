// A job open for writing: one lock, this device's own journal, and no event taken for saved before
// the disk has said so.
//
//   JOB/.lock                    held while open
//   JOB/DEVICE.journal           only this device writes it
//   JOB/DEVICE-2.journal         begun after the disk failed on the one before
//   JOB/DEVICE-torn-812.bytes    what a last write left half done at byte 812
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/result.h"
#include "field/store/disk.h"
#include "field/store/job_folder.h"

namespace hemline {

/// Which job may be there: one that exists, none yet (the folder is made), or either.
enum class Opening { existing, new_job, either };

class JournalFile {
  public:
    /// Opens a job (its folder, or a .journal file in it) and locks it against a second copy of the
    /// program. A torn tail of this device's own journal is moved into a file of its own. Problem:
    /// says what to do.
    static Result<std::shared_ptr<JournalFile>> open(
        const std::filesystem::path& job, std::uint64_t device, Opening opening = Opening::existing,
        std::shared_ptr<Disk> disk = std::make_shared<Disk>());

    /// Adds one event: gives it its id and time, writes it and syncs it, and only then returns it.
    /// Problem: it is not saved, and why. After the disk failed nothing is tried again on that
    /// file: the next append begins a new one, and strikes there the event that failed, in case its
    /// bytes did reach the disk.
    Result<Event> append(Fact fact, std::string by, std::vector<EventId> supersedes,
                         std::int64_t wall_ms);

    /// All events so far, in order, those appended here at the end; and what was set aside.
    [[nodiscard]] const JobRecord& record() const { return record_; }
    [[nodiscard]] std::uint64_t device() const { return device_; }

    JournalFile(const JournalFile&) = delete;
    JournalFile& operator=(const JournalFile&) = delete;
    ~JournalFile();

  private:
    JournalFile(JobRecord record, std::uint64_t device, int lock, std::shared_ptr<Disk> disk);

    std::optional<Problem> move_torn_tails();
    std::optional<Problem> begin_file();
    std::optional<Problem> save(const Event& event);
    [[nodiscard]] Event mint(Fact fact, std::string by, std::vector<EventId> supersedes,
                             std::int64_t wall_ms) const;
    void close_file();

    JobRecord record_;
    std::uint64_t device_;
    int lock_;
    std::shared_ptr<Disk> disk_;
    int file_ = -1;                    ///< −1: the next append begins one
    std::filesystem::path path_;       ///< of file_
    bool holds_saved_ = false;         ///< file_ holds an event that was called saved
    std::uint32_t last_sequence_ = 0;  ///< of the last event that was written, saved or not
    std::optional<EventId> unsure_;    ///< not saved, but its bytes may be there
};

}  // namespace hemline
