#include "field/store/journal_file.h"

#include <algorithm>
#include <system_error>
#include <utility>

#include <unistd.h>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/folders.h"
#include "field/store/job_lock.h"
#include "field/store/lasting.h"
#include "field/store/listing.h"
#include "field/store/new_job.h"
#include "field/store/torn_tail.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Makes the folder if it is missing, or says why there can be no new job in it. Returns the
/// nearest folder that existed before.
Result<fs::path> make_job_folder(const fs::path& folder, Opening opening) {
    fs::path there = whole_path(folder);
    const Result<There> found = what_is(folder);
    if (!found) {
        return found.problem();
    }
    if (*found == There::folder) {
        const Result<bool> has_job = holds_journals(folder);
        if (!has_job) {
            return has_job.problem();
        }
        if (opening == Opening::new_job && *has_job) {
            return Problem{say("There is a job in {1} already.", shown(folder)),
                           say("Open that job, or choose another name.")};
        }
        return there;
    }
    if (*found != There::nothing) {
        return Problem{say("{1} is a file, not a folder.", shown(folder)),
                       say("Choose another name.")};
    }
    std::error_code error;
    while (!fs::exists(there, error) && there.has_relative_path()) {
        there = there.parent_path();
    }
    fs::create_directories(folder, error);
    if (error) {
        return disk_problem(phrase("created"), folder, error.value());
    }
    return there;
}

/// Two below the last number, so that a strike and its event still fit.
constexpr std::uint32_t sequence_most = 0xFFFF'FFFDU;

/// The highest sequence among the device's events; 0 when there are none.
std::uint32_t last_sequence(const std::vector<Event>& events, std::uint64_t device) {
    std::uint32_t last = 0;
    for (const Event& event : events) {
        last = event.id.device == device ? std::max(last, event.id.sequence) : last;
    }
    return last;
}

Problem not_saved(Problem problem, Remains remains = Remains::nothing) {
    problem.what = say("Not saved. {1}", problem.what);
    if (remains == Remains::perhaps) {
        problem.what =
            say("{1} It may come back when the job is opened next: look before you enter it again.",
                problem.what);
    }
    return problem;
}

/// What the folder holds, made to last: what a killed program wrote and never synced is synced
/// first.
Result<JobRecord> read_lasting(Disk& disk, const fs::path& folder) {
    const Result<bool> has_job = holds_journals(folder);
    if (!has_job) {
        return has_job.problem();
    }
    if (!*has_job) {
        return JobRecord{folder, {}, {}};
    }
    const auto not_lasting = make_journals_last(disk, folder);
    return not_lasting ? *not_lasting : read_job_folder(folder);
}

/// A strike of an event that was not saved but may be on the disk. It gets the next number.
Event strike_of(const Event& refused) {
    Event strike = refused;
    ++strike.id.sequence;
    stamp(strike, {&refused, 1}, wall_time(refused).ms);
    strike.by.clear();
    strike.supersedes = {refused.id};
    strike.fact = StruckFor{refused.id, StrikeReason::disk_failed};
    return strike;
}

}  // namespace

JournalFile::JournalFile(JobRecord record, const fs::path& named_in, std::uint64_t device, int lock,
                         const std::shared_ptr<Disk>& disk, std::function<void()> wake)
    : record_(std::move(record)),
      device_(device),
      lock_(lock),
      was_made_(named_in != whole_path(record_.folder)),
      own_(record_.folder, named_in, device, disk),
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
    std::error_code ignored;
    if (was_made_ && record_.events.empty()) {
        const auto journals = journals_in(record_.folder);
        for (const fs::path& journal : journals ? *journals : std::vector<fs::path>()) {
            if (own_number(journal, device_) > 0) {  // nothing in it was saved
                fs::remove(journal, ignored);
            }
        }
        fs::remove(record_.folder / ".lock", ignored);
        fs::remove(writer_file(record_.folder, device_), ignored);
        fs::remove(record_.folder, ignored);
    }
    if (strike_ && fs::exists(record_.folder, ignored)) {
        put(*strike_);
        settle();
    }
    ::close(lock_);
}

Result<std::shared_ptr<JournalFile>> JournalFile::open(const fs::path& job, std::uint64_t device,
                                                       Opening opening,
                                                       const std::shared_ptr<Disk>& disk,
                                                       std::function<void()> wake) {
    // A new job lies where it was named, whatever ends its name.
    const Result<fs::path> named = opening == Opening::new_job ? job : job_folder(job);
    if (!named) {
        return named.problem();
    }
    const fs::path& folder = *named;
    fs::path named_in = whole_path(folder);
    if (opening != Opening::existing) {
        const Result<fs::path> made = make_job_folder(folder, opening);
        if (!made) {
            return made.problem();
        }
        named_in = *made;
    } else if (const auto there = read_job_folder(job); !there) {
        return there.problem();  // before a .lock is left in a folder that holds no job
    }
    const Result<int> locked = lock_job(folder);
    if (!locked) {
        return locked.problem();
    }
    sweep_drafts(*disk, folder, Sweeping::locked, is_job_file);
    Result<std::uint64_t> writer = claim_writer(folder, device);
    if (!writer) {
        ::close(*locked);
        return writer.problem();
    }
    const Result<JobRecord> read = read_lasting(*disk, folder);
    if (!read) {
        ::close(*locked);
        return read.problem();
    }
    if (last_sequence(read->events, *writer) > sequence_most) {
        writer = new_writer(*disk, folder, device);  // a single damaged or hostile event is enough
        if (!writer) {
            ::close(*locked);
            return writer.problem();
        }
    }
    JobRecord record = *read;
    std::shared_ptr<JournalFile> opened(
        new JournalFile(std::move(record), named_in, *writer, *locked, disk, std::move(wake)));
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
    Event event{{device_, sequence}, {}, std::move(by), supersedes, std::move(fact)};
    const std::vector<EventId> seen = seen_.of(event);
    event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
    stamp(event, record_.events, wall_ms);
    return event;
}

void JournalFile::put(const Event& event) {
    const bool is_strike = strike_ && event.id == strike_->id;
    striking_ = striking_ || is_strike;
    last_sequence_ = std::max(last_sequence_, event.id.sequence);
    record_.events.push_back(event);
    if (event.supersedes.size() < supersedes_most) {
        seen_.add(event);
    } else {
        seen_ = Seen(record_.events);  // more events may disagree than it could name
    }
    saver_.hand_over(event.id.sequence, frame_of(event),
                     is_strike ? Bytes() : frame_of(strike_of(event)));
}

std::optional<EventId> JournalFile::refused() const {
    return strike_ ? std::optional(strike_->supersedes.front()) : std::nullopt;
}

Result<Event> JournalFile::hand_over(Fact fact, std::string by, std::vector<EventId> supersedes,
                                     std::int64_t wall_ms) {
    if (last_sequence_ > sequence_most) {
        return Problem{say("This device has no event numbers left in this job."),
                       say("Close the job and open it again: a new number is then drawn.")};
    }
    Event event = mint(last_sequence_ + 1, std::move(fact), std::move(by), supersedes, wall_ms);
    if (const auto problem = cannot_be_held(event)) {  // so that it is never called saved
        return not_saved(*problem);
    }
    if (strike_ && !striking_) {
        put(*strike_);
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
            take_back(one.sequence, one.not_saved->remains);
            taken_back = true;
        }
        if (striking_ && one.sequence == strike_->id.sequence) {
            striking_ = false;
            if (!one.not_saved) {
                strike_.reset();
            }
            continue;
        }
        back.push_back({{device_, one.sequence}, {}});
        if (one.not_saved) {
            back.back().problem = not_saved(one.not_saved->problem, one.not_saved->remains);
        }
    }
    return back;
}

/// Takes that event and all after it out of the record.
void JournalFile::take_back(std::uint32_t sequence, Remains remains) {
    const auto first =
        std::find_if(record_.events.begin(), record_.events.end(), [&](const Event& event) {
            return event.id == EventId{device_, sequence};
        });
    const Event strike = strike_of(*first);
    const bool was_strike = striking_ && sequence == strike_->id.sequence;
    record_.events.erase(first, record_.events.end());
    if (remains != Remains::nothing) {
        last_sequence_ = std::max(last_sequence_, strike.id.sequence);
    }
    if (remains == Remains::struck) {
        record_.events.push_back(strike);
    } else if (remains == Remains::perhaps && !was_strike) {
        strike_ = strike;
    }
    seen_ = Seen(record_.events);
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
