#include "field/store/own_journal.h"

#include <algorithm>
#include <cerrno>
#include <string>
#include <utility>

#include <fcntl.h>
#include <unistd.h>

#include "engine/record/event.h"
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

/// The newest of this device's own journals; 0 when it has none.
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

}  // namespace

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

OwnJournal::OwnJournal(fs::path folder, JobFolder was, std::uint64_t device,
                       std::shared_ptr<Disk> disk)
    : folder_(std::move(folder)), was_(was), device_(device), disk_(std::move(disk)) {}

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
        close();
    }
    return problem;
}

std::optional<Problem> OwnJournal::make_names_last() {
    if (auto problem = sync_folder(*disk_, folder_)) {
        return problem;
    }
    if (was_ == JobFolder::made) {
        std::error_code error;
        const fs::path whole = fs::absolute(folder_, error).lexically_normal();
        const fs::path named = whole.has_filename() ? whole : whole.parent_path();
        if (auto problem = sync_folder(*disk_, named.parent_path())) {
            return problem;
        }
        was_ = JobFolder::there;
    }
    return {};
}

void OwnJournal::close() {
    ::close(file_);
    file_ = -1;
    if (!holds_saved_) {
        ::unlink(path_.c_str());
    }
}

std::optional<NotSaved> OwnJournal::save(std::span<const std::uint8_t> frame) {
    if (file_ < 0) {
        if (auto problem = open()) {
            return NotSaved{*problem, false};
        }
    }
    int error = write_all(*disk_, file_, frame);
    if (error == 0 && disk_->sync(file_) != 0) {
        error = errno;
    }
    if (error != 0) {
        failed_ = true;
        close();
        return NotSaved{disk_problem(phrase("written"), path_, error), true};
    }
    failed_ = false;
    holds_saved_ = true;
    return {};
}

}  // namespace hemline
