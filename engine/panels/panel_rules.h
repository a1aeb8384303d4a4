// Figures of panel work that are not among the job's rules (assets/practice.csv) yet: all common
// practice, no published source, unless said.
#pragma once

#include "engine/quantity/length.h"

namespace hemline::panel_rule {

/// Gaps, hems and lips are bent on this.
constexpr Length bend_grid = sixteenths(1);
/// Panels are ordered up to this.
constexpr Length order_grid = sixteenths(4);

/// What the panel's lower hem holds on: past the deck's edge.
constexpr Length lip = sixteenths(12);
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

/// From the gable's or wall's line to the turn-up of the last pan.
constexpr Length side_gap = sixteenths(4);
/// The flat of a pan stops short of the line at its top.
constexpr Length top_back = inches(1);
constexpr Length turn_up_least = inches(1);
/// Square to a hip, from its line to the turn-up.
constexpr Length hip_gap = inches(1);

/// A cut that slants less over a pan is trimmed; no second pan comes from what falls off.
constexpr Length slant_least = inches(1);

/// A first or last pan is never narrower; below half a module it is said as a problem of looks.
constexpr Length end_pan_least = inches(4);
/// A seam keeps off a curb's or dormer's wall line, a valley's top, a hip's top that it does not
/// lie on.
constexpr Length seam_off = inches(2);
/// Seams are shifted on this.
constexpr Length shift_grid = sixteenths(1);

/// On a seam: from its ends to the first clip and the last, and between clips.
constexpr Length clip_end = inches(6);
constexpr Length clip_spacing = inches(24);

/// Open width of a valley at its head, and how much wider for each foot down: 4 in and 1 in in 8 ft
/// (a historic federal rule, as TRADE practice repeats it).
constexpr Length valley_open = inches(4);
constexpr Length valley_wider_each_foot = sixteenths(2);

}  // namespace hemline::panel_rule
