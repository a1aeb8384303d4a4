#include "field/store/files_in_place.h"

#include <algorithm>
#include <cerrno>
#include <set>
#include <vector>

#include <unistd.h>

#include "engine/record/merge.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// What is to be replaced or removed must still be what was read: if somebody wrote there
/// meanwhile, his work is kept.
std::optional<Problem> changed_since(const fs::path& file, const Files& before) {
    const auto was = before.find(file);
    const Result<There> there = what_is(file, Links::refused);
    if (!there) {
        return there.problem();
    }
    bool same = *there == There::nothing && was == before.end();
    if (*there != There::nothing && was != before.end()) {
        const Result<Bytes> now = read_file(file, file_size_most, Links::refused);
        if (!now) {
            return now.problem();
        }
        same = *now == was->second;
    }
    return same ? std::nullopt
                : std::optional(Problem{say("{1} changed meanwhile.", shown(file)),
                                        say("Let the other program finish, then do it again.")});
}

/// Files written beside their final names; those not moved into place are removed again.
class Drafts {
  public:
    explicit Drafts(Disk& disk) : disk_(disk) {}
    Drafts(const Drafts&) = delete;
    Drafts& operator=(const Drafts&) = delete;
    ~Drafts() {
        for (const auto& [file, draft] : drafts_) {
            ::unlink(draft.c_str());
        }
    }
    std::optional<Problem> write(const Files& files) {
        for (const auto& [file, bytes] : files) {
            const auto draft =
                write_draft(disk_, file, [&all = bytes](const struct stat&) { return all; });
            if (!draft) {
                return draft.problem();
            }
            drafts_[file] = *draft;
        }
        return {};
    }
    /// Also syncs the folder, so that the names last.
    std::optional<Problem> put_in_place(const fs::path& folder, const Files& before) {
        while (!drafts_.empty()) {
            const auto& [file, draft] = *drafts_.begin();
            if (auto problem = changed_since(file, before)) {
                return problem;
            }
            if (disk_.rename(draft, file) != 0) {
                return disk_problem(phrase("written"), file, errno);
            }
            drafts_.erase(drafts_.begin());
        }
        return sync_folder(disk_, folder);
    }

  private:
    Disk& disk_;
    std::map<fs::path, fs::path> drafts_;
};

bool holds_frames_of(const Bytes& journal, const Bytes& part) {
    std::set<Bytes> there;
    for (const FrameAt& frame : read_frames(journal).frames) {
        there.emplace(frame.bytes.begin(), frame.bytes.end());
    }
    const std::vector<FrameAt> frames = read_frames(part).frames;
    return std::all_of(frames.begin(), frames.end(), [&](const FrameAt& frame) {
        return there.count(Bytes(frame.bytes.begin(), frame.bytes.end())) > 0;
    });
}

/// Files under new names, and files that replace others.
struct Parts {
    Files fresh, replacing;
    std::vector<fs::path> old;  ///< to be removed in the end
};

Result<Parts> parts_of(const fs::path& folder, const Files& before, const Files& files) {
    Parts parts;
    for (const auto& [file, bytes] : before) {
        const auto now = files.find(file);
        if (now == files.end()) {
            parts.old.push_back(file);
        } else if (!holds_frames_of(now->second, bytes) && file.extension() == ".journal") {
            // Frames that belong in another device's journal stay here too until that journal is in
            // place.
            const auto copy = free_name(folder, file.stem().string(), ".journal");
            if (!copy) {
                return copy.problem();
            }
            parts.fresh[*copy] = bytes;
            parts.old.push_back(*copy);
        }
    }
    for (const auto& [file, bytes] : files) {
        const auto was = before.find(file);
        if (was == before.end()) {
            parts.fresh[file] = bytes;
        } else if (was->second != bytes || !parts.old.empty()) {
            // All files are written again before any is removed: nobody knows whether an older file
            // was synced.
            parts.replacing[file] = bytes;
        }
    }
    return parts;
}

std::optional<Problem> read_back(const fs::path& folder, const Files& files) {
    const Result<Files> after = read_files(folder);
    if (!after) {
        return after.problem();
    }
    const bool all_there = std::all_of(files.begin(), files.end(), [&](const auto& file) {
        const auto there = after->find(file.first);
        return there != after->end() && there->second == file.second;
    });
    return all_there ? std::nullopt : std::optional(disk_problem(phrase("read back"), folder, EIO));
}

}  // namespace

Result<Files> read_files(const fs::path& job) {
    const Result<std::vector<fs::path>> names = job_files(job);
    if (!names) {
        return names.problem();
    }
    Files files;
    for (const fs::path& file : *names) {
        const Result<Bytes> bytes = read_file(file, file_size_most, Links::refused);
        if (!bytes) {
            return bytes.problem();
        }
        files[file] = *bytes;
    }
    return files;
}

std::optional<Problem> put_files_in_place(Disk& disk, const fs::path& folder, const Files& before,
                                          const Files& files) {
    const Result<Parts> parts = parts_of(folder, before, files);
    if (!parts) {
        return parts.problem();
    }
    Drafts fresh(disk), replacing(disk);
    auto problem = fresh.write(parts->fresh);
    problem = problem ? problem : replacing.write(parts->replacing);
    problem = problem ? problem : fresh.put_in_place(folder, before);
    problem = problem ? problem : replacing.put_in_place(folder, before);
    problem = problem ? problem : read_back(folder, files);
    if (problem || parts->old.empty()) {
        return problem;
    }
    Files known = before;
    known.insert(parts->fresh.begin(), parts->fresh.end());
    for (const fs::path& file : parts->old) {
        if (auto changed = changed_since(file, known)) {
            return changed;
        }
        if (disk.remove(file) != 0) {
            return disk_problem(phrase("removed"), file, errno);
        }
    }
    return sync_folder(disk, folder);
}

}  // namespace hemline
