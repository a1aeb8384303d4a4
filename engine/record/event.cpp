#include "engine/record/event.h"

#include <type_traits>

namespace hemline {

Fact::Fact() = default;
Fact::Fact(const Fact&) = default;
Fact::Fact(Fact&&) noexcept = default;
Fact& Fact::operator=(const Fact&) = default;
Fact& Fact::operator=(Fact&&) noexcept = default;
Fact::~Fact() = default;
bool Fact::operator==(const Fact& other) const {
    return static_cast<const AnyFact&>(*this) == static_cast<const AnyFact&>(other);
}

std::optional<EventId> struck_by(const Fact& fact) {
    return std::visit(
        [](const auto& one) -> std::optional<EventId> {
            if constexpr (AStrike<std::decay_t<decltype(one)>>) {
                return one.target;
            }
            return {};
        },
        fact);
}

std::optional<StepSaid> step_in(const Fact& fact) {
    return std::visit(
        [](const auto& one) -> std::optional<StepSaid> {
            if constexpr (AStep<std::decay_t<decltype(one)>>) {
                return one.said();
            }
            return {};
        },
        fact);
}

WallTime wall_time(const Event& event) {
    return event.moment ? event.moment->clock : WallTime{event.when.wall_ms};
}

bool EdgeAdded::operator==(const EdgeAdded& other) const {
    Edge with_lap = edge;
    with_lap.lap = other.edge.lap;
    return with_lap == other.edge;
}

}  // namespace hemline
