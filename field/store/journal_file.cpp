#include "field/store/journal_file.h"

#include <algorithm>
#include <system_error>
#include <utility>

#include <unistd.h>

#include "engine/record/job.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/folders.h"
#include "field/store/job_lock.h"
#include "field/store/lasting.h"
#include "field/store/torn_tail.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Makes the folder where it is not there, or says why there can be no new job in it. Returns the
/// nearest folder that was there already.
Result<fs::path> make_job_folder(const fs::path& folder, Opening opening) {
    std::error_code error;
    fs::path there = whole_path(folder);
    if (fs::exists(folder, error)) {
        if (!fs::is_directory(folder, error)) {
            return Problem{say("{1} is a file, not a folder.", shown(folder)),
                           say("Choose another name.")};
        }
        if (opening == Opening::new_job && !journals_in(folder).empty()) {
            return Problem{say("There is a job in {1} already.", shown(folder)),
                           say("Open that job, or choose another name.")};
        }
        return there;
    }
    while (!fs::exists(there, error) && there.has_relative_path()) {
        there = there.parent_path();
    }
    fs::create_directories(folder, error);
    if (error) {
        return disk_problem(phrase("created"), folder, error.value());
    }
    return there;
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

Problem not_saved(Problem problem, Remains remains = Remains::nothing) {
    problem.what = say("Not saved. {1}", problem.what);
    if (remains == Remains::perhaps) {
        problem.what =
            say("{1} It may come back when the job is opened next: look before you enter it again.",
                problem.what);
    }
    return problem;
}

/// Says that an event which may be on the disk all the same does not count. Its number is the next.
Event strike_of(const Event& refused) {
    Event strike = refused;
    ++strike.id.sequence;
    strike.when = time_after(refused.when, refused.when.wall_ms);
    strike.by.clear();
    strike.supersedes = {refused.id};
    strike.fact = Struck{refused.id, phrase("the disk failed while this was being saved")};
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
    std::error_code ignored;
    if (was_made_ && record_.events.empty()) {
        for (const fs::path& journal : journals_in(record_.folder)) {
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
    const fs::path folder = job_folder(job);
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
    const Result<std::uint64_t> writer = claim_writer(folder, device);
    if (!writer) {
        ::close(*locked);
        return writer.problem();
    }
    JobRecord record;
    record.folder = folder;
    if (!journals_in(folder).empty()) {
        const auto not_lasting = make_journals_last(*disk, folder);
        Result<JobRecord> read = not_lasting ? *not_lasting : read_job_folder(folder);
        if (!read) {
            ::close(*locked);
            return read.problem();
        }
        record = *read;
    }
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
    const HybridTime when = latest_ ? time_after(*latest_, wall_ms) : HybridTime{wall_ms, 0};
    std::vector<EventId> all = supersedes;
    for (const EventId seen : seen_.of(fact)) {
        if (std::count(supersedes.begin(), supersedes.end(), seen) == 0) {
            all.push_back(seen);
        }
    }
    return {{device_, sequence}, when, std::move(by), std::move(all), std::move(fact)};
}

void JournalFile::put(const Event& event) {
    const bool is_strike = strike_ && event.id == strike_->id;
    striking_ = striking_ || is_strike;
    last_sequence_ = std::max(last_sequence_, event.id.sequence);
    record_.events.push_back(event);
    latest_ = latest_ ? std::max(*latest_, event.when) : event.when;
    seen_.add(event);
    saver_.hand_over(event.id.sequence, frame_of(event),
                     is_strike ? Bytes() : frame_of(strike_of(event)));
}

std::optional<EventId> JournalFile::refused() const {
    return strike_ ? std::optional(strike_->supersedes.front()) : std::nullopt;
}

Result<Event> JournalFile::hand_over(Fact fact, std::string by, std::vector<EventId> supersedes,
                                     std::int64_t wall_ms) {
    if (last_sequence_ > sequence_most) {
        return Problem{
            say("This device has no event numbers left in this job."),
            say("Remove the device file in hemline's folder: a new number is then drawn.")};
    }
    Event event = mint(last_sequence_ + 1, std::move(fact), std::move(by), supersedes, wall_ms);
    if (const auto problem = cannot_be_held(event)) {
        return not_saved(*problem);
    }
    if (strike_ && !striking_) {
        put(*strike_);
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

/// Out of the record with that event and all after it.
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
    look_through();
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
