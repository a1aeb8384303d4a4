// `carry`: a job's events to and from a crew folder, which any file synchronizer carries.
#include <filesystem>
#include <iostream>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/crew_folder.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/listing.h"
#include "field/store/writer.h"
#include "tools/cli/commands.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Makes the job's folder from what the crew folder holds.
Result<Merged> join(Disk& disk, const CarryArguments& arguments, std::uint64_t tablet) {
    const Result<std::vector<std::string>> jobs = jobs_in_crew(arguments.crew);
    if (!jobs) {
        return jobs.problem();
    }
    std::string which = arguments.which;
    if (which.empty() && jobs->size() == 1) {
        which = jobs->front();
    }
    if (std::find(jobs->begin(), jobs->end(), which) == jobs->end()) {
        std::string list;
        for (const std::string& job : *jobs) {
            list += (list.empty() ? "" : ", ") + job;
        }
        return Problem{
            say("There is no job in {1}, and which of the crew folder's to take in was not said.",
                shown(arguments.job)),
            jobs->empty() ? say("Wait until the synchronizer has brought the crew folder's files.")
                          : say("Say --job with one of: {1}.", list)};
    }
    const Result<Journals> journals = journals_in_crew(arguments.crew, which);
    return journals ? merge_into(disk, arguments.job, *journals, tablet)
                    : Result<Merged>(journals.problem());
}

}  // namespace

Exit carry_job(const CarryArguments& arguments) {
    const Result<std::uint64_t> tablet = device_id();
    if (!tablet) {
        return complain("device", 0, 0, tablet.problem());
    }
    const auto disk = std::make_shared<Disk>();
    const Result<There> crew_there = what_is(arguments.crew);
    if (!crew_there) {
        return complain("CREW", 0, 0, crew_there.problem());
    }
    if (*crew_there != There::folder) {
        return complain("CREW", 0, 0, "There is no folder " + shown(arguments.crew).english() + ".",
                        "Name the folder that the synchronizer shares, or make it first.");
    }
    // A journal given by name means the folder it is in.
    const Result<fs::path> job = job_folder(arguments.job);
    const Result<bool> there = job ? holds_journals(*job) : Result<bool>(job.problem());
    if (!there) {
        return complain(arguments.job, 0, 0, there.problem());
    }
    if (!*there) {
        const Result<Merged> joined = join(*disk, arguments, *tablet);
        if (!joined) {
            return complain(arguments.job, 0, 0, joined.problem());
        }
        say_aside(joined->said);
    }
    const auto journal = JournalFile::open(arguments.job, *tablet, Opening::existing, disk);
    if (!journal) {
        return complain(arguments.job, 0, 0, journal.problem());
    }
    CrewFolder crew(arguments.crew, (*journal)->record().folder, disk);
    std::vector<Event> events = (*journal)->record().events;
    Carried carried = crew.carry(events, (*journal)->device());
    std::size_t taken_before = 0;
    if (carried.number_used_elsewhere) {
        const auto writer = new_writer(*disk, (*journal)->record().folder, *tablet);
        if (!writer) {
            return complain(arguments.job, 0, 0, writer.problem());
        }
        std::cerr << "This tablet was copied or put back from a backup: it writes on as device "
                  << print_device(*writer) << ".\n";
        taken_before = carried.taken_in.size();
        events.insert(events.end(), carried.taken_in.begin(), carried.taken_in.end());
        carried = crew.carry(events, *writer);
    }
    if (carried.problem) {
        return complain(arguments.job, 0, 0, *carried.problem);
    }
    std::cout << "Took in " << taken_before + carried.taken_in.size() << " events, gave out "
              << carried.given_out << '\n';
    return Exit::fine;
}

}  // namespace hemline
