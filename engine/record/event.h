// Events: what happened, in the past tense. The journal is a list of them, and nothing else is
// saved.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/body_facts.h"
#include "engine/record/edge_facts.h"
#include "engine/record/gate_facts.h"
#include "engine/record/job_facts.h"
#include "engine/record/metal_facts.h"
#include "engine/record/moment.h"
#include "engine/record/record_facts.h"
#include "engine/record/step_facts.h"

namespace hemline {

using AnyFact =
    OneOf<JobFacts, EdgeFacts, BodyFacts, MetalFacts, StepFacts, GateFacts, RecordFacts>::Fact;
/// What happened: one of the kinds. A class, so that copying it, which asks every kind, is compiled
/// once, in event.cpp, and not in every source that holds an event.
struct Fact : AnyFact {
    using AnyFact::AnyFact;
    Fact();
    Fact(const Fact&);
    Fact(Fact&&) noexcept;
    Fact& operator=(const Fact&);
    Fact& operator=(Fact&&) noexcept;
    ~Fact();

    static constexpr std::size_t kinds = std::variant_size_v<AnyFact>;

    bool operator==(const Fact&) const;
};

/// What a strike takes back; none: it is not a strike.
std::optional<EventId> struck_by(const Fact& fact);
/// What a fact answers to a step, if it is such an answer.
std::optional<StepSaid> step_in(const Fact& fact);

/// More disagreeing events about one thing than a crew makes.
constexpr std::size_t supersedes_most = 4096;

struct Event {
    EventId id;
    HybridTime when;
    std::string by;                   ///< who held the tablet
    std::vector<EventId> supersedes;  ///< what the writer had seen and replaces
    Fact fact;
    std::optional<Moment> moment = {};  ///< none: written in frames of version 1, which lack it

    bool operator==(const Event&) const = default;
};

/// What the device's clock said. For version 1 the logical time, which another device's wrong clock
/// may have raised: nothing else was saved.
WallTime wall_time(const Event& event);

}  // namespace hemline
