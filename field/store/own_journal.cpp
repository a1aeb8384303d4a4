#include "field/store/own_journal.h"

#include <algorithm>
#include <cerrno>
#include <string>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/open_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

fs::path own_file(const fs::path& folder, std::uint64_t device, int number) {
    return folder /
           (print_device(device) + (number > 1 ? "-" + std::to_string(number) : "") + ".journal");
}

/// The newest of this device's journals; 0 when it has none.
Result<int> newest_own(const fs::path& folder, std::uint64_t device) {
    const Result<std::vector<fs::path>> journals = journals_in(folder);
    if (!journals) {
        return journals.problem();
    }
    int newest = 0;
    for (const fs::path& file : *journals) {
        newest = std::max(newest, own_number(file, device));
    }
    return newest;
}

std::optional<std::size_t> size_of(int file) {
    struct stat about {};
    return ::fstat(file, &about) == 0 ? std::optional(static_cast<std::size_t>(about.st_size))
                                      : std::nullopt;
}

}  // namespace

fs::path whole_path(const fs::path& folder) {
    std::error_code error;
    const fs::path whole = fs::absolute(folder, error).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

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

OwnJournal::OwnJournal(fs::path folder, fs::path named_in, std::uint64_t device,
                       std::shared_ptr<Disk> disk)
    : folder_(std::move(folder)),
      named_in_(std::move(named_in)),
      device_(device),
      disk_(std::move(disk)) {}

OwnJournal::~OwnJournal() {
    if (file_ >= 0) {
        ::close(file_);
    }
}

std::optional<Problem> OwnJournal::open() {
    const Result<int> newest = newest_own(folder_, device_);
    if (!newest) {
        return newest.problem();
    }
    const bool goes_on = *newest > 0 && !failed_;
    path_ = own_file(folder_, device_, goes_on ? *newest : *newest + 1);
    file_ = disk_->open(path_, O_WRONLY | O_APPEND | (goes_on ? 0 : O_CREAT | O_EXCL));
    if (file_ < 0) {
        return disk_problem(phrase("opened for writing"), path_, errno);
    }
    holds_saved_ = goes_on;
    if (goes_on) {
        return {};
    }
    std::optional<Problem> problem = make_names_last();
    if (problem) {
        failed_ = true;  // if it cannot be removed again, its name may not last
        close();
    }
    return problem;
}

/// The file's name, and those of the folders that were made for it.
std::optional<Problem> OwnJournal::make_names_last() {
    if (auto problem = sync_folder(*disk_, folder_)) {
        return problem;
    }
    for (fs::path folder = whole_path(folder_);
         folder != named_in_ && folder.has_relative_path();) {
        folder = folder.parent_path();
        if (auto problem = sync_folder(*disk_, folder)) {
            return problem;
        }
    }
    named_in_ = whole_path(folder_);
    return {};
}

/// Closes the file; removes it if nothing was saved in it.
void OwnJournal::close() {
    ::close(file_);
    file_ = -1;
    if (!holds_saved_) {
        disk_->remove(path_);
    }
}

/// Cuts the file back to what was saved before. True when that lasts, so that no power cut brings
/// back what came after.
bool OwnJournal::cut_off(std::size_t size) {
    const bool none_written = size_of(file_) == size;
    const bool cut = none_written || (disk_->truncate(file_, size) == 0 && disk_->sync(file_) == 0);
    close();
    std::error_code unknown;
    return cut || (!holds_saved_ && !fs::exists(path_, unknown) && !unknown &&
                   !sync_folder(*disk_, folder_));
}

std::optional<NotSaved> OwnJournal::save(std::span<const std::uint8_t> frame,
                                         std::span<const std::uint8_t> strike) {
    if (file_ < 0) {
        if (auto problem = open()) {
            return NotSaved{*problem};
        }
    }
    const std::optional<std::size_t> before = size_of(file_);
    int error = before ? write_all(*disk_, file_, frame) : errno;
    if (error == 0 && disk_->sync(file_) != 0) {
        error = errno;
    }
    if (error == 0) {
        failed_ = false;
        holds_saved_ = true;
        return {};
    }
    failed_ = true;
    NotSaved not_saved{disk_problem(phrase("written"), path_, error)};
    if (!before) {
        close();
    } else if (!cut_off(*before)) {
        not_saved.remains = strike.empty() || save(strike, {}) ? Remains::perhaps : Remains::struck;
    }
    return not_saved;
}

}  // namespace hemline
