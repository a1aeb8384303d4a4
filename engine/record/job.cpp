#include "engine/record/job.h"

#include <algorithm>

#include "engine/record/about_thing.h"
#include "engine/record/edge_back.h"
#include "engine/record/job_metal.h"
#include "engine/record/standing.h"

namespace hemline {
namespace {

EdgeWork* work_on(Job& job, std::string_view edge) {
    const auto found = std::find_if(job.edges.begin(), job.edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == job.edges.end() ? nullptr : &*found;
}

/// The plan picked no longer says how the edge is divided.
void forget_chosen(EdgeWork& work) { work.chosen.clear(); }

/// A rule that divides runs has changed: runs not begun are divided anew.
void divide_anew(Job& job, const Practice& before) {
    // What only marks, fastens and keeps metal divides nothing.
    Practice now = job.practice;
    for (const auto field :
         {&Practice::offcut_kept, &Practice::cleat_clear, &Practice::hem_notch_clear,
          &Practice::bead_gap, &Practice::bead_width, &Practice::screw_spacing,
          &Practice::screw_margin, &Practice::hook_gap_most, &Practice::seam_spacing}) {
        now.*field = before.*field;
    }
    if (before != now) {
        for (EdgeWork& work : job.edges) {
            if (work.cut.empty()) {
                forget_chosen(work);
            }
        }
    }
}

/// Folds one fact in. Each says what it does to the job, and nothing when it makes no sense there.
struct Fold {
    Job& job;
    const Event& event;

    void operator()(const JobStarted& fact) const {
        job.name = fact.name;
        job.practice_name = fact.practice;
    }
    void operator()(const EdgeAdded& fact) const {
        EdgeWork* work = work_on(job, fact.edge.id);
        if (work == nullptr) {
            work = &job.edges.emplace_back();
            work->added = work->edge = fact.edge;
            work->edge.lap.reset();
        }
        Edge edge = fact.edge;
        edge.lap = work->edge.lap;
        // What it leaves as it was, it does not say: another tablet may have taken it meanwhile.
        edge.pitch = edge.pitch == work->added.pitch ? work->edge.pitch : edge.pitch;
        edge.looks = edge.looks == work->added.looks ? work->edge.looks : edge.looks;
        work->edge = edge;
        work->added = fact.edge;
        work->taken_off.reset();
        forget_chosen(*work);
    }
    void operator()(const ReadingTaken& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            const bool struck = job.struck.count(event.id) > 0;
            const bool settles = job.settling.count(event.id) > 0;
            work->readings.push_back({event.id, job.folded, event.by, fact.of, fact.length, struck,
                                      settles, wall_time(event)});
        }
    }
    void operator()(const PitchTaken& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->edge.pitch = fact.pitch;
        }
    }
    void operator()(const StyleChosen& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->style = fact.style;
            forget_chosen(*work);
        }
    }
    void operator()(const RuleSet& fact) const {
        const Result<Practice> changed = with_rule(job.practice, fact.key, fact.value);
        if (changed) {
            const Practice before = job.practice;
            job.practice = *changed;
            if (job.practice.stock != before.stock) {
                job.stock_shorter.clear();
            }
            divide_anew(job, before);
        }
    }
    void operator()(const PieceCut& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        take_metal(job, event, fact.edge, fact.role, fact.metal, fact.cut);
        if (job.spoiled_cuts.count(event.id) > 0) {
            work->spoiled += job.spare_cuts.count(event.id) > 0 ? 1 : 0;
            return;  // its metal is gone, and a cut made apart from it stands on
        }
        // Cut again, whether or not the former is superseded: the later stands, both are metal
        // gone.
        const auto same = [&](const CutPiece& cut) {
            return cut.role == fact.role && cut.piece == fact.piece;
        };
        work->cut.erase(std::remove_if(work->cut.begin(), work->cut.end(), same), work->cut.end());
        work->cut.push_back({event.id, fact.role, fact.piece, fact.cut});
    }
    void operator()(const PieceSpoiled& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        ++work->spoiled;
        if (event.supersedes.empty()) {
            take_metal(job, event, fact.edge, fact.role, fact.metal, fact.lost);
            return;
        }
        // The metal went when the piece was cut. A cut that no longer stands takes nothing with it.
        const std::set<EventId> named(event.supersedes.begin(), event.supersedes.end());
        const auto undone = [&](const CutPiece& cut) { return named.count(cut.id) > 0; };
        work->cut.erase(std::remove_if(work->cut.begin(), work->cut.end(), undone),
                        work->cut.end());
    }
    void operator()(const StepDone& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 0) {
            return;
        }
        const auto same = [&](const DoneStep& done) {
            return done.step.step == fact.step && done.step.piece == fact.piece &&
                   (!is_personal(fact.step) || done.by == event.by);
        };
        work->steps.erase(std::remove_if(work->steps.begin(), work->steps.end(), same),
                          work->steps.end());
        work->steps.push_back({event.id, job.folded, event.by, fact, wall_time(event)});
    }
    void operator()(const EdgeFinished& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->finished = event.id;
            work->finished_by = event.by;
            work->finished_clock = wall_time(event);
            work->sent_back.reset();
        }
    }
    void operator()(const EdgeSentBack& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->finished.reset();
            work->sent_back = SentBack{event.id, wall_time(event), event.by, fact.reason};
            const auto mended = [](const DoneStep& done) { return done.step.step == mend_step; };
            work->steps.erase(std::remove_if(work->steps.begin(), work->steps.end(), mended),
                              work->steps.end());
        }
    }
    void operator()(const EdgeTakenOff& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->taken_off = event.id;
        }
    }
    void operator()(const Struck& fact) const { job.struck.insert(fact.target); }
    void operator()(const PlanChosen& fact) const {
        job.prefer = fact.prefer;
        for (const RunChosen& run : fact.runs) {
            EdgeWork* work = work_on(job, run.edge);
            if (work == nullptr) {
                continue;
            }
            const auto same = [&](const RunChosen& own) { return own.role == run.role; };
            work->chosen.erase(std::remove_if(work->chosen.begin(), work->chosen.end(), same),
                               work->chosen.end());
            work->chosen.push_back(run);
        }
    }
    void operator()(const MetalCounted& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            count_metal(job, event, fact);
        }
    }
    void operator()(const StickMeasured& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            measure_stick(job, event, fact);
        }
    }
    void operator()(const StickSpoiled& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            spoil_stick(job, fact);
        }
    }
    void operator()(const StockChosen& fact) const {
        const Practice before = job.practice;
        choose_stock(job, fact);
        divide_anew(job, before);
    }
    void operator()(const SupplyChosen& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            job.supplies.push_back(fact);
        }
    }
    void operator()(const SectionChosen& fact) const {
        if (fact.legs.empty()) {
            job.sections.erase(fact.trim);
        } else {
            job.sections[fact.trim] = fact.legs;
        }
    }
    void operator()(const LooksChosen& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->edge.looks = fact.looks;
            work->style.reset();
            forget_chosen(*work);
        }
    }
    void operator()(const LapChosen& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->edge.lap = fact.lap;
            forget_chosen(*work);
        }
    }
    void operator()(const Picked& /*fact*/) const {}  // what it crosses out is struck
    void operator()(const CopyNoted& /*fact*/) const {}
    void operator()(const Unknown& /*fact*/) const { ++job.unknown_events; }
};

void drop_taken_off(Job& job) {
    const auto is_gone = [&](const EdgeWork& work) {
        const auto is_edge = [](const Undecided& one) {
            return one.thing.subject == Subject::edge;
        };
        return work.taken_off && !has_metal(job, work) &&
               std::none_of(work.undecided.begin(), work.undecided.end(), is_edge);
    };
    job.edges.erase(std::remove_if(job.edges.begin(), job.edges.end(), is_gone), job.edges.end());
}

/// Tells each edge what it waits for. Of the rules one is enough to hold them all.
void hold_edges(Job& job) {
    std::map<std::string, EdgeWork*> by_id;
    for (EdgeWork& work : job.edges) {
        by_id[work.edge.id] = &work;
    }
    const auto hold = [&](const std::string& edge, const Conflict& conflict) {
        if (const auto found = by_id.find(edge); found != by_id.end()) {
            found->second->undecided.push_back({conflict.thing, conflict.what()});
        }
    };
    const Conflict* rule = nullptr;
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.thing.subject == Subject::rule) {
            rule = rule == nullptr ? &conflict : rule;
        } else if (conflict.thing.subject == Subject::plan) {
            for (const std::string& edge : conflict.edges) {
                hold(edge, conflict);
            }
        } else if (is_on_edge(conflict.thing)) {
            hold(conflict.thing.name, conflict);
        }
    }
    for (EdgeWork& work : job.edges) {
        if (rule != nullptr) {
            work.undecided.push_back({rule->thing, rule->what()});
        }
    }
}

}  // namespace

Verdict EdgeWork::verdict(const Practice& practice) const {
    std::vector<Length> lengths;
    for (const RecordedReading& reading : readings) {
        if (reading.struck || reading.of != ReadingOf::edge) {
            continue;
        }
        if (reading.settles) {
            const auto contradicts = [&](Length before) {
                const Length longer = std::max(before, reading.length);
                return absolute(before - reading.length) >
                       allowed_difference(longer, practice.tape);
            };
            lengths.erase(std::remove_if(lengths.begin(), lengths.end(), contradicts),
                          lengths.end());
        }
        lengths.push_back(reading.length);
    }
    return judge_readings(lengths, practice.tape, practice.cut_grid);
}

std::optional<Length> EdgeWork::length(const Practice& practice) const {
    return verdict(practice).length;
}

std::optional<Length> EdgeWork::remainder() const {
    for (auto reading = readings.rbegin(); reading != readings.rend(); ++reading) {
        if (!reading->struck && reading->of == ReadingOf::remainder) {
            return reading->length;
        }
    }
    return {};
}

bool has_metal(const Job& job, const EdgeWork& work) {
    const auto of_it = [&](const auto& metal) { return metal.edge == work.edge.id; };
    return !work.cut.empty() || work.spoiled > 0 ||
           std::any_of(job.offcuts.begin(), job.offcuts.end(), of_it);
}

const EdgeWork* Job::find(std::string_view edge) const {
    const auto found = std::find_if(edges.begin(), edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == edges.end() ? nullptr : &*found;
}

void apply(Job& job, const Event& event) {
    ++job.folded;
    // A struck reading is shown as struck.
    if (job.struck.count(event.id) == 0 || std::holds_alternative<ReadingTaken>(event.fact)) {
        std::visit(Fold{job, event}, event.fact);
    }
}

Edge said_anew(const EdgeWork& work, Edge edge) {
    edge.pitch = work.added.pitch;
    edge.looks = work.added.looks;
    return edge;
}

Job replay(std::span<const Event> events, const Practice& practice) {
    Job job;
    job.practice = practice;
    Standing standing = standing_of(events);
    job.struck = std::move(standing.struck);
    job.spoiled_cuts = std::move(standing.spoiled_cuts);
    job.spare_cuts = std::move(standing.spare_cuts);
    job.settling = std::move(standing.settling);
    job.conflicts = std::move(standing.conflicts);
    for (const Event& event : events) {
        if (!std::holds_alternative<Struck>(event.fact)) {  // those that count are heard
            apply(job, event);
        }
    }
    add_edges_back(job, events);
    hold_edges(job);
    drop_taken_off(job);
    return job;
}

}  // namespace hemline
