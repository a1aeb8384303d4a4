#include "engine/body/moving_side.h"

namespace hemline {

MovingLine line_of(const MovingSide& side) {
    const PlanVector along = (side.to - side.from) * (1 / length_of(side.to - side.from));
    const PlanVector inside = {-along.y, along.x};
    return {along, inside, dot(side.from, inside), side.inward};
}

std::optional<MovingPlace> meeting_of(const MovingLine& a, const MovingLine& b) {
    const double turned = turn(a.inside, b.inside);
    if (std::abs(turned) < parallel_within) {
        return {};
    }
    const auto solved = [&](double of_a, double of_b) {
        return PlanVector{(of_a * b.inside.y - of_b * a.inside.y) / turned,
                          (of_b * a.inside.x - of_a * b.inside.x) / turned};
    };
    return MovingPlace{solved(a.begin, b.begin), solved(a.inward, b.inward)};
}

}  // namespace hemline
