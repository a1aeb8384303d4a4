// `journal`: what happened on a job, one event on each line.
#include <iostream>

#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "engine/record/old_picks.h"
#include "engine/roof/readings.h"
#include "engine/words/result.h"
#include "engine/work/procedure_words.h"
#include "field/store/job_folder.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
Exit print_journal(const std::string& job) {
    const Result<JobRecord> record = read_job_folder(job);
    if (!record) {
        return complain(job, 0, 0, record.problem());
    }
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Marks marks = marks_of(replay(record->events, assets->practice).practice);
    const std::set<EventId> struck = strikes_in(record->events).struck;
    for (const Event& event : record->events) {
        std::cout << print_event_id(event.id) << ' ' << iso_time(wall_time(event)) << ' '
                  << (event.by.empty() ? "-" : shown_text(event.by)) << ' '
                  << describe(event.fact).english(marks)
                  << (struck.count(event.id) > 0 ? " (crossed out)" : "") << '\n';
    }
    for (const FileSetAside& set_aside : record->set_aside) {
        std::cerr << explain(set_aside) << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
