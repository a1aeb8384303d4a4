#include "field/store/journal_file.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/open_file.h"
#include "field/store/torn_tail.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// The place of a journal among this device's own: 1 for DEVICE.journal, 2 for DEVICE-2.journal; 0
/// when another device wrote it.
int own_number(const fs::path& file, std::uint64_t device) {
    const std::string stem = file.stem().string();
    const std::string own = print_device(device);
    if (stem == own) {
        return 1;
    }
    const bool is_own = stem.size() > own.size() + 1 && stem.size() <= own.size() + 7 &&
                        stem.compare(0, own.size() + 1, own + "-") == 0;
    int number = 0;
    for (std::size_t i = own.size() + 1; is_own && i < stem.size(); ++i) {
        if (stem[i] < '0' || stem[i] > '9') {
            return 0;
        }
        number = number * 10 + (stem[i] - '0');
    }
    return number;
}

fs::path own_file(const fs::path& folder, std::uint64_t device, int number) {
    return folder /
           (print_device(device) + (number > 1 ? "-" + std::to_string(number) : "") + ".journal");
}

/// The newest of this device's own journals; 0 when it has none.
int newest_own(const fs::path& folder, std::uint64_t device) {
    int newest = 0;
    for (const fs::path& file : journals_in(folder)) {
        newest = std::max(newest, own_number(file, device));
    }
    return newest;
}

/// Makes the folder and its name last, or says why there can be no new job in it.
std::optional<Problem> make_job_folder(const fs::path& folder, Opening opening, Disk& disk) {
    std::error_code error;
    if (fs::exists(folder, error)) {
        if (!fs::is_directory(folder, error)) {
            return Problem{shown(folder) + " is a file, not a folder.", "Choose another name."};
        }
        if (opening == Opening::new_job && !journals_in(folder).empty()) {
            return Problem{"There is a job in " + shown(folder) + " already.",
                           "Open that job, or choose another name."};
        }
        return {};
    }
    fs::create_directories(folder, error);
    if (error) {
        return disk_problem("created", folder, error.value());
    }
    const fs::path whole = fs::absolute(folder, error).lexically_normal();
    const fs::path named = whole.has_filename() ? whole : whole.parent_path();
    return sync_folder(disk, named.parent_path());
}

/// The locked file, or why the job cannot be had.
Result<int> lock(const fs::path& folder) {
    const fs::path file = folder / ".lock";
    const int opened = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (opened < 0) {
        return disk_problem("opened for writing", file, errno);
    }
    if (::flock(opened, LOCK_EX | LOCK_NB) != 0) {
        const int error = errno;
        ::close(opened);
        if (error == EWOULDBLOCK) {
            return Problem{
                "The job in " + shown(folder) + " is open in another copy of the program.",
                "Close it there, then open it here."};
        }
        return disk_problem("locked", file, error);
    }
    return opened;
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
    const std::string why = back.set_aside.empty() ? "another one" : back.set_aside.front().why;
    return Problem{"The journal cannot hold this: it would be " + why + ".",
                   "Say it shorter, in plain text, with lengths that a roof has."};
}

Problem not_saved(Problem problem) {
    problem.what = "Not saved. " + problem.what;
    return problem;
}

}  // namespace

JournalFile::JournalFile(JobRecord record, std::uint64_t device, int lock,
                         std::shared_ptr<Disk> disk)
    : record_(std::move(record)), device_(device), lock_(lock), disk_(std::move(disk)) {
    for (const Event& event : record_.events) {
        if (event.id.device == device_) {
            last_sequence_ = std::max(last_sequence_, event.id.sequence);
        }
    }
}

JournalFile::~JournalFile() {
    if (file_ >= 0) {
        ::close(file_);
    }
    ::close(lock_);
}

Result<std::shared_ptr<JournalFile>> JournalFile::open(const fs::path& job, std::uint64_t device,
                                                       Opening opening,
                                                       std::shared_ptr<Disk> disk) {
    const fs::path folder = job_folder(job);
    if (opening != Opening::existing) {
        if (const auto problem = make_job_folder(folder, opening, *disk)) {
            return *problem;
        }
    } else if (const auto there = read_job_folder(job); !there) {
        return there.problem();  // before a .lock is left in a folder that holds no job
    }
    const Result<int> locked = lock(folder);
    if (!locked) {
        return locked.problem();
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
        new JournalFile(std::move(record), device, *locked, std::move(disk)));
    if (const auto problem = opened->move_torn_tails()) {
        return *problem;
    }
    return opened;
}

std::optional<Problem> JournalFile::move_torn_tails() {
    for (FileSetAside& set_aside : record_.set_aside) {
        if (own_number(set_aside.file, device_) == 0) {
            continue;
        }
        const Result<fs::path> kept = move_torn_tail(*disk_, set_aside);
        if (!kept) {
            return kept.problem();
        }
        set_aside.kept_in = *kept;
    }
    return {};
}

std::optional<Problem> JournalFile::begin_file() {
    int number = newest_own(record_.folder, device_);
    const bool goes_on = number > 0 && !unsure_;
    if (!goes_on) {
        ++number;
    }
    path_ = own_file(record_.folder, device_, number);
    file_ = disk_->open(path_, O_WRONLY | O_APPEND | (goes_on ? 0 : O_CREAT | O_EXCL));
    if (file_ < 0) {
        return disk_problem("opened for writing", path_, errno);
    }
    holds_saved_ = goes_on;
    if (goes_on) {
        return {};
    }
    std::optional<Problem> problem = sync_folder(*disk_, record_.folder);
    if (problem) {
        close_file();
    }
    return problem;
}

void JournalFile::close_file() {
    ::close(file_);
    file_ = -1;
    if (!holds_saved_) {
        ::unlink(path_.c_str());
    }
}

Event JournalFile::mint(Fact fact, std::string by, std::vector<EventId> supersedes,
                        std::int64_t wall_ms) const {
    const HybridTime when = next_time(record_.events, wall_ms);
    return {
        {device_, last_sequence_ + 1}, when, std::move(by), std::move(supersedes), std::move(fact)};
}

std::optional<Problem> JournalFile::save(const Event& event) {
    if (file_ < 0) {
        if (auto problem = begin_file()) {
            return problem;
        }
    }
    last_sequence_ = event.id.sequence;
    int error = write_all(*disk_, file_, frame_of(event));
    if (error == 0 && disk_->sync(file_) != 0) {
        error = errno;
    }
    if (error != 0) {
        close_file();
        return disk_problem("written", path_, error);
    }
    holds_saved_ = true;
    record_.events.push_back(event);
    return {};
}

Result<Event> JournalFile::append(Fact fact, std::string by, std::vector<EventId> supersedes,
                                  std::int64_t wall_ms) {
    if (last_sequence_ > sequence_most) {
        return Problem{"This device has no event numbers left in this job.",
                       "Remove the device file in hemline's folder: a new number is then drawn."};
    }
    if (unsure_) {
        const Event strike = mint(Struck{*unsure_, "the disk failed while this was being saved"},
                                  {}, {*unsure_}, wall_ms);
        if (const auto problem = save(strike)) {
            return not_saved(*problem);
        }
        unsure_.reset();
    }
    Event event = mint(std::move(fact), std::move(by), std::move(supersedes), wall_ms);
    if (const auto problem = cannot_be_held(event)) {
        return not_saved(*problem);
    }
    if (const auto problem = save(event)) {
        if (last_sequence_ == event.id.sequence) {
            unsure_ = event.id;
        }
        return not_saved(*problem);
    }
    return event;
}

}  // namespace hemline
