// Whether two events are the same, field by field: not by their bytes, so that a field left out of
// both writing and reading is missed by neither.
#pragma once

#include <algorithm>
#include <tuple>
#include <vector>

#include "engine/record/event.h"

namespace hemline {

inline auto key_of(const MetalTaken& metal) { return std::tie(metal.stick, metal.offcut); }

struct SameFact {
    bool operator()(const JobStarted& a, const JobStarted& b) const {
        return a.name == b.name && a.practice == b.practice;
    }
    bool operator()(const EdgeAdded& a, const EdgeAdded& b) const { return a.edge == b.edge; }
    bool operator()(const ReadingTaken& a, const ReadingTaken& b) const {
        return a.edge == b.edge && a.of == b.of && a.length == b.length;
    }
    bool operator()(const PitchTaken& a, const PitchTaken& b) const {
        return a.edge == b.edge && a.pitch == b.pitch;
    }
    bool operator()(const StyleChosen& a, const StyleChosen& b) const {
        return a.edge == b.edge && a.style == b.style;
    }
    bool operator()(const RuleSet& a, const RuleSet& b) const {
        return a.key == b.key && a.value == b.value;
    }
    bool operator()(const PieceCut& a, const PieceCut& b) const {
        return a.edge == b.edge && a.role == b.role && a.piece == b.piece && a.cut == b.cut &&
               key_of(a.metal) == key_of(b.metal);
    }
    bool operator()(const PieceSpoiled& a, const PieceSpoiled& b) const {
        return a.edge == b.edge && a.role == b.role && a.piece == b.piece && a.lost == b.lost &&
               key_of(a.metal) == key_of(b.metal);
    }
    bool operator()(const StepDone& a, const StepDone& b) const {
        return a.edge == b.edge && a.step == b.step && a.piece == b.piece &&
               a.answer.kind == b.answer.kind && a.answer.length == b.answer.length &&
               a.answer.count == b.answer.count && a.answer.seen == b.answer.seen &&
               a.exception == b.exception && a.exception_by == b.exception_by;
    }
    bool operator()(const EdgeFinished& a, const EdgeFinished& b) const {
        return a.edge == b.edge && a.remark == b.remark;
    }
    bool operator()(const Struck& a, const Struck& b) const {
        return a.target == b.target && a.reason == b.reason;
    }
    bool operator()(const PlanChosen& a, const PlanChosen& b) const {
        return a.prefer == b.prefer && a.trim == b.trim && a.extra_laps == b.extra_laps &&
               a.unbalanced == b.unbalanced && a.sticks == b.sticks && a.runs == b.runs;
    }
    bool operator()(const MetalCounted& a, const MetalCounted& b) const {
        return a.edge == b.edge && a.role == b.role && a.length == b.length && a.count == b.count;
    }
    bool operator()(const StickMeasured& a, const StickMeasured& b) const {
        return a.edge == b.edge && a.role == b.role && key_of(a.metal) == key_of(b.metal) &&
               a.length == b.length;
    }
    bool operator()(const StickSpoiled& a, const StickSpoiled& b) const {
        return a.edge == b.edge && a.role == b.role && key_of(a.metal) == key_of(b.metal);
    }
    bool operator()(const StockChosen& a, const StockChosen& b) const {
        return a.lengths == b.lengths;
    }
    bool operator()(const SupplyChosen& a, const SupplyChosen& b) const {
        return a.edge == b.edge && a.role == b.role && a.supply == b.supply;
    }
    bool operator()(const LooksChosen& a, const LooksChosen& b) const {
        return a.edge == b.edge && a.looks == b.looks;
    }
    bool operator()(const EdgeSentBack& a, const EdgeSentBack& b) const {
        return a.edge == b.edge && a.reason == b.reason;
    }
    bool operator()(const EdgeTakenOff& a, const EdgeTakenOff& b) const { return a.edge == b.edge; }
    bool operator()(const LapChosen& a, const LapChosen& b) const {
        return a.edge == b.edge && a.lap == b.lap;
    }
    bool operator()(const SectionChosen& a, const SectionChosen& b) const {
        return a.trim == b.trim && a.legs == b.legs;
    }
    bool operator()(const Unknown& a, const Unknown& b) const {
        return a.kind == b.kind && a.payload == b.payload;
    }
    template <class A, class B>
    bool operator()(const A&, const B&) const {
        return false;
    }
};

inline bool same_event(const Event& a, const Event& b) {
    return a.id == b.id && a.when == b.when && a.by == b.by && a.supersedes == b.supersedes &&
           a.moment == b.moment && std::visit(SameFact{}, a.fact, b.fact);
}

inline bool same_events(const std::vector<Event>& a, const std::vector<Event>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same_event);
}

}  // namespace hemline
