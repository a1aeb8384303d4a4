// Whether a walk comes back to where it began, within what tapes, pitches and stated corners allow.
#pragma once

#include <optional>
#include <vector>

#include "engine/roof/outline_walk.h"

namespace hemline {

/// A place or a direction in plan, in nanometers: x along the first side as it is walked, y to its
/// left.
struct PlanVector {
    double x = 0, y = 0;
};

/// Exact for whole quarter turns, so that a square house closes to the nanometer.
PlanVector direction_of(Angle heading);

struct Closing {
    /// What is wrong with the turns, 360° less all of them: 0 when they close. None where a corner
    /// is not known.
    std::optional<Angle> turn_left;
    Angle turn_within;
    std::vector<PlanVector> places;   ///< one more than sides; a side without a length counts as 0
    std::vector<PlanVector> ways;     ///< each side's direction, of length 1
    std::vector<std::size_t> unread;  ///< sides without a length
    PlanVector miss;                  ///< where the walk ends, seen from where it began
    /// The part of the miss that no length of the unread sides can explain.
    PlanVector unexplained;
    bool turns_close = false;
    bool lies_within = false;  ///< the unexplained miss is within what the readings allow
};

/// Walks all sides. O(sides²). An unknown corner is walked as a square outside corner.
Closing close_walk(const Walk& walk);

/// The farthest that the readings' errors together could carry the walk's end in the direction of
/// `way` (of length 1): each side's tape, each pitch (shared by the sides of that pitch), each
/// stated corner.
double reach_along(const Walk& walk, const Closing& closing, PlanVector way);

/// In how many directions unread lengths can move the walk's end.
enum class Freedom { none, along_one_way, everywhere };
Freedom freedom_of(const Closing& closing);

/// The lengths in plan, nm, of the unread sides that close the walk; empty where they are not
/// settled: no such side, or too many.
std::vector<double> implied_nm(const Closing& closing);

}  // namespace hemline
