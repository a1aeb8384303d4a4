#include "field/store/journal_file.h"

#include <algorithm>
#include <system_error>
#include <utility>

#include <unistd.h>

#include "engine/record/job.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_lock.h"
#include "field/store/torn_tail.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Makes the folder where it is not there, or says why there can be no new job in it.
Result<JobFolder> make_job_folder(const fs::path& folder, Opening opening) {
    std::error_code error;
    if (fs::exists(folder, error)) {
        if (!fs::is_directory(folder, error)) {
            return Problem{say("{1} is a file, not a folder.", shown(folder)),
                           say("Choose another name.")};
        }
        if (opening == Opening::new_job && !journals_in(folder).empty()) {
            return Problem{say("There is a job in {1} already.", shown(folder)),
                           say("Open that job, or choose another name.")};
        }
        return JobFolder::there;
    }
    fs::create_directories(folder, error);
    if (error) {
        return disk_problem(phrase("created"), folder, error.value());
    }
    return JobFolder::made;
}

/// The last number but two: a strike and its event still fit.
constexpr std::uint32_t sequence_most = 0xFFFF'FFFDU;

/// Of the device's events; 0 when there are none.
std::uint32_t last_sequence(const std::vector<Event>& events, std::uint64_t device) {
    std::uint32_t last = 0;
    for (const Event& event : events) {
        last = event.id.device == device ? std::max(last, event.id.sequence) : last;
    }
    return last;
}

/// What could not be read back must never be called saved.
std::optional<Problem> cannot_be_held(const Event& event) {
    const Bytes frame = frame_of(event);
    const JournalRead back = read_journal(frame);
    if (back.events.size() == 1 && frame_of(back.events.front()) == frame) {
        return {};
    }
    const Text why = back.set_aside.empty() ? say("another one") : back.set_aside.front().why;
    return Problem{say("The journal cannot hold this: it would be {1}.", why),
                   say("Say it shorter, in plain text, with lengths that a roof has.")};
}

Problem not_saved(Problem problem) {
    problem.what = say("Not saved. {1}", problem.what);
    return problem;
}

}  // namespace

JournalFile::JournalFile(JobRecord record, JobFolder was, std::uint64_t device, int lock,
                         const std::shared_ptr<Disk>& disk, std::function<void()> wake)
    : record_(std::move(record)),
      device_(device),
      lock_(lock),
      was_(was),
      own_(record_.folder, was, device, disk),
      saver_(own_, std::move(wake)) {
    seen_ = Seen(record_.events);
    last_sequence_ = last_sequence(record_.events, device_);
}

void JournalFile::take_in(const std::vector<Event>& events) {
    record_.events.insert(record_.events.end(), events.begin(), events.end());
    record_.events = in_order(std::move(record_.events));
    seen_ = Seen(record_.events);
}

JournalFile::~JournalFile() {
    settle();  // before another program may have the job
    returned();
    if (was_ == JobFolder::made && record_.events.empty()) {
        std::error_code not_empty;
        fs::remove(record_.folder / ".lock", not_empty);
        fs::remove(writer_file(record_.folder, device_), not_empty);
        fs::remove(record_.folder, not_empty);
    }
    ::close(lock_);
}

Result<std::shared_ptr<JournalFile>> JournalFile::open(const fs::path& job, std::uint64_t device,
                                                       Opening opening,
                                                       const std::shared_ptr<Disk>& disk,
                                                       std::function<void()> wake) {
    const fs::path folder = job_folder(job);
    JobFolder was = JobFolder::there;
    if (opening != Opening::existing) {
        const Result<JobFolder> made = make_job_folder(folder, opening);
        if (!made) {
            return made.problem();
        }
        was = *made;
    } else if (const auto there = read_job_folder(job); !there) {
        return there.problem();  // before a .lock is left in a folder that holds no job
    }
    const Result<int> locked = lock_job(folder);
    if (!locked) {
        return locked.problem();
    }
    Result<std::uint64_t> writer = claim_writer(folder, device);
    if (!writer) {
        ::close(*locked);
        return writer.problem();
    }
    JobRecord record;
    record.folder = folder;
    if (!journals_in(folder).empty()) {
        Result<JobRecord> read = read_job_folder(folder);
        if (!read) {
            ::close(*locked);
            return read.problem();
        }
        record = *read;
    }
    if (last_sequence(record.events, *writer) > sequence_most) {
        writer = new_writer(*disk, folder, device);  // one damaged or hostile event is enough
        if (!writer) {
            ::close(*locked);
            return writer.problem();
        }
    }
    std::shared_ptr<JournalFile> opened(
        new JournalFile(std::move(record), was, *writer, *locked, disk, std::move(wake)));
    if (const auto problem = opened->move_torn_tails(*disk)) {
        return *problem;
    }
    return opened;
}

std::optional<Problem> JournalFile::move_torn_tails(Disk& disk) {
    for (FileSetAside& set_aside : record_.set_aside) {
        if (own_number(set_aside.file, device_) == 0) {
            continue;
        }
        const Result<fs::path> kept = move_torn_tail(disk, set_aside);
        if (!kept) {
            return kept.problem();
        }
        set_aside.kept_in = *kept;
    }
    return {};
}

Event JournalFile::mint(std::uint32_t sequence, Fact fact, std::string by,
                        const std::vector<EventId>& supersedes, std::int64_t wall_ms) const {
    std::vector<EventId> all = supersedes;
    for (const EventId seen : seen_.of(fact)) {
        if (std::count(supersedes.begin(), supersedes.end(), seen) == 0) {
            all.push_back(seen);
        }
    }
    // What was made apart more often than an event may name is named by the next one.
    all.resize(std::min(all.size(), std::max(supersedes.size(), supersedes_most)));
    Event event{{device_, sequence}, {}, std::move(by), std::move(all), std::move(fact)};
    stamp(event, record_.events, wall_ms);
    return event;
}

void JournalFile::put(const Event& event) {
    last_sequence_ = event.id.sequence;
    record_.events.push_back(event);
    if (event.supersedes.size() < supersedes_most) {
        seen_.add(event);
    } else {
        seen_ = Seen(record_.events);  // more may stand apart than it could name
    }
    saver_.hand_over(event.id.sequence, frame_of(event));
}

Result<Event> JournalFile::hand_over(Fact fact, std::string by, std::vector<EventId> supersedes,
                                     std::int64_t wall_ms) {
    if (last_sequence_ > sequence_most) {
        return Problem{say("This device has no event numbers left in this job."),
                       say("Close the job and open it again: a new number is then drawn.")};
    }
    const bool strikes = unsure_ && !strike_;
    Event event = mint(last_sequence_ + (strikes ? 2 : 1), std::move(fact), std::move(by),
                       supersedes, wall_ms);
    if (const auto problem = cannot_be_held(event)) {
        return not_saved(*problem);
    }
    if (strikes) {
        strike_ = last_sequence_ + 1;
        put(mint(*strike_, Struck{*unsure_, phrase("the disk failed while this was being saved")},
                 {}, {*unsure_}, wall_ms));
        stamp(event, record_.events, wall_ms);
    }
    put(event);
    return event;
}

std::vector<SaveReturned> JournalFile::returned() {
    std::vector<SaveReturned> back;
    bool taken_back = false;
    for (const Returned& one : saver_.returned()) {
        if (one.not_saved && !taken_back) {
            take_back(one.sequence, one.not_saved->may_be_there);
            taken_back = true;
        }
        if (one.sequence == strike_) {
            strike_.reset();
            if (!one.not_saved) {
                unsure_.reset();
            }
            continue;
        }
        back.push_back({{device_, one.sequence}, {}});
        if (one.not_saved) {
            back.back().problem = not_saved(one.not_saved->problem);
        }
    }
    return back;
}

/// Out of the record with that event and all after it, whose numbers are free again.
void JournalFile::take_back(std::uint32_t sequence, bool may_be_there) {
    const EventId first{device_, sequence};
    record_.events.erase(std::find_if(record_.events.begin(), record_.events.end(),
                                      [&](const Event& event) { return event.id == first; }),
                         record_.events.end());
    seen_ = Seen(record_.events);
    last_sequence_ = may_be_there ? sequence : sequence - 1;
    if (may_be_there && sequence != strike_) {
        unsure_ = first;
    }
}

Result<Event> JournalFile::append(Fact fact, std::string by, std::vector<EventId> supersedes,
                                  std::int64_t wall_ms) {
    Result<Event> event = hand_over(std::move(fact), std::move(by), std::move(supersedes), wall_ms);
    settle();
    for (const SaveReturned& back : returned()) {
        if (back.problem) {
            return *back.problem;
        }
    }
    return event;
}

}  // namespace hemline
