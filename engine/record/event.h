// Events: what happened, in the past tense. The journal is a list of them, and nothing else is
// saved.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/edge_facts.h"
#include "engine/record/job_facts.h"
#include "engine/record/metal_facts.h"
#include "engine/record/moment.h"
#include "engine/record/record_facts.h"
#include "engine/record/step_facts.h"

namespace hemline {

using Fact = OneOf<JobFacts, EdgeFacts, MetalFacts, StepFacts, RecordFacts>::Fact;

/// What a strike takes back; none: it is no strike.
std::optional<EventId> struck_by(const Fact& fact);
/// What a fact answers to a step, if it is such an answer.
std::optional<StepSaid> step_in(const Fact& fact);

/// More than a crew makes apart of one thing.
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

/// The device's clock; of version 1 the logical time, all there is, which another's wrong clock may
/// have raised.
WallTime wall_time(const Event& event);

}  // namespace hemline
