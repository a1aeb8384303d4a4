// Figures of panel work that are not among the job's rules (assets/practice.csv): all common
// practice, no published source, unless said.
#pragma once

#include "engine/quantity/length.h"

namespace hemline::panel_rule {

/// Gaps, hems and lips are bent on this.
constexpr Length bend_grid = sixteenths(1);

/// Where the panel is pinned at the eave and its foot stands still.
constexpr Length pinned_gap = sixteenths(4);
constexpr Length pinned_hem = inches(1);
/// A hem that moves: what still holds on the lip when the metal is hottest.
constexpr Length hold = sixteenths(6);
constexpr Length gap_clear = sixteenths(1);
/// A wider hem than this is not bent.
constexpr Length hem_most = inches(2);
/// Above the end of a panel that is pinned at the eave, beside what it grows.
constexpr Length end_clear = sixteenths(8);
/// The cap reaches so far past a closure that moves, beside what it shrinks.
constexpr Length cap_cover = inches(2);

/// The flat of a pan stops short of the line at its top.
constexpr Length top_back = inches(1);
constexpr Length turn_up_least = inches(1);
/// Square to a hip, from its line to the turn-up.
constexpr Length hip_gap = inches(1);

/// A cut that slants less over a pan is trimmed; no second pan comes from what falls off.
constexpr Length slant_least = inches(1);

/// Seams are shifted on this.
constexpr Length shift_grid = sixteenths(1);

/// The leg of a valley's metal reaches so far under the panels.
constexpr Length valley_leg_under = inches(6);
/// Nearer to a valley's center the strip that holds the panels is not screwed: its screws would
/// stand under 6 in from it.
constexpr Length screwed_strip_off = sixteenths(72);
constexpr Length valley_screw_off = inches(6);

/// How much wider a valley opens for each foot down: 1 in in 8 ft (a historic federal rule, from
/// memory).
constexpr Length valley_wider_each_foot = sixteenths(2);

}  // namespace hemline::panel_rule
