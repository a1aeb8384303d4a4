#include "field/store/job_merge.h"

#include <cerrno>
#include <deque>
#include <string>
#include <system_error>

#include "engine/handover/job_file.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_lock.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// The journals under the names that they have when there is one for each device.
std::set<fs::path> files_of(const fs::path& folder, const Journals& journals) {
    std::set<fs::path> files;
    for (const auto& [device, bytes] : journals.of_device) {
        files.insert(folder / (print_device(device) + ".journal"));
    }
    return files;
}

/// Replaces a file only where its bytes differ.
std::optional<Problem> put(Disk& disk, const fs::path& file, const Bytes& bytes) {
    std::error_code error;
    if (fs::exists(file, error)) {
        const Result<Bytes> there = read_file(file);
        if (there && *there == bytes) {
            return {};
        }
    }
    return write_whole_file(disk, file, bytes);
}

std::optional<Problem> write_all_of(Disk& disk, const fs::path& folder, const Journals& journals) {
    const std::vector<fs::path> before = journals_in(folder);
    for (const Bytes& stretch : journals.damage) {
        if (auto problem = put(disk, folder / damage_name(stretch), stretch)) {
            return problem;
        }
    }
    for (const auto& [device, bytes] : journals.of_device) {
        if (auto problem = put(disk, folder / (print_device(device) + ".journal"), bytes)) {
            return problem;
        }
    }
    // What these held stands in the files just synced.
    const std::set<fs::path> now = files_of(folder, journals);
    for (const fs::path& file : before) {
        if (now.count(file) == 0 && disk.remove(file) != 0) {
            return disk_problem(phrase("removed"), file, errno);
        }
    }
    return sync_folder(disk, folder);
}

}  // namespace

Result<Journals> gather_journals(std::span<const fs::path> jobs) {
    std::deque<Bytes> kept;
    Merge merge;
    for (const fs::path& job : jobs) {
        const Result<std::vector<fs::path>> files = job_files(job);
        if (!files) {
            return files.problem();
        }
        for (const fs::path& file : *files) {
            const Result<Bytes> bytes = read_file(file);
            if (!bytes) {
                return bytes.problem();
            }
            kept.push_back(*bytes);
            if (file.extension() == ".journal") {
                merge.add(device_in_name(file.filename().string()), kept.back());
            } else {
                merge.add_damage(kept.back());
            }
        }
    }
    return merge.journals();
}

std::optional<Problem> merge_into(Disk& disk, const fs::path& out, Journals journals,
                                  std::uint64_t tablet) {
    std::error_code error;
    fs::create_directories(out, error);
    if (error) {
        return disk_problem(phrase("created"), out, error.value());
    }
    const Result<int> locked = lock_job(out);
    if (!locked) {
        return locked.problem();
    }
    const OpenFile lock(*locked);
    const bool is_new = journals_in(out).empty();
    if (!is_new) {
        const fs::path there[] = {out};
        const Result<Journals> before = gather_journals(there);
        if (!before) {
            return before.problem();
        }
        Merge both;
        for (const Journals* one : std::initializer_list<const Journals*>{&journals, &*before}) {
            for (const auto& [device, bytes] : one->of_device) {
                both.add(device, bytes);
            }
            for (const Bytes& stretch : one->damage) {
                both.add_damage(stretch);
            }
        }
        journals = both.journals();
    }
    if (is_new) {
        const Result<std::uint64_t> writer = new_writer(disk, out, tablet);
        if (!writer) {
            return writer.problem();
        }
    }
    return write_all_of(disk, out, journals);
}

}  // namespace hemline
