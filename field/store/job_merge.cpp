#include "field/store/job_merge.h"

#include <deque>
#include <optional>
#include <set>
#include <string>

#include "engine/handover/job_file.h"
#include "engine/words/result.h"
#include "field/store/drafts.h"
#include "field/store/files_in_place.h"
#include "field/store/folder_draft.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_lock.h"
#include "field/store/open_file.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

void add(Merge& merge, const Files& files) {
    for (const auto& [file, bytes] : files) {
        if (file.extension() == ".journal") {
            merge.add(device_in_name(file.filename().string()), bytes);
        } else {
            merge.add_damage(bytes);
        }
    }
}

/// The files that shall be there in the end. Damage keeps its name; another stretch with the same
/// checksum and size gets a different name.
Files files_of(const fs::path& folder, const Journals& journals, const Files& before) {
    Files files;
    std::set<Bytes> kept;
    for (const auto& [file, bytes] : before) {
        if (file.extension() != ".journal") {
            files[file] = bytes;
            kept.insert(bytes);
        }
    }
    for (const Bytes& stretch : journals.damage) {
        int number = 1;
        while (kept.count(stretch) == 0 &&
               !files.emplace(folder / damage_name(stretch, number), stretch).second) {
            ++number;
        }
    }
    for (const auto& [device, bytes] : journals.of_device) {
        files[folder / (print_device(device) + ".journal")] = bytes;
    }
    return files;
}

Result<Merged> merge_into_job(Disk& disk, const fs::path& out, const Journals& journals) {
    const Result<int> locked = lock_job(out);
    if (!locked) {
        return locked.problem();
    }
    const OpenFile lock(*locked);
    const bool cleaned = sweep_drafts(disk, out, Sweeping::locked, is_job_file);
    const Result<Files> before = read_files(out);
    if (!before) {
        return before.problem();
    }
    Merge both;
    add(both, *before);
    for (const auto& [device, bytes] : journals.of_device) {
        both.add(device, bytes);
    }
    for (const Bytes& stretch : journals.damage) {
        both.add_damage(stretch);
    }
    if (auto problem =
            put_files_in_place(disk, out, *before, files_of(out, both.journals(), *before))) {
        return *problem;
    }
    return Merged{cleaned ? said_of_remains(out) : Text()};
}

Result<Merged> make_job_of(Disk& disk, const fs::path& out, const Journals& journals,
                           std::uint64_t tablet) {
    const auto draft = FolderDraft::begin(disk, out);
    if (!draft) {
        return draft.problem();
    }
    const fs::path& folder = (*draft)->path();
    if (const auto writer = new_writer(disk, folder, tablet); !writer) {
        return writer.problem();
    }
    auto problem = put_files_in_place(disk, folder, {}, files_of(folder, journals, {}));
    if (!problem) {
        problem = (*draft)->put_in_place();
    }
    if (problem) {
        return *problem;
    }
    return Merged{(*draft)->cleaned() ? said_of_remains(out) : Text()};
}

}  // namespace

Result<Journals> gather_journals(std::span<const fs::path> jobs) {
    std::deque<Files> kept;
    Merge merge;
    for (const fs::path& job : jobs) {
        const Result<Files> files = read_files(job);
        if (!files) {
            return files.problem();
        }
        kept.push_back(*files);
        add(merge, kept.back());
    }
    return merge.journals();
}

Result<Merged> merge_into(Disk& disk, const fs::path& out, const Journals& journals,
                          std::uint64_t tablet) {
    const Result<bool> there = holds_journals(out);
    if (!there) {
        return there.problem();
    }
    return *there ? merge_into_job(disk, out, journals) : make_job_of(disk, out, journals, tablet);
}

}  // namespace hemline
