// `take`: records a reading, whatever it is; says what is doubtful about it, and last its event id.
#include <iostream>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/work/hook_doubt.h"
#include "engine/work/job_sections.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/journal_file.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

std::string edges_of(const Job& job) {
    std::string ids;
    for (const EdgeWork& work : job.edges) {
        ids += (ids.empty() ? "" : ", ") + work.edge.id;
    }
    return ids.empty() ? "This job has no edges yet: start it from a readings file."
                       : "Name one of the job's edges: " + ids + ".";
}

/// What the reading should be about: what was read before, or for a remainder what the plan leaves
/// beside the last piece's neighbor (the neighbor's lap lies under it).
std::optional<Length> expected_for(const Job& job, const Catalogue& catalogue, const EdgeWork& work,
                                   ReadingOf of) {
    if (of == ReadingOf::remainder) {
        const Plan plan = make_plan(job, catalogue);
        const Run* run = find_run(plan, work.edge.id, TrimRole::main);
        return run == nullptr || run->pieces.size() < 2
                   ? std::nullopt
                   : std::optional<Length>(run->pieces.back().covers - run->lap);
    }
    if (const auto agreed = work.length(job.practice)) {
        return agreed;
    }
    for (auto reading = work.readings.rbegin(); reading != work.readings.rend(); ++reading) {
        if (!reading->struck && reading->of == of) {
            return reading->length;
        }
    }
    return {};
}

/// What to look at again, now that the reading is in the record.
void say_doubts(const Job& before, const Job& after, const Catalogue& catalogue,
                const ReadingTaken& reading, Marks marks) {
    const EdgeWork& work = *before.find(reading.edge);
    const Tape tape = before.practice.tape;
    if (const auto doubt = doubt_about_so_long(reading.length); !doubt.empty()) {
        std::cerr << doubt.english(marks) << '\n';
    }
    if (const auto expected = expected_for(before, catalogue, work, reading.of)) {
        if (const auto doubt = doubt_about(reading.length, *expected, tape); !doubt.empty()) {
            std::cerr << doubt.english(marks) << '\n';
        }
    }
    if (reading.of == ReadingOf::remainder) {
        return;
    }
    const Verdict verdict = after.find(reading.edge)->verdict(after.practice);
    if (verdict.agreement == Agreement::third || verdict.agreement == Agreement::disagree ||
        verdict.odd_one_out) {
        std::cerr << explain(verdict).english(marks) << '\n';
    }
    if (const Text doubt = hook_doubt(after); !doubt.empty()) {
        std::cerr << doubt.english(marks) << '\n';
    }
}

}  // namespace

Exit take_reading(const TakeArguments& arguments) {
    const Result<Length> length = parse_length(arguments.length, arguments.unit);
    if (!length) {
        return complain("LENGTH", length.problem());
    }
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Result<std::uint64_t> device = device_id();
    if (!device) {
        return complain("device", 0, 0, device.problem());
    }
    const auto journal = JournalFile::open(arguments.job, *device, Opening::existing);
    if (!journal) {
        return complain(arguments.job, 0, 0, journal.problem());
    }
    for (const FileSetAside& set_aside : (*journal)->record().set_aside) {
        std::cerr << explain(set_aside) << '\n';
    }
    const Job before = replay((*journal)->record().events, assets->practice);
    if (before.find(arguments.edge) == nullptr) {
        return complain("EDGE", 1, 1,
                        "The job has no edge " + hemline::quoted(arguments.edge) + ".",
                        edges_of(before));
    }
    const ReadingTaken reading{arguments.edge, arguments.of, *length};
    const Result<Event> event = (*journal)->append(reading, arguments.by, {}, wall_ms());
    if (!event) {
        return complain(arguments.job, 0, 0, event.problem());
    }
    const Job after = replay((*journal)->record().events, assets->practice);
    const Marks marks = marks_for(arguments.unit, after.practice);
    say_doubts(before, after, catalogue_on(assets->catalogue, assets->sections, before), reading,
               marks);
    std::cout << "Edge " << shown_text(arguments.edge) << ' ' << tell_length(*length, marks)
              << " saved " << print_event_id(event->id) << '\n';
    return Exit::fine;
}

}  // namespace hemline
