#include "field/store/folder_draft.h"

#include <algorithm>
#include <cerrno>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>

#include <sys/stat.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/job_lock.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

constexpr const char* lock_name = ".lock";
constexpr std::string_view draft_end = ".new";

/// mkdir -p, and syncs each name.
std::optional<Problem> make_folders(Disk& disk, const fs::path& folder) {
    const Result<There> there = what_is(folder);
    if (!there) {
        return there.problem();
    }
    if (*there == There::folder) {
        return {};
    }
    if (auto problem = make_folders(disk, folder.parent_path())) {
        return problem;
    }
    if (::mkdir(folder.c_str(), 0777) != 0 && errno != EEXIST) {
        return disk_problem(phrase("created"), folder, errno);
    }
    return sync_folder(disk, folder.parent_path());
}

/// What a program leaves when it is stopped before the first event was saved: it holds no event.
bool is_remains(const fs::path& file) {
    const std::string name = file.filename().string();
    struct stat about {};
    return name == lock_name || name.rfind(".device-", 0) == 0 || is_draft(name) ||
           (file.extension() == ".journal" && ::lstat(file.c_str(), &about) == 0 &&
            S_ISREG(about.st_mode) && about.st_size == 0);
}

/// Removes the files in a folder that is locked; true when there was any but the lock.
Result<bool> clear(const fs::path& folder) {
    const Result<std::vector<std::string>> names = names_in(folder, Links::refused);
    if (!names) {
        return names.problem();
    }
    bool any = false;
    for (const std::string& name : *names) {
        if (name == lock_name) {
            continue;
        }
        if (::unlink((folder / name).c_str()) != 0) {
            return disk_problem(phrase("removed"), folder / name, errno);
        }
        any = true;
    }
    return any;
}

}  // namespace

bool is_folder_draft(std::string_view name) {
    return name.size() > draft_end.size() && name.front() == '.' &&
           name.substr(name.size() - draft_end.size()) == draft_end;
}

Result<bool> holds_only_remains(const fs::path& folder) {
    const Result<std::vector<std::string>> names = names_in(folder);
    if (!names) {
        return names.problem();
    }
    const bool all = std::all_of(names->begin(), names->end(), [&](const std::string& name) {
        return is_remains(folder / name);
    });
    if (!all || names->empty()) {
        return all;
    }
    const Result<int> locked = lock_job(folder);
    if (locked) {
        ::close(*locked);
    }
    return locked.ok();
}

Text said_of_remains(const fs::path& folder) {
    return say("What an earlier try at {1} had left half done was cleaned away first.",
               shown(folder));
}

FolderDraft::FolderDraft(Disk& disk, fs::path folder)
    : disk_(disk),
      folder_(std::move(folder)),
      draft_(folder_.parent_path() / ("." + folder_.filename().string() + std::string(draft_end))) {
}

Result<std::shared_ptr<FolderDraft>> FolderDraft::begin(Disk& disk, const fs::path& folder) {
    std::error_code error;
    fs::path whole = fs::absolute(folder, error);
    if (!whole.has_filename()) {
        whole = whole.parent_path();  // "house/"
    }
    if (!error && (whole.filename() == "." || whole.filename() == "..")) {
        whole = fs::canonical(whole, error);
    }
    if (error) {
        return disk_problem(phrase("looked at"), folder, error.value());
    }
    const std::shared_ptr<FolderDraft> draft(new FolderDraft(disk, whole));
    auto problem = draft->look_at_place();
    if (!problem) {
        problem = draft->make();
    }
    return problem ? Result<std::shared_ptr<FolderDraft>>(*problem) : draft;
}

std::optional<Problem> FolderDraft::look_at_place() {
    const Result<There> there = what_is(folder_);
    if (!there || *there == There::nothing) {
        return there ? std::nullopt : std::optional<Problem>(there.problem());
    }
    if (*there != There::folder) {
        return Problem{say("{1} is a file, not a folder.", shown(folder_)),
                       say("Choose another name.")};
    }
    std::error_code error;
    if (fs::equivalent(folder_, fs::path("."), error) && !error) {
        return Problem{say("{1} is the folder you are in.", shown(folder_)),
                       say("Name a new folder, one that is not there yet.")};
    }
    const Result<std::vector<std::string>> names = names_in(folder_);
    if (!names) {
        return names.problem();
    }
    for (const std::string& name : *names) {
        const fs::path file = folder_ / name;
        if (is_remains(file)) {
            continue;
        }
        if (file.extension() == ".journal") {
            return Problem{say("There is a job in {1} already.", shown(folder_)),
                           say("Open that job, or choose another name.")};
        }
        return Problem{say("There is something in {1} already, and it is no job.", shown(folder_)),
                       say("Name a new folder, one that is not there yet.")};
    }
    if (names->empty()) {
        return {};
    }
    const Result<int> locked = lock_job(folder_);
    if (!locked) {
        return locked.problem();
    }
    place_lock_ = *locked;
    return {};
}

std::optional<Problem> FolderDraft::make() {
    if (auto problem = make_folders(disk_, folder_.parent_path())) {
        return problem;
    }
    if (::mkdir(draft_.c_str(), 0777) != 0 && errno != EEXIST) {
        return disk_problem(phrase("created"), draft_, errno);
    }
    const Result<There> there = what_is(draft_, Links::refused);
    if (!there || *there != There::folder) {
        return there ? disk_problem(phrase("created"), draft_, EEXIST) : there.problem();
    }
    const Result<int> locked = lock_job(draft_);
    if (!locked) {
        return locked.problem();
    }
    lock_ = *locked;
    made_ = true;
    const Result<bool> cleared = clear(draft_);
    if (!cleared) {
        return cleared.problem();
    }
    cleaned_ = *cleared;
    return {};
}

void FolderDraft::unlock() {
    if (lock_ >= 0) {
        ::close(std::exchange(lock_, -1));
    }
}

std::optional<Problem> FolderDraft::clear_place() {
    if (place_lock_ < 0) {
        return {};
    }
    const Result<bool> cleared = clear(folder_);
    if (!cleared) {
        return cleared.problem();
    }
    cleaned_ = cleaned_ || *cleared;
    if (::unlink((folder_ / lock_name).c_str()) != 0) {
        return disk_problem(phrase("removed"), folder_ / lock_name, errno);
    }
    return {};
}

std::optional<Problem> FolderDraft::put_in_place() {
    if (auto problem = sync_folder(disk_, draft_)) {
        return problem;
    }
    if (auto problem = clear_place()) {
        return problem;
    }
    if (disk_.rename(draft_, folder_) != 0) {
        return disk_problem(phrase("put in place"), folder_, errno);
    }
    in_place_ = true;
    auto problem = sync_folder(disk_, folder_.parent_path());
    // A name that may not last would prevent another try.
    if (problem && disk_.rename(folder_, draft_) == 0) {
        in_place_ = false;
    }
    return problem;
}

FolderDraft::~FolderDraft() {
    if (made_ && !in_place_ && clear(draft_)) {
        ::unlink((draft_ / lock_name).c_str());
        ::rmdir(draft_.c_str());
    }
    unlock();
    if (place_lock_ >= 0) {
        ::close(place_lock_);
    }
}

}  // namespace hemline
