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
    look_through();
    for (const Event& event : record_.events) {
        if (event.id.device == device_) {
            last_sequence_ = std::max(last_sequence_, event.id.sequence);
        }
    }
}

void JournalFile::look_through() {
    seen_ = Seen(record_.events);
    latest_.reset();
    for (const Event& event : record_.events) {
        latest_ = latest_ ? std::max(*latest_, event.when) : event.when;
    }
}

void JournalFile::take_in(const std::vector<Event>& events) {
    record_.events.insert(record_.events.end(), events.begin(), events.end());
    record_.events = in_order(std::move(record_.events));
    look_through();
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
    const Result<std::uint64_t> writer = claim_writer(folder, device);
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
    const HybridTime when = latest_ ? time_after(*latest_, wall_ms) : HybridTime{wall_ms, 0};
    Event event{{device_, sequence}, when, std::move(by), supersedes, std::move(fact)};
    const std::vector<EventId> seen = seen_.of(event);
    event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
    return event;
}

void JournalFile::put(const Event& event) {
    last_sequence_ = event.id.sequence;
    record_.events.push_back(event);
    latest_ = latest_ ? std::max(*latest_, event.when) : event.when;
    seen_.add(event);
    saver_.hand_over(event.id.sequence, frame_of(event));
}

Result<Event> JournalFile::hand_over(Fact fact, std::string by, std::vector<EventId> supersedes,
                                     std::int64_t wall_ms) {
    if (last_sequence_ > sequence_most) {
        return Problem{
            say("This device has no event numbers left in this job."),
            say("Remove the device file in hemline's folder: a new number is then drawn.")};
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
        event.when = time_after(*latest_, wall_ms);
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
    look_through();
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
