// What a person looked at before he goes on the roof, once a day; and what the foreman answers.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/record/kinds.h"
#include "engine/record/said_values.h"

namespace hemline {

/// His answers, whose day is that of the clock of the tablet. A no holds roof work.
struct GateAnswered {
    static constexpr std::uint16_t kind_number = 54;
    std::string edge;  ///< "not here": a no holds it alone; empty: "not today", the whole roof
    std::vector<GateFound> found;
    std::string watcher;   ///< who watches
    std::string hospital;  ///< the nearest, with its street

    bool operator==(const GateAnswered&) const = default;
};

/// More people than a crew has.
constexpr std::size_t event_noes_most = 1000;

/// The foreman's answer to every no that stood on his screen, and to none that he has not seen.
struct GateLifted {
    static constexpr std::uint16_t kind_number = 55;
    std::string edge;  ///< where he lifted it
    std::vector<EventId> noes;
    std::string reason;

    bool operator==(const GateLifted&) const = default;
};

using GateFacts = Kinds<GateAnswered, GateLifted>;

}  // namespace hemline
