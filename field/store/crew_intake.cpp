#include "field/store/crew_intake.h"

#include <cerrno>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/segment_file.h"
#include "field/store/torn_tail.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

Bytes copy_of(const FrameAt& frame) { return {frame.bytes.begin(), frame.bytes.end()}; }

/// A frame that does not say whose it is (of another version) is kept under 0.
std::uint64_t device_of(const FrameAt& frame) {
    return frame.id.sequence == 0 ? 0 : frame.id.device;
}

/// Half a frame left by a killed program is moved aside before anything is written after it.
std::optional<Problem> mend_tail(Disk& disk, const fs::path& journal) {
    const Result<Bytes> bytes = read_file(journal, file_size_most, Links::refused);
    if (!bytes) {
        return bytes.problem();
    }
    const std::size_t whole = read_frames(*bytes).whole_size;
    if (whole == bytes->size()) {
        return {};
    }
    const auto kept = move_torn_tail(disk, {journal, {whole, bytes->size() - whole, {}}, journal});
    return kept ? std::nullopt : std::optional(kept.problem());
}

}  // namespace

CrewIntake::CrewIntake(Disk& disk, fs::path job, std::uint64_t writer)
    : disk_(disk), job_(std::move(job)), writer_(writer) {}

std::optional<Problem> CrewIntake::look_at_journals() {
    const Result<std::vector<fs::path>> journals = journals_in(job_);
    if (!journals) {
        return journals.problem();
    }
    for (const fs::path& journal : *journals) {
        const Result<Bytes> bytes = read_file(journal, file_size_most, Links::refused);
        if (!bytes) {
            return bytes.problem();
        }
        for (const FrameAt& frame : read_frames(*bytes).frames) {
            here_.insert(copy_of(frame));
        }
    }
    looked_ = true;
    return {};
}

std::optional<Problem> CrewIntake::add(std::span<const FrameAt> frames) {
    if (!looked_) {
        if (auto problem = look_at_journals()) {
            return problem;
        }
    }
    for (const FrameAt& frame : frames) {
        Bytes bytes = copy_of(frame);
        if (here_.count(bytes) > 0) {
            continue;
        }
        if (device_of(frame) == writer_) {
            number_used_elsewhere_ = true;
            return {};
        }
        Bytes& waiting = waiting_[device_of(frame)];
        waiting.insert(waiting.end(), bytes.begin(), bytes.end());
        waiting_bytes_ += bytes.size();
        here_.insert(std::move(bytes));
    }
    return {};
}

bool CrewIntake::is_full() const { return waiting_bytes_ >= segment_full; }

std::optional<Problem> CrewIntake::append() {
    for (const auto& [device, frames] : std::exchange(waiting_, {})) {
        if (auto problem = append_to(job_ / (print_device(device) + ".journal"), frames)) {
            return problem;
        }
        for (Event& event : read_journal(frames).events) {
            taken_in_.push_back(std::move(event));
        }
    }
    waiting_bytes_ = 0;
    return {};
}

std::optional<Problem> CrewIntake::append_to(const fs::path& journal, const Bytes& frames) {
    const Result<There> there = what_is(journal, Links::refused);
    if (!there) {
        return there.problem();
    }
    const bool is_new = *there == There::nothing;
    if (auto problem = is_new ? std::nullopt : mend_tail(disk_, journal)) {
        return problem;
    }
    const OpenFile opened(disk_.open(journal, O_WRONLY | O_APPEND | O_CREAT));
    struct stat about {};
    if (!opened.is_open() || ::fstat(opened.get(), &about) != 0) {
        return disk_problem(phrase("opened for writing"), journal, errno);
    }
    int failed = write_all(disk_, opened.get(), frames);
    if (failed == 0 && disk_.sync(opened.get()) != 0) {
        failed = errno;
    }
    std::optional<Problem> problem =
        failed != 0 ? std::optional(disk_problem(phrase("written"), journal, failed))
        : is_new    ? sync_folder(disk_, journal.parent_path())
                    : std::nullopt;
    if (problem) {
        // So that they count as missing the next time, and are appended again.
        static_cast<void>(disk_.truncate(opened.get(), static_cast<std::size_t>(about.st_size)));
    }
    return problem;
}

}  // namespace hemline
