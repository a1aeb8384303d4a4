#include "engine/record/about_thing.h"

#include <algorithm>
#include <type_traits>

#include "engine/record/thing_names.h"

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

struct EdgeIn {
    template <class One>
    requires std::is_same_v<decltype(One::edge), std::string> std::string operator()(
        const One& f) const {
        return f.edge;
    }
    /// EdgeAdded too: the job may not have the edge before it.
    template <class One>
    requires AStrike<One> || AnyOf<One, JobStarted, EdgeAdded, BodyWalked, RuleSet, PlanChosen,
                                   StockChosen, SectionChosen, CopyNoted, Unknown>
        std::string operator()(const One& /*f*/) const {
        return {};
    }
    std::string operator()(const Picked& f) const {
        return is_on_edge(f.about) ? f.about.name : std::string();
    }
};

struct ValueIn {
    using Said = std::optional<ValueSaid>;

    Said operator()(const ReadingTaken& f) const { return ValueSaid{"length", f.length}; }
    Said operator()(const PieceCut& f) const { return ValueSaid{"cut", f.cut}; }
    Said operator()(const PitchTaken& f) const { return ValueSaid{"pitch", f.pitch}; }
    Said operator()(const LapChosen& f) const {
        return f.lap ? Said(ValueSaid{"lap", *f.lap}) : std::nullopt;
    }
    template <class One>
    requires AStep<One> || AStrike<One> ||
        AnyOf<One, JobStarted, RuleSet, PlanChosen, StockChosen, SectionChosen, EdgeAdded,
              StyleChosen, LooksChosen, EdgeFinished, EdgeSentBack, EdgeTakenOff, PieceSpoiled,
              MetalCounted, StickMeasured, StickSpoiled, SupplyChosen, Picked, CopyNoted,
              GateAnswered, GateLifted, ValueAccepted, BodyWalked, EdgePlaced, Unknown>
            Said operator()(const One& /*f*/) const {
        return {};
    }
};

}  // namespace

std::string edge_in(const Fact& fact) { return std::visit(EdgeIn{}, fact); }

std::optional<ValueSaid> value_in(const Fact& fact) { return std::visit(ValueIn{}, fact); }

bool is_personal(std::string_view step) { return step == "tie_off" || step == "ground"; }

/// Each kind has its answer here, so that a new kind does not compile until it is given an answer.
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
    Thing operator()(const BodyWalked& f) const { return of_job(Subject::body, f.body); }
    Thing operator()(const EdgePlaced& f) const { return of_edge(Subject::place, f.edge); }
    Thing operator()(const RuleSet& f) const { return of_job(Subject::rule, f.key); }
    Thing operator()(const StockChosen& /*f*/) const { return of_job(Subject::rule, "stock"); }
    Thing operator()(const SectionChosen& f) const {
        return of_job(Subject::rule, std::string(section_thing) + f.trim);
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
    template <AStep One>
    Thing operator()(const One& f) const {
        Thing thing = of_edge(Subject::step, f.edge, TrimRole::main, f.said().piece);
        thing.step = f.step;
        thing.by = is_personal(f.step) ? event.by : "";
        return thing;
    }
    Thing operator()(const EdgeFinished& f) const { return of_edge(Subject::finish, f.edge); }
    Thing operator()(const EdgeSentBack& f) const { return of_edge(Subject::finish, f.edge); }
    /// Two counts add up: both piles are there. Of two corrections of a count only one can be
    /// right.
    Thing operator()(const MetalCounted& f) const {
        const Things::Metal* const before = things.corrected_by(event);
        return before == nullptr ? of_metal(event.id, f.edge, f.role)
                                 : of_metal(before->first, before->edge, before->role);
    }
    /// Two measurements of a new stick, or of a stick from a pile, are of two different sticks.
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
    template <class One>
    requires AStrike<One> || AnyOf<One, CopyNoted, GateAnswered, GateLifted, ValueAccepted, Unknown>
        Thing operator()(const One& /*f*/) const {
        return {};
    }
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

/// The metal that an event leaves for later events to be about; none: it leaves nothing.
struct MetalLeft {
    const Things& things;
    const Event& event;
    using Metal = Things::Metal;

    std::optional<Metal> operator()(const PieceCut& f) const {
        return Metal{event.id, f.edge, f.role};
    }
    /// What its stick had left; else its cut left it.
    std::optional<Metal> operator()(const PieceSpoiled& f) const {
        return event.supersedes.empty() ? std::optional(Metal{event.id, f.edge, f.role})
                                        : std::nullopt;
    }
    std::optional<Metal> operator()(const MetalCounted& f) const {
        const Metal* const before = things.corrected_by(event);
        Metal metal = before == nullptr ? Metal{event.id, f.edge, f.role} : *before;
        metal.one = f.count == 1;
        return metal;
    }
    std::optional<Metal> operator()(const StickMeasured& f) const {
        const Metal* const before = things.one_of(f.metal);
        return before == nullptr ? Metal{event.id, f.edge, f.role} : *before;
    }
    template <class One>
    requires AStep<One> || AStrike<One> ||
        AnyOf<One, JobStarted, RuleSet, PlanChosen, StockChosen, SectionChosen, EdgeAdded,
              ReadingTaken, PitchTaken, StyleChosen, LooksChosen, LapChosen, EdgeFinished,
              EdgeSentBack, EdgeTakenOff, StickSpoiled, SupplyChosen, Picked, CopyNoted,
              GateAnswered, GateLifted, ValueAccepted, BodyWalked, EdgePlaced, Unknown>
            std::optional<Metal>
    operator()(const One& /*f*/) const { return {}; }
};

void Things::take_in(const Event& event) {
    if (const std::optional<Metal> left = std::visit(MetalLeft{*this, event}, event.fact)) {
        metal_[event.id] = *left;
    }
}

}  // namespace hemline
