// A side of the walk round a roof that moves inward as the height grows, and where two such sides
// meet.
//
//         |<- inward -> |      an eave's line at a height of 1 lies cot θ further in, θ its pitch;
//     ----+             |      an upright side (gable, wall, high eave) stands still
//    eave |   at 1      |
#pragma once

#include <cmath>
#include <optional>
#include <span>

#include "engine/roof/outline_close.h"

namespace hemline {

/// Lengths in any single unit, the building on the left of from → to.
struct MovingSide {
    PlanVector from, to;
    double inward = 0;  ///< for each unit of height; 0: upright
};

constexpr PlanVector operator+(PlanVector a, PlanVector b) { return {a.x + b.x, a.y + b.y}; }
constexpr PlanVector operator-(PlanVector a, PlanVector b) { return {a.x - b.x, a.y - b.y}; }
constexpr PlanVector operator*(PlanVector a, double n) { return {a.x * n, a.y * n}; }
constexpr double dot(PlanVector a, PlanVector b) { return a.x * b.x + a.y * b.y; }
/// Above 0 where `b` points to the left of `a`.
constexpr double turn(PlanVector a, PlanVector b) { return a.x * b.y - a.y * b.x; }
inline double length_of(PlanVector a) { return std::hypot(a.x, a.y); }

/// A side as a line that moves: places p with dot(p, inside) = begin + inward × height.
struct MovingLine {
    PlanVector along, inside;  ///< of length 1; `inside` is the left of `along`
    double begin = 0, inward = 0;
};
MovingLine line_of(const MovingSide& side);

/// A place that moves with the height: at + by × height.
struct MovingPlace {
    PlanVector at, by;
    [[nodiscard]] constexpr PlanVector where(double height) const { return at + by * height; }
};
/// Where two lines meet; none where they are parallel within parallel_within.
std::optional<MovingPlace> meeting_of(const MovingLine& a, const MovingLine& b);

/// The hair, for a house of size 1: places nearer than this are the same place, heights the same
/// height.
constexpr double hair = 1e-9;
/// Directions of length 1 whose turn is less are parallel.
constexpr double parallel_within = 1e-9;

}  // namespace hemline
