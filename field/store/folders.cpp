#include "field/store/folders.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <system_error>

#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/file_name.h"
#include "field/store/folder_draft.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

std::optional<fs::path> path_in_environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr || *value == '\0' ? std::nullopt : std::optional<fs::path>(value);
}

bool is_folder(const fs::path& path) {
    std::error_code error;
    return fs::is_directory(path, error);
}

/// The folder this program was started from; empty where the system does not say.
fs::path program_folder() {
    std::error_code error;
    return fs::read_symlink("/proc/self/exe", error).parent_path();
}

}  // namespace

Result<fs::path> hemline_folder() {
    const auto data_home = path_in_environment("XDG_DATA_HOME");
    if (data_home && data_home->is_absolute()) {
        return *data_home / "hemline";
    }
    if (const auto home = path_in_environment("HOME")) {
        return *home / ".local" / "share" / "hemline";
    }
    return Problem{say("There is no place for jobs: neither XDG_DATA_HOME nor HOME is set."),
                   say("Set HOME to your home folder.")};
}

Result<fs::path> jobs_folder() {
    const Result<fs::path> home = hemline_folder();
    return home ? Result<fs::path>(*home / "jobs") : home;
}

Result<std::vector<fs::path>> list_jobs(const fs::path& jobs) {
    const Result<There> there = what_is(jobs);
    if (!there) {
        return there.problem();
    }
    std::vector<fs::path> found;
    if (*there == There::nothing) {
        return found;
    }
    const Result<std::vector<std::string>> names = names_in(jobs);
    if (!names) {
        return names.problem();
    }
    for (const std::string& name : *names) {
        if (name.front() == '.') {
            continue;
        }
        const Result<bool> is_job = holds_journals(jobs / name);
        if (!is_job || *is_job) {
            found.push_back(jobs / name);
        }
    }
    return found;
}

Result<fs::path> new_job_folder(const fs::path& jobs, std::string_view name) {
    const std::string wanted = file_name_of(name);
    for (int number = 1;; ++number) {
        const fs::path folder =
            jobs / (number == 1 ? wanted : wanted + "-" + std::to_string(number));
        const Result<There> there = what_is(folder, Links::refused);
        const Result<bool> free = !there                    ? Result<bool>(there.problem())
                                  : *there == There::folder ? holds_only_remains(folder)
                                                            : *there == There::nothing;
        if (!free) {
            return free.problem();
        }
        if (*free) {
            return folder;
        }
    }
}

Result<fs::path> job_folder(const fs::path& job) {
    if (job.extension() != ".journal") {
        return job;
    }
    const Result<There> there = what_is(job);
    if (!there) {
        return there.problem();
    }
    if (*there == There::folder || *there == There::nothing) {
        return job;
    }
    return job.has_parent_path() ? job.parent_path() : fs::path(".");
}

Result<fs::path> assets_folder() {
    if (const auto told = path_in_environment("HEMLINE_ASSETS")) {
        if (is_folder(*told)) {
            return *told;
        }
        return Problem{say("HEMLINE_ASSETS names {1}, which is no folder.", shown(*told)),
                       say("Set HEMLINE_ASSETS to the assets folder, or unset it.")};
    }
    const fs::path program = program_folder();
    for (const char* place : {"assets", "../../assets", "../share/hemline/assets"}) {
        if (is_folder(program / place)) {
            return (program / place).lexically_normal();
        }
    }
    return Problem{say("The assets folder is not beside the program in {1}.", shown(program)),
                   say("Set HEMLINE_ASSETS to the assets folder.")};
}

}  // namespace hemline
