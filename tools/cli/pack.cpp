// `pack`: a job into a single file; `unpack`: such a file into a new job.
#include <filesystem>
#include <iostream>

#include "engine/handover/job_file.h"
#include "engine/handover/job_pages.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_merge.h"
#include "field/store/listing.h"
#include "field/store/whole_file.h"
#include "field/store/writer.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// A job file is only replaced by one that holds all of it, and no other file is ever replaced.
std::optional<Problem> holds_something_else(const fs::path& file, const Bytes& now) {
    const Result<There> there = what_is(file);
    if (!there || *there == There::nothing) {
        return there ? std::nullopt : std::optional<Problem>(there.problem());
    }
    const Result<Bytes> bytes = read_file(file, job_file_limits.file);
    if (!bytes) {
        return bytes.problem();
    }
    const Result<Journals> before = unpack_job(*bytes);
    if (!before) {
        return Problem{say("{1} is there already, and it is no job file.", shown(file)),
                       say("Choose another name.")};
    }
    const Result<Journals> after = unpack_job(now);
    if (after && holds_all(*after, *before)) {
        return {};
    }
    return Problem{say("{1} holds entries that this job lacks.", shown(file)),
                   say("Take them in with `unpack` and `merge`, or choose another name.")};
}

}  // namespace

Exit pack_to_file(const JobFileArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const std::filesystem::path jobs[] = {arguments.job};
    const Result<Journals> journals = gather_journals(jobs);
    const Result<JobRecord> record = read_job_folder(arguments.job);
    if (!journals || !record) {
        const Problem& problem = journals ? record.problem() : journals.problem();
        return complain(arguments.job, 0, 0, problem);
    }
    const Result<Bytes> file = pack_job(*journals, pages_of(record->events, assets->practice));
    if (!file) {
        return complain(arguments.job, 0, 0, file.problem());
    }
    if (const auto problem = holds_something_else(arguments.file, *file)) {
        return complain(arguments.file, 0, 0, *problem);
    }
    Disk disk;
    const std::filesystem::path name = std::filesystem::path(arguments.file).filename();
    sweep_drafts(disk, std::filesystem::absolute(arguments.file).parent_path(), Sweeping::shared,
                 [&](std::string_view left) { return left == name.string(); });
    if (const auto problem = write_whole_file(disk, arguments.file, *file)) {
        return complain(arguments.file, 0, 0, *problem);
    }
    std::cout << "Packed " << record->events.size() << " events of " << journals->of_device.size()
              << " devices into " << shown_text(arguments.file) << " (" << file->size()
              << " bytes)\n";
    return Exit::fine;
}

Exit unpack_file(const JobFileArguments& arguments) {
    const Result<Bytes> file = read_file(arguments.file, job_file_limits.file);
    if (!file) {
        return complain(arguments.file, 0, 0, file.problem());
    }
    Result<Journals> journals = unpack_job(*file);
    if (!journals) {
        return complain(arguments.file, 0, 0, journals.problem());
    }
    const Result<bool> there = holds_journals(arguments.job);
    if (!there) {
        return complain("OUT", 0, 0, there.problem());
    }
    if (*there) {
        return complain("OUT", 0, 0,
                        "There is a job in " + shown(arguments.job).english() + " already.",
                        "Choose another folder; then put the two together with `merge`.");
    }
    const Result<std::uint64_t> tablet = device_id();
    if (!tablet) {
        return complain("device", 0, 0, tablet.problem());
    }
    Disk disk;
    const Result<Merged> merged = merge_into(disk, arguments.job, *journals, *tablet);
    if (!merged) {
        return complain("OUT", 0, 0, merged.problem());
    }
    say_aside(merged->said);
    std::cout << "Unpacked " << journals->of_device.size() << " journals into "
              << shown_text(arguments.job) << "; what is written there is written as device "
              << print_device(writer_in(arguments.job, *tablet)) << '\n';
    return Exit::fine;
}

}  // namespace hemline
