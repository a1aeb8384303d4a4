#include "engine/record/fold.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

#include "engine/dividing/piece_bounds.h"
#include "engine/record/event.h"
#include "engine/record/job_metal.h"
#include "engine/record/job_places.h"
#include "engine/record/wind.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

std::size_t place_of(const Job& job, const EdgeWork& work) {
    return static_cast<std::size_t>(&work - job.edges.data());
}

EdgeWork* work_on(Job& job, std::string_view edge) {
    const EdgeWork* const found = job.find(edge);
    return found == nullptr ? nullptr : &job.edges[place_of(job, *found)];
}

std::string rule_named(std::string_view key) { return "rule " + std::string(key); }

/// Folds a fact in. Each overload changes the job as its fact says, or does nothing when the fact
/// makes no sense there.
struct Fold {
    Job& job;
    const Event& event;
    JobPlaces& places;

    EdgePlaces& on(const EdgeWork& work) const { return places.edges[place_of(job, work)]; }

    /// The plan that was picked no longer decides how the edge is divided.
    void forget_chosen(EdgeWork& work) const {
        work.chosen.clear();
        places.picked.erase(place_of(job, work));
    }
    /// From which side the level edges are fitted, by what was said and by the wind. Metal that is
    /// cut stays as it was cut.
    void turn_to_wind() const {
        const auto by_wind = sides_by_wind(job);
        const auto& said = job.practice.site.firsts;
        for (EdgeWork& work : job.edges) {
            if (is_sloped(work.edge.kind) || !work.cut.empty()) {
                continue;
            }
            const auto wind = by_wind.find(work.edge.id);
            const auto own = said.find(work.edge.id);
            const Side first = own != said.end()       ? own->second
                               : wind != by_wind.end() ? wind->second
                                                       : work.added.first;
            if (first != work.edge.first) {
                work.edge.first = first;
                forget_chosen(work);
            }
        }
    }
    /// A new edge; nullptr where the job has no room for it, which is noted.
    EdgeWork* added(const Edge& edge) const {
        const bool stays = places.taken_off.count(edge.id) == 0;
        if (stays && places.edges_kept == edges_most) {
            if (places.edges_left_out.insert(edge.id).second) {
                places.first_left_out =
                    places.edges_left_out.size() == 1 ? edge.id : places.first_left_out;
                job.left_out.add(
                    "edges", too_many_edges(places.edges_left_out.size(), places.first_left_out));
            }
            return nullptr;
        }
        places.edges_kept += stays ? 1 : 0;
        places.edges.emplace_back();
        job.places_of_edges.emplace(edge.id, job.edges.size());
        EdgeWork& work = job.edges.emplace_back();
        work.added = work.edge = edge;
        work.edge.lap.reset();
        return &work;
    }

    void operator()(const JobStarted& fact) const {
        job.name = fact.name;
        job.practice_name = fact.practice;
    }
    void operator()(const EdgeAdded& fact) const {
        EdgeWork* work = work_on(job, fact.edge.id);
        if (work == nullptr) {
            work = added(fact.edge);
        }
        if (work == nullptr) {
            return;
        }
        Edge edge = fact.edge;
        edge.lap = work->edge.lap;
        // It does not name what it leaves unchanged: another tablet may have used that meanwhile.
        edge.pitch = edge.pitch == work->added.pitch ? work->edge.pitch : edge.pitch;
        edge.looks = edge.looks == work->added.looks ? work->edge.looks : edge.looks;
        edge.first = edge.first == work->added.first ? work->edge.first : edge.first;
        work->edge = edge;
        work->added = fact.edge;
        work->taken_off.reset();
        forget_chosen(*work);
        if (job.practice.site.wind_from || !job.practice.site.firsts.empty()) {
            turn_to_wind();
        }
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
        places.divide_anew(job, before);
        if (job.practice.site != before.site) {
            turn_to_wind();
        }
    }
    void operator()(const PieceCut& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        take_metal({job, places.offcuts}, event, fact.edge, fact.role, fact.metal, fact.cut);
        if (job.spoiled_cuts.count(event.id) > 0) {
            work->spoiled += job.spare_cuts.count(event.id) > 0 ? 1 : 0;
            return;  // its metal is gone; a cut that had not seen it still stands
        }
        // Cut again, whether or not it supersedes the earlier cut: the later cut stands, and the
        // metal of both is used up.
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
    template <AStep One>
    void operator()(const One& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        const StepSaid said = fact.said();
        if (work == nullptr || said.piece < 0) {
            return;
        }
        const StepKey key = key_of(said, event.by);
        on(*work).steps.take_all(key);
        on(*work).steps.add(key, work->steps.size());
        work->steps.push_back({event.id, job.folded, event.by, said, wall_time(event)});
    }
    void operator()(const GateAnswered& fact) const {
        places.gates.emplace(event.id, job.gates.size());
        job.gates.push_back({event.id, event.by, wall_time(event), fact.edge, fact.found,
                             fact.watcher, fact.hospital});
    }
    void operator()(const GateLifted& fact) const {
        for (const EventId& no : fact.noes) {
            if (const auto gate = places.gates.find(no); gate != places.gates.end()) {
                job.gates[gate->second].lifted = true;
            }
        }
    }
    void operator()(const ValueAccepted& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->accepted.push_back({fact.value, event.by, wall_time(event)});
        }
    }
    void operator()(const BodyWalked& fact) const {
        const auto own = std::find_if(job.bodies.begin(), job.bodies.end(),
                                      [&](const WalkedBody& one) { return one.id == fact.body; });
        if (fact.sides.empty()) {
            if (own != job.bodies.end()) {
                job.bodies.erase(own);
            }
        } else if (own != job.bodies.end()) {
            *own = {fact.body, event.id, fact.sides, fact.closed, fact.host};
        } else if (job.bodies.size() < bodies_most) {
            job.bodies.push_back({fact.body, event.id, fact.sides, fact.closed, fact.host});
        } else {
            job.left_out.add("bodies", too_many_bodies(fact.body));
        }
    }
    void operator()(const EdgePlaced& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->place = fact.at;
        }
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
            work->accepted.clear();
            work->sent_back = SentBack{event.id, wall_time(event), event.by, fact.reason};
            const std::string mended(mend_step);
            on(*work).steps.take_between({mended, 0, ""},
                                         {mended, std::numeric_limits<int>::max(), ""});
        }
    }
    void operator()(const EdgeTakenOff& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->taken_off = event.id;
            if (job.practice.site.wind_from) {
                turn_to_wind();
            }
        }
    }
    template <AStrike One>
    void operator()(const One& fact) const {
        job.struck.insert(fact.target);
    }
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
        places.divide_anew(job, before);
    }
    void operator()(const SupplyChosen& fact) const {
        if (work_on(job, fact.edge) != nullptr) {
            const std::pair key{fact.edge, fact.role};
            places.supplies.take_all(key);
            places.supplies.add(key, job.supplies.size());
            job.supplies.push_back({fact.edge, fact.role, fact.supply});
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
    void operator()(const Picked& /*fact*/) const {}  // what it crosses out is struck
    void operator()(const CopyNoted& /*fact*/) const {}
    void operator()(const Unknown& /*fact*/) const { ++job.unknown_events; }
};

}  // namespace

void fold_in(Job& job, JobPlaces& places, const Event& event) {
    ++job.folded;
    // A struck reading is shown as struck.
    if (job.struck.count(event.id) == 0 || std::holds_alternative<ReadingTaken>(event.fact)) {
        std::visit(Fold{job, event, places}, event.fact);
    }
}

}  // namespace hemline
