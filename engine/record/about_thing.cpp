#include "engine/record/about_thing.h"

#include <algorithm>

namespace hemline {

namespace {

Thing of_job(Subject subject, std::string name = {}) {
    Thing thing;
    thing.subject = subject;
    thing.name = std::move(name);
    return thing;
}

Thing of_edge(Subject subject, const std::string& edge, TrimRole role = TrimRole::main,
              int piece = 0) {
    Thing thing = of_job(subject, edge);
    thing.role = role;
    thing.piece = piece;
    return thing;
}

Thing of_metal(EventId first, const std::string& edge, TrimRole role) {
    Thing thing = of_edge(Subject::metal, edge, role);
    thing.step = print_event_id(first);
    return thing;
}

}  // namespace

bool is_personal(std::string_view step) { return step == "tie_off" || step == "ground"; }

/// One answer for each kind, so that a new kind does not compile without one.
struct ThingOf {
    const Things& things;
    const Event& event;

    Thing operator()(const JobStarted& /*f*/) const { return of_job(Subject::job); }
    Thing operator()(const EdgeAdded& f) const { return of_edge(Subject::edge, f.edge.id); }
    Thing operator()(const EdgeTakenOff& f) const { return of_edge(Subject::edge, f.edge); }
    Thing operator()(const ReadingTaken& f) const {
        return of_edge(f.of == ReadingOf::edge ? Subject::reading : Subject::remainder, f.edge);
    }
    Thing operator()(const PitchTaken& f) const { return of_edge(Subject::pitch, f.edge); }
    Thing operator()(const StyleChosen& f) const { return of_edge(Subject::style, f.edge); }
    Thing operator()(const LooksChosen& f) const { return of_edge(Subject::style, f.edge); }
    Thing operator()(const LapChosen& f) const { return of_edge(Subject::lap, f.edge); }
    Thing operator()(const RuleSet& f) const { return of_job(Subject::rule, f.key); }
    Thing operator()(const StockChosen& /*f*/) const { return of_job(Subject::rule, "stock"); }
    Thing operator()(const SectionChosen& f) const {
        return of_job(Subject::rule, "section of " + f.trim);
    }
    Thing operator()(const PlanChosen& f) const { return of_job(Subject::plan, f.trim); }
    Thing operator()(const SupplyChosen& f) const {
        return of_edge(Subject::supply, f.edge, f.role);
    }
    Thing operator()(const PieceCut& f) const {
        return of_edge(Subject::piece, f.edge, f.role, f.piece);
    }
    Thing operator()(const PieceSpoiled& f) const {
        return of_edge(Subject::loss, f.edge, f.role, f.piece);
    }
    Thing operator()(const StepDone& f) const {
        Thing thing = of_edge(Subject::step, f.edge, TrimRole::main, f.piece);
        thing.step = f.step;
        thing.by = is_personal(f.step) ? event.by : "";
        return thing;
    }
    Thing operator()(const EdgeFinished& f) const { return of_edge(Subject::finish, f.edge); }
    Thing operator()(const EdgeSentBack& f) const { return of_edge(Subject::finish, f.edge); }
    /// What two count is there twice; but only one correction of a count can be right.
    Thing operator()(const MetalCounted& f) const {
        const Things::Metal* const before = things.corrected_by(event);
        return before == nullptr ? of_metal(event.id, f.edge, f.role)
                                 : of_metal(before->first, before->edge, before->role);
    }
    /// Two new sticks measured are two sticks, and so are two of a pile.
    Thing operator()(const StickMeasured& f) const {
        const Things::Metal* const before = things.one_of(f.metal);
        return before == nullptr ? of_metal(event.id, f.edge, f.role)
                                 : of_metal(before->first, before->edge, before->role);
    }
    Thing operator()(const StickSpoiled& f) const {
        const Things::Metal* const before = things.one_of(f.metal);
        return before == nullptr ? Thing() : of_metal(before->first, before->edge, before->role);
    }
    Thing operator()(const Picked& f) const { return f.about; }
    Thing operator()(const Struck& /*f*/) const { return {}; }
    Thing operator()(const CopyNoted& /*f*/) const { return {}; }
    Thing operator()(const Unknown& /*f*/) const { return {}; }
};

const Things::Metal* Things::left_by(EventId id) const {
    const auto found = metal_.find(id);
    return found == metal_.end() ? nullptr : &found->second;
}

const Things::Metal* Things::corrected_by(const Event& event) const {
    for (const EventId id : event.supersedes) {
        if (const Metal* const before = left_by(id)) {
            return before;
        }
    }
    return nullptr;
}

const Things::Metal* Things::one_of(const MetalTaken& metal) const {
    const Metal* const before = metal.offcut ? left_by(*metal.offcut) : nullptr;
    return before != nullptr && before->one ? before : nullptr;
}

Thing Things::of(const Event& event) const { return std::visit(ThingOf{*this, event}, event.fact); }

void Things::take_in(const Event& event) {
    if (const auto* cut = std::get_if<PieceCut>(&event.fact)) {
        metal_[event.id] = {event.id, cut->edge, cut->role, true};
    } else if (const auto* spoiled = std::get_if<PieceSpoiled>(&event.fact)) {
        if (event.supersedes.empty()) {  // what its stick had left; else its cut left it
            metal_[event.id] = {event.id, spoiled->edge, spoiled->role, true};
        }
    } else if (const auto* counted = std::get_if<MetalCounted>(&event.fact)) {
        const Metal* const before = corrected_by(event);
        Metal metal = before == nullptr ? Metal{event.id, counted->edge, counted->role} : *before;
        metal.one = counted->count == 1;
        metal_[event.id] = metal;
    } else if (const auto* measured = std::get_if<StickMeasured>(&event.fact)) {
        const Metal* const before = one_of(measured->metal);
        metal_[event.id] =
            before == nullptr ? Metal{event.id, measured->edge, measured->role} : *before;
    }
}

}  // namespace hemline
