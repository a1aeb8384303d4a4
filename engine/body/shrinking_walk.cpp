#include "engine/body/shrinking_walk.h"

#include <algorithm>

namespace hemline {

namespace {

/// When something that is `now` and changes by `change` for each unit of height is used up.
double used_up(double now, double change, double height) {
    return change < -1e-12 ? std::max(height, height - now / change) : never;
}

/// When the side from `corner` to `next` has no length left.
double shrunk(const ShrinkingCorner& corner, const ShrinkingCorner& next,
              std::span<const MovingLine> lines, double height) {
    const PlanVector along = lines[corner.side].along;
    return used_up(dot(next.place.where(height) - corner.place.where(height), along),
                   dot(next.place.by - corner.place.by, along), height);
}

/// When an inside corner reaches the side from `begin` to `end`; never where not before `next`.
double reached(const ShrinkingCorner& corner, const ShrinkingCorner& begin,
               const ShrinkingCorner& end, std::span<const MovingLine> lines, double height,
               double next) {
    const MovingLine& line = lines[begin.side];
    const double off =
        dot(corner.place.where(height), line.inside) - line.begin - line.inward * height;
    if (off < -hair) {
        return never;  // behind the side's line: it moves away
    }
    const double at = used_up(off, dot(corner.place.by, line.inside) - line.inward, height);
    if (at >= next) {
        return never;
    }
    const PlanVector seen = corner.place.where(at);
    const bool within = dot(seen - begin.place.where(at), line.along) > -hair &&
                        dot(end.place.where(at) - seen, line.along) > -hair;
    return within ? at : never;
}

}  // namespace

double next_height(const ShrinkingWalk& walk, std::span<const MovingLine> lines, double height) {
    double next = never;
    const std::size_t n = walk.size();
    for (std::size_t i = 0; i < n; ++i) {
        next = std::min(next, shrunk(walk[i], walk[(i + 1) % n], lines, height));
    }
    for (std::size_t i = 0; i < n; ++i) {
        if (!walk[i].inside) {
            continue;
        }
        for (std::size_t k = 2; k + 1 < n; ++k) {  // neither of its two sides, nor the corner's own
            const std::size_t side = (i + k - 1) % n;
            next = std::min(
                next, reached(walk[i], walk[side], walk[(side + 1) % n], lines, height, next));
        }
    }
    return next;
}

}  // namespace hemline
