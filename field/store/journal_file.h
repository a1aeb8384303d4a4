// A job open for writing: its lock, this device's journal, and no event counted as saved before the
// disk has confirmed it.
//
//   JOB/.lock                    held while open
//   JOB/DEVICE.journal           only this device writes it
//   JOB/DEVICE-2.journal         begun after the disk failed on the one before
//   JOB/DEVICE-torn-812.bytes    what a last write left half done at byte 812
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/record/seen.h"
#include "engine/words/result.h"
#include "field/store/disk.h"
#include "field/store/job_folder.h"
#include "field/store/own_journal.h"
#include "field/store/saver.h"

namespace hemline {

/// What may be there: an existing job, no job yet (the folder is made), or either.
enum class Opening { existing, new_job, either };

/// What happened to an event that was handed over.
struct SaveReturned {
    EventId id;
    std::optional<Problem> problem;  ///< nothing: it is saved
};

class JournalFile {
  public:
    /// Opens a job (its folder, or a .journal file in it) and locks it against a second copy of the
    /// program. `device`: this tablet's number; a folder that was copied is written under a new
    /// number (writer.h). What is there is synced first, so that it can be called saved. A torn
    /// tail of this device's journal is moved into another file. `wake` as for Saver: with it,
    /// events are saved on a separate thread. Problem: says what to do.
    static Result<std::shared_ptr<JournalFile>> open(
        const std::filesystem::path& job, std::uint64_t device, Opening opening = Opening::existing,
        const std::shared_ptr<Disk>& disk = std::make_shared<Disk>(),
        std::function<void()> wake = {});

    /// Gives an event its id and time, adds to what it supersedes everything seen here about the
    /// same thing, and hands it over to be saved. It is in the record at once, but not saved before
    /// returned() says so. Problem: the journal cannot hold it; nothing was done.
    Result<Event> hand_over(Fact fact, std::string by, std::vector<EventId> supersedes,
                            std::int64_t wall_ms);
    /// What has come back since the last call, in order. An event that could not be saved is taken
    /// out of the record again, with all handed over after it; its bytes are cut off the file, or
    /// else a strike of it is saved. Where neither was possible, refused() says so, and the strike
    /// is saved before anything else.
    std::vector<SaveReturned> returned();
    /// An event that was not saved but whose bytes may be in a file, without a strike: do not copy
    /// it along from there.
    [[nodiscard]] std::optional<EventId> refused() const;
    /// Waits until nothing is under way.
    void settle() { saver_.settle(); }

    /// Adds an event and waits until it is saved. Problem: it is not saved, and why. Not while
    /// others are under way.
    Result<Event> append(Fact fact, std::string by, std::vector<EventId> supersedes,
                         std::int64_t wall_ms);

    /// Takes in events that CrewFolder saved in the job's folder. Not while others are under way.
    void take_in(const std::vector<Event>& events);

    /// All events so far, in order, those handed over here last; and what was set aside.
    [[nodiscard]] const JobRecord& record() const { return record_; }
    [[nodiscard]] std::uint64_t device() const { return device_; }

    JournalFile(const JournalFile&) = delete;
    JournalFile& operator=(const JournalFile&) = delete;
    /// Waits until nothing is under way. Removes the folder if it was made for a job of which
    /// nothing was saved; strikes what refused() says, if the disk takes it now.
    ~JournalFile();

  private:
    JournalFile(JobRecord record, const std::filesystem::path& named_in, std::uint64_t device,
                int lock, const std::shared_ptr<Disk>& disk, std::function<void()> wake);

    std::optional<Problem> move_torn_tails(Disk& disk);
    [[nodiscard]] Event mint(std::uint32_t sequence, Fact fact, std::string by,
                             const std::vector<EventId>& supersedes, std::int64_t wall_ms) const;
    void put(const Event& event);
    void take_back(std::uint32_t sequence, Remains remains);

    JobRecord record_;
    std::uint64_t device_;
    int lock_;
    bool was_made_;  ///< the folder, for this job
    OwnJournal own_;
    std::uint32_t last_sequence_ = 0;  ///< that was given to an event, saved or not
    std::optional<Event> strike_;      ///< of refused(), to be saved before anything else
    bool striking_ = false;            ///< and under way
    Seen seen_;                        ///< what the next event about each thing supersedes
    Saver saver_;                      ///< declared last: it ends before what it writes to
};

}  // namespace hemline
