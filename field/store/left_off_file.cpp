#include "field/store/left_off_file.h"

#include <filesystem>
#include <utility>

#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/settings_file.h"

namespace hemline {

namespace {

constexpr const char* left_off_name = "left_off";

}  // namespace

Result<std::string> read_left_off() {
    const Result<std::filesystem::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    const std::filesystem::path file = *home / left_off_name;
    const Result<There> there = what_is(file);
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        return std::string();
    }
    const Result<Bytes> bytes = read_file(file);
    return bytes ? Result<std::string>(std::string(bytes->begin(), bytes->end()))
                 : Result<std::string>(bytes.problem());
}

std::optional<Problem> write_left_off(Disk& disk, const std::string& text) {
    return write_settings(disk, left_off_name, text, true);
}

LeftOffKeeper::LeftOffKeeper(Write write, std::chrono::milliseconds rest)
    : write_(std::move(write)), rest_(rest), thread_([this] { run(); }) {}

LeftOffKeeper::~LeftOffKeeper() {
    {
        const std::scoped_lock hold(lock_);
        closing_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

std::optional<Problem> LeftOffKeeper::keep(std::string text) {
    std::optional<Problem> told;
    {
        const std::scoped_lock hold(lock_);
        newest_ = std::move(text);
        told = std::exchange(problem_, std::nullopt);
    }
    changed_.notify_all();
    return told;
}

void LeftOffKeeper::run() {
    std::unique_lock hold(lock_);
    for (;;) {
        changed_.wait(hold, [this] { return closing_ || newest_; });
        if (!newest_) {
            return;
        }
        const std::string text = *std::exchange(newest_, std::nullopt);
        hold.unlock();
        std::optional<Problem> problem = write_(text);
        hold.lock();
        if (problem && !failing_) {
            problem_ = std::move(problem);
            failing_ = true;
        } else if (!problem) {
            failing_ = false;
        }
        changed_.wait_for(hold, rest_, [this] { return closing_; });
    }
}

}  // namespace hemline
