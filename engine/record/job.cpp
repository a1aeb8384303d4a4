#include "engine/record/job.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "engine/plan/piece_bounds.h"
#include "engine/record/job_metal.h"
#include "engine/record/job_places.h"

namespace hemline {
namespace {

std::size_t place_of(const Job& job, const EdgeWork& work) {
    return static_cast<std::size_t>(&work - job.edges.data());
}

EdgeWork* work_on(Job& job, std::string_view edge) {
    const EdgeWork* const found = job.find(edge);
    return found == nullptr ? nullptr : &job.edges[place_of(job, *found)];
}

/// A piece of it was cut or lost.
bool is_worked(const EdgeWork& work) { return !work.cut.empty() || work.spoiled > 0; }

std::string rule_named(std::string_view key) { return "rule " + std::string(key); }

/// A rule that divides runs has changed: runs not begun are divided anew.
void divide_anew(Job& job, JobPlaces& places, const Practice& before) {
    // What only marks, fastens and keeps metal divides nothing.
    Practice now = job.practice;
    for (const auto field :
         {&Practice::offcut_kept, &Practice::cleat_clear, &Practice::hem_notch_clear,
          &Practice::bead_gap, &Practice::bead_width, &Practice::screw_spacing,
          &Practice::screw_margin, &Practice::hook_gap_most, &Practice::seam_spacing}) {
        now.*field = before.*field;
    }
    if (before != now) {
        for (const std::size_t edge : places.picked) {
            job.edges[edge].chosen.clear();
        }
        places.picked.clear();
    }
}

/// Folds one fact in. Each says what it does to the job, and nothing when it makes no sense there.
struct Fold {
    Job& job;
    const Event& event;
    JobPlaces& places;

    EdgePlaces& on(const EdgeWork& work) const { return places.edges[place_of(job, work)]; }

    /// The plan picked no longer says how the edge is divided.
    void forget_chosen(EdgeWork& work) const {
        work.chosen.clear();
        places.picked.erase(place_of(job, work));
    }
    /// A new edge; nullptr where the job has no room for it, which is noted.
    EdgeWork* added(const std::string& edge) const {
        const bool stays = places.taken_off.count(edge) == 0;
        if (stays && places.edges_kept == edges_most) {
            if (places.edges_left_out.insert(edge).second) {
                places.first_left_out =
                    places.edges_left_out.size() == 1 ? edge : places.first_left_out;
                job.left_out.add(
                    "edges", too_many_edges(places.edges_left_out.size(), places.first_left_out));
            }
            return nullptr;
        }
        places.edges_kept += stays ? 1 : 0;
        places.edges.emplace_back();
        job.places_of_edges.emplace(edge, job.edges.size());
        return &job.edges.emplace_back();
    }

    void operator()(const JobStarted& fact) const {
        job.name = fact.name;
        job.practice_name = fact.practice;
    }
    void operator()(const EdgeAdded& fact) const {
        EdgeWork* work = work_on(job, fact.edge.id);
        if (work == nullptr) {
            work = added(fact.edge.id);
        }
        if (work == nullptr) {
            return;
        }
        const std::optional<Length> lap = work->edge.lap;
        work->edge = fact.edge;
        work->edge.lap = lap;
        work->taken_off = false;
        forget_chosen(*work);
    }
    void operator()(const ReadingTaken& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            const bool struck = job.struck.count(event.id) > 0;
            std::ptrdiff_t seen = 0;
            for (const EventId& id :
                 std::set<EventId>(event.supersedes.begin(), event.supersedes.end())) {
                const auto [from, to] = on(*work).readings.equal_range(id);
                seen +=
                    std::count_if(from, to, [&](const auto& one) { return one.second == fact.of; });
            }
            const bool settles = seen > 1;
            on(*work).readings.emplace(event.id, fact.of);
            work->readings.push_back(
                {event.id, event.when, event.by, fact.of, fact.length, struck, settles});
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
        if (!changed) {
            job.left_out.add(rule_named(fact.key), rule_refused(changed.problem()));
            return;
        }
        job.left_out.mend(rule_named(fact.key));
        const Practice before = job.practice;
        job.practice = *changed;
        if (job.practice.stock != before.stock) {
            job.stock_shorter.clear();
        }
        divide_anew(job, places, before);
    }
    void operator()(const PieceCut& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        take_metal({job, places.offcuts}, event, fact.edge, fact.role, fact.metal, fact.cut);
        if (job.spoiled_cuts.count(event.id) > 0) {
            return;  // its metal is gone, and a cut made apart from it stands on
        }
        // Cut again, whether or not the former is superseded: the later stands, both are metal
        // gone.
        EdgePlaces& own = on(*work);
        const PieceKey key = key_of(fact.role, fact.piece);
        own.cut.take_all(key);
        own.cut.add(key, work->cut.size());
        own.cut_by.emplace(event.id, key);
        work->cut.push_back({event.id, fact.role, fact.piece, fact.cut});
        places.picked.erase(place_of(job, *work));
    }
    void operator()(const PieceSpoiled& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        ++work->spoiled;
        if (event.supersedes.empty()) {
            take_metal({job, places.offcuts}, event, fact.edge, fact.role, fact.metal, fact.lost);
            return;
        }
        // The metal went when the piece was cut. A cut that no longer stands takes nothing with it.
        EdgePlaces& own = on(*work);
        for (const EventId& id : event.supersedes) {
            const auto [from, to] = own.cut_by.equal_range(id);
            for (auto one = from; one != to; ++one) {
                const auto cut = own.cut.first(one->second);
                if (cut && work->cut[*cut].id == id) {
                    own.cut.take_all(one->second);
                }
            }
        }
        if (own.cut.empty() && !work->chosen.empty()) {
            places.picked.insert(place_of(job, *work));
        }
    }
    void operator()(const StepDone& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 0) {
            return;
        }
        const StepKey key{fact.step, fact.piece};
        on(*work).steps.take_all(key);
        on(*work).steps.add(key, work->steps.size());
        work->steps.push_back({event.id, event.when, event.by, fact});
    }
    void operator()(const EdgeFinished& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->finished = event.id;
            work->finished_by = event.by;
            work->finished_when = event.when;
            work->sent_back.reset();
        }
    }
    void operator()(const EdgeSentBack& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->finished.reset();
            work->sent_back = SentBack{event.id, event.when, event.by, fact.reason};
            on(*work).steps.take_between({std::string(mend_step), 0},
                                         {std::string(mend_step), std::numeric_limits<int>::max()});
        }
    }
    void operator()(const EdgeTakenOff& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->taken_off = true;
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
            if (run.cuts.size() > static_cast<std::size_t>(pieces_most)) {
                job.left_out.add("run of " + run.edge, too_many_cuts(run.edge, run.cuts.size()));
                continue;
            }
            job.left_out.mend("run of " + run.edge);
            const auto same = [&](const RunChosen& own) { return own.role == run.role; };
            work->chosen.erase(std::remove_if(work->chosen.begin(), work->chosen.end(), same),
                               work->chosen.end());
            work->chosen.push_back(run);
            if (on(*work).cut.empty()) {
                places.picked.insert(place_of(job, *work));
            }
        }
    }
    void operator()(const MetalCounted& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            count_metal({job, places.offcuts}, event, fact);
        }
    }
    void operator()(const StickMeasured& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            measure_stick({job, places.offcuts}, event, fact);
        }
    }
    void operator()(const StickSpoiled& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            spoil_stick({job, places.offcuts}, fact);
        }
    }
    void operator()(const StockChosen& fact) const {
        const Practice before = job.practice;
        choose_stock(job, fact);
        divide_anew(job, places, before);
    }
    void operator()(const SupplyChosen& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            const std::pair key{fact.edge, fact.role};
            places.supplies.take_all(key);
            places.supplies.add(key, job.supplies.size());
            job.supplies.push_back(fact);
        }
    }
    void operator()(const SectionChosen& fact) const {
        if (fact.legs.size() > legs_most) {
            job.left_out.add("section of " + fact.trim, too_many_legs(fact.trim, fact.legs.size()));
            job.sections.erase(fact.trim);
            return;
        }
        job.left_out.mend("section of " + fact.trim);
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
    void operator()(const Unknown& /*fact*/) const { ++job.unknown_events; }
};

void drop_taken_off(Job& job) {
    std::set<std::string_view> with_metal;
    for (const Offcut& offcut : job.offcuts) {
        with_metal.insert(offcut.edge);
    }
    const auto is_gone = [&](const EdgeWork& work) {
        const auto is_edge = [](const Thing& thing) { return thing.subject == Subject::edge; };
        return work.taken_off && !is_worked(work) && with_metal.count(work.edge.id) == 0 &&
               std::none_of(work.undecided.begin(), work.undecided.end(), is_edge);
    };
    job.edges.erase(std::remove_if(job.edges.begin(), job.edges.end(), is_gone), job.edges.end());
    job.places_of_edges.clear();
    for (const EdgeWork& work : job.edges) {
        job.places_of_edges.emplace(work.edge.id, place_of(job, work));
    }
}

/// A rule set apart holds up every edge; the first few are named on each.
constexpr std::ptrdiff_t rules_named_most = 4;

/// Tells every edge what of it is made apart.
void note_undecided(Job& job) {
    std::ptrdiff_t rules_named = 0;
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.thing.subject != Subject::rule) {
            EdgeWork* const work = work_on(job, conflict.thing.name);
            if (work != nullptr && is_on(conflict.thing, work->edge.id)) {
                work->undecided.push_back(conflict.thing);
            }
        } else if (rules_named++ < rules_named_most) {
            for (EdgeWork& work : job.edges) {
                work.undecided.push_back(conflict.thing);
            }
        }
    }
}

/// The edges that the last word on them takes off.
std::set<std::string> taken_off_in(std::span<const Event> events, const Job& job) {
    std::set<std::string> gone;
    for (const Event& event : events) {
        if (job.struck.count(event.id) > 0) {
            continue;
        }
        if (const auto* off = std::get_if<EdgeTakenOff>(&event.fact)) {
            gone.insert(off->edge);
        } else if (const auto* added = std::get_if<EdgeAdded>(&event.fact)) {
            gone.erase(added->edge.id);
        }
    }
    return gone;
}

/// Whether an event still has its say though it is struck: a reading is shown as struck, and a
/// strike cannot itself be struck (two that strike each other would have no answer).
bool heard_when_struck(const Fact& fact) {
    return std::holds_alternative<ReadingTaken>(fact) || std::holds_alternative<Struck>(fact);
}

void fold_in(Job& job, JobPlaces& places, const Event& event) {
    if (job.struck.count(event.id) == 0 || heard_when_struck(event.fact)) {
        std::visit(Fold{job, event, places}, event.fact);
    }
}

}  // namespace

bool has_metal(const Job& job, const EdgeWork& work) {
    const auto of_it = [&](const auto& metal) { return metal.edge == work.edge.id; };
    return is_worked(work) || std::any_of(job.offcuts.begin(), job.offcuts.end(), of_it);
}

const EdgeWork* Job::find(std::string_view edge) const {
    const auto place = places_of_edges.find(edge);
    if (place != places_of_edges.end() && place->second < edges.size() &&
        edges[place->second].edge.id == edge) {
        return &edges[place->second];
    }
    if (places_of_edges.size() == edges.size()) {
        return nullptr;
    }
    // Put together by hand, as a test does.
    const auto found = std::find_if(edges.begin(), edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == edges.end() ? nullptr : &*found;
}

void apply(Job& job, const Event& event) {
    JobPlaces places(job);
    fold_in(job, places, event);
    places.sweep(job);
}

Job replay(std::span<const Event> events, const Practice& practice) {
    Job job;
    job.practice = practice;
    for (const Event& event : events) {
        if (const auto* strike = std::get_if<Struck>(&event.fact)) {
            job.struck.insert(strike->target);
        }
    }
    for (const Event& event : events) {
        if (std::holds_alternative<PieceSpoiled>(event.fact) && job.struck.count(event.id) == 0) {
            job.spoiled_cuts.insert(event.supersedes.begin(), event.supersedes.end());
        }
    }
    JobPlaces places(job);
    places.taken_off = taken_off_in(events, job);
    for (const Event& event : events) {
        fold_in(job, places, event);
    }
    places.sweep(job);
    job.conflicts = find_conflicts(events);
    note_undecided(job);
    drop_taken_off(job);
    return job;
}

}  // namespace hemline
