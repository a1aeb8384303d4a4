#include "engine/panels/pan_ends.h"

#include <algorithm>
#include <cmath>

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

/// Along y for a length square to the line.
double along_slope(const DeckBound& bound, Length square) {
    return nm_of(square) * std::hypot(1.0, bound.slope());
}

/// Of what moves along y, square to the line.
Length square_to(const DeckBound& bound, Length moves) {
    return nearest_nm(nm_of(moves) / std::hypot(1.0, bound.slope()));
}

Length up(Length least) { return round_up_to(least, panel_rule::bend_grid); }

struct Hooked {
    Length gap, hem;
};

Hooked hooked_in_valley(const PanEnds& ends, const DeckBound& valley) {
    if (!ends.movement || ends.fixed == FixedLine::eave) {
        return {ends.gap, ends.hem};
    }
    const Length gap = up(square_to(valley, ends.movement->shrink) + panel_rule::gap_clear);
    return {gap, up(gap + square_to(valley, ends.movement->grow) + panel_rule::hold)};
}

double past_valley(const PanEnds& ends, const DeckBound& valley, double x) {
    const PlanVector place{x, valley.y_at(x)};
    const Length open =
        half_open_valley(nearest_nm(length_of(valley.head() - place)), ends.valley_open);
    const Hooked hooked = hooked_in_valley(ends, valley);
    return along_slope(valley, hooked.gap + hooked.hem - open);
}

double past_hip(const PanEnds& ends, const DeckBound& hip) {
    Length gap = panel_rule::hip_gap;
    if (ends.movement && ends.fixed == FixedLine::eave) {
        gap = std::max(gap, square_to(hip, ends.movement->grow) + panel_rule::end_clear);
    }
    return along_slope(hip, ends.seam_height - gap);
}

/// Where the pan is cut along the line, above it or below; an open side adds nothing.
double past_slant(const PanEnds& ends, const DeckBound& bound, double x) {
    switch (bound.kind.value_or(EdgeKind::penetration)) {
        case EdgeKind::valley:
            return past_valley(ends, bound, x);
        case EdgeKind::hip:
            return past_hip(ends, bound);
        case EdgeKind::gable:
        case EdgeKind::sidewall:
            return along_slope(bound, ends.seam_height - ends.side_gap);
        default:
            return 0;
    }
}

}  // namespace

PanEnds pan_ends(const Practice& practice, const std::optional<Movement>& movement) {
    const FixedLine fixed = fixed_line_of(practice);
    PanEnds ends;
    ends.fixed = fixed;
    ends.movement = movement;
    ends.lip = practice.panel_lip;
    ends.gap = panel_rule::pinned_gap;
    ends.hem = panel_rule::pinned_hem;
    ends.top_back = panel_rule::top_back;
    ends.turn_up = up(std::max(practice.seam_height, panel_rule::turn_up_least));
    ends.side_gap = practice.side_gap;
    ends.seam_height = practice.seam_height;
    ends.valley_open = practice.valley_open;
    ends.order_grid = practice.order_grid;
    if (movement && fixed == FixedLine::eave) {
        ends.top_back = std::max(ends.top_back, movement->top_room);
    } else if (movement) {
        ends.lip = movement->lip;
        ends.gap = movement->gap;
        ends.hem = movement->hem;
    }
    return ends;
}

double past_foot(const PanEnds& ends, const DeckBound& bound, double x) {
    switch (bound.kind.value_or(EdgeKind::penetration)) {
        case EdgeKind::eave:
        case EdgeKind::transition:
            return nm_of(ends.lip + ends.gap + ends.hem);
        case EdgeKind::curb_head:
            return nm_of(ends.gap + ends.hem);
        default:
            return past_slant(ends, bound, x);
    }
}

double past_top(const PanEnds& ends, const DeckBound& bound, double x) {
    switch (bound.kind.value_or(EdgeKind::penetration)) {
        case EdgeKind::ridge:
        case EdgeKind::headwall:
        case EdgeKind::high_eave:
        case EdgeKind::transition:
            return nm_of(ends.turn_up - ends.top_back);
        default:
            return past_slant(ends, bound, x);
    }
}

Length half_open_valley(Length below_head, Length open) {
    const double feet_down = nm_of(below_head) / nm_of(feet(1));
    return nearest_nm((nm_of(open) + feet_down * nm_of(panel_rule::valley_wider_each_foot)) / 2);
}

}  // namespace hemline
