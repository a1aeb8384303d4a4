// From which side a level edge is fitted, by the wind: from the lee end, so that the open edge of
// each lap looks away from the wind that brings the rain.
//
//      wind ──▶   left ═══╗═════════╗═════ right      fitted from the right: each piece
//                         ╚═ under  ╚═ under           to the left lies over the one before
#pragma once

#include <map>
#include <optional>
#include <string>

#include "engine/quantity/angle.h"
#include "engine/roof/edge.h"

namespace hemline {

struct Job;

/// `bearing`: from the edge's left end to its right end; `wind`: where it comes from. None where
/// the wind blows nearly square to the edge: cos(wind − bearing) within ±0.17. Common practice, no
/// published source.
std::optional<Side> side_by_wind(Angle wind, Angle bearing);

/// The bearing of each level edge that was said, or that follows from one that was: around the
/// house by the corners between them.
std::map<std::string, Angle> bearings_of(const Job& job);

/// The side that each level edge is fitted from where the wind decides it: nobody said another.
std::map<std::string, Side> sides_by_wind(const Job& job);

}  // namespace hemline
