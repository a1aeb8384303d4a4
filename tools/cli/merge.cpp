// `merge`: merges several tablets' jobs; `pick`: settles where they disagree.
#include <filesystem>
#include <iostream>

#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "engine/work/procedure_words.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/conflicts.h"

namespace hemline {
namespace {

/// How many events and disagreements the job has now.
void say_what_is_there(const std::string& folder, const JobRecord& record, const Job& job) {
    std::cout << shown_text(folder) << " holds " << record.events.size() << " events";
    if (!job.conflicts.empty()) {
        std::cout << " and " << job.conflicts.size() << " written apart:\n"
                  << conflicts_text(job, record.events, marks_of(job.practice));
    } else {
        std::cout << ", none written apart\n";
    }
}

}  // namespace

Exit merge_jobs(const MergeArguments& arguments) {
    const std::vector<std::filesystem::path> jobs(arguments.jobs.begin(), arguments.jobs.end());
    const Result<Journals> journals = gather_journals(jobs);
    if (!journals) {
        return complain("JOB", 0, 0, journals.problem());
    }
    const Result<std::uint64_t> tablet = device_id();
    if (!tablet) {
        return complain("device", 0, 0, tablet.problem());
    }
    Disk disk;
    const Result<Merged> merged = merge_into(disk, arguments.out, *journals, *tablet);
    if (!merged) {
        return complain("OUT", 0, 0, merged.problem());
    }
    say_aside(merged->said);
    const Result<JobRecord> record = read_job_folder(arguments.out);
    if (!record) {
        return complain("OUT", 0, 0, record.problem());
    }
    say_what_is_there(arguments.out, *record, replay(record->events));
    return Exit::fine;
}

Exit pick_event(const PickArguments& arguments) {
    const std::optional<EventId> chosen = parse_event_id(arguments.event);
    if (!chosen) {
        return complain("EVENT", 1, 1, "This is no event id: sixteen hex digits, a dash, a number.",
                        "Take an id that `show` or `journal` prints.");
    }
    const Result<std::uint64_t> device = device_id();
    if (!device) {
        return complain("device", 0, 0, device.problem());
    }
    const auto journal = JournalFile::open(arguments.job, *device, Opening::existing);
    if (!journal) {
        return complain(arguments.job, 0, 0, journal.problem());
    }
    const std::vector<Event>& events = (*journal)->record().events;
    const Job job = replay(events);
    const Result<ToWrite> picked =
        arguments.put_away ? put_away(job, *chosen) : pick(job, events, *chosen);
    if (!picked) {
        return complain("EVENT", picked.problem());
    }
    const auto saved =
        (*journal)->append(picked->fact, arguments.by, picked->supersedes, wall_ms());
    if (!saved) {
        return complain(arguments.job, 0, 0, saved.problem());
    }
    std::cout << (arguments.put_away ? "Put away " : "Picked ") << print_event_id(*chosen) << '\n';
    return Exit::fine;
}

}  // namespace hemline
