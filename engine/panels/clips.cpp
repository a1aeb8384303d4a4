#include "engine/panels/clips.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "engine/roof/nearest.h"
#include "engine/trim/practice.h"

namespace hemline {

namespace {

using Heights = std::pair<double, double>;

bool has_zone(const DeckBound& bound) {
    switch (bound.kind.value_or(EdgeKind::penetration)) {
        case EdgeKind::eave:
        case EdgeKind::gable:
        case EdgeKind::ridge:
        case EdgeKind::hip:
        case EdgeKind::high_eave:
            return true;
        default:
            return false;
    }
}

/// Of the line up the slope at x, what lies within `reach` of a place.
std::optional<Heights> near_place(const PlanVector& place, double x, double reach) {
    const double half = reach * reach - (x - place.x) * (x - place.x);
    if (half <= 0) {
        return {};
    }
    return Heights{place.y - std::sqrt(half), place.y + std::sqrt(half)};
}

/// The same beside a bound, between its ends.
std::optional<Heights> beside(const DeckBound& bound, double x, double reach) {
    const PlanVector along = bound.to - bound.from;
    const double length = length_of(along);
    if (length <= 0) {
        return {};
    }
    const PlanVector way = along * (1 / length);
    Heights heights{-1e300, 1e300};
    // Both are linear in y: how far along the bound, and how far aside.
    const auto clip = [&](double at_0, double each, double least, double most) {
        if (std::abs(each) < 1e-12) {
            if (at_0 < least || at_0 > most) {
                heights = {1, 0};
            }
            return;
        }
        const double a = (least - at_0) / each, b = (most - at_0) / each;
        heights = {std::max(heights.first, std::min(a, b)),
                   std::min(heights.second, std::max(a, b))};
    };
    const PlanVector foot{x - bound.from.x, -bound.from.y};
    clip(dot(way, foot), way.y, 0, length);
    clip(turn(way, foot), way.x, -reach, reach);
    return heights.first < heights.second ? std::optional(heights) : std::nullopt;
}

/// Where zones begin and end, in order and apart.
std::vector<Heights> zones_along(const DeckPlane& plane, double x, double reach) {
    std::vector<Heights> all;
    for (const DeckBound& bound : plane.bounds) {
        if (!has_zone(bound)) {
            continue;
        }
        for (const auto& part : {near_place(bound.from, x, reach), near_place(bound.to, x, reach),
                                 beside(bound, x, reach)}) {
            if (part) {
                all.push_back(*part);
            }
        }
    }
    std::sort(all.begin(), all.end());
    std::vector<Heights> zones;
    for (const Heights& one : all) {
        if (!zones.empty() && one.first <= zones.back().second) {
            zones.back().second = std::max(zones.back().second, one.second);
        } else {
            zones.push_back(one);
        }
    }
    return zones;
}

/// Evenly between two clips, the second with them.
void add_up_to(std::vector<Length>& clips, double from, double to, Length spacing) {
    const Length between = nearest_nm(to - from);
    if (between <= Length()) {
        return;
    }
    const auto parts = parts_to_cover(between, spacing);
    for (std::int64_t i = 1; i <= parts; ++i) {
        clips.push_back(
            nearest_nm(from + (to - from) * static_cast<double>(i) / static_cast<double>(parts)));
    }
}

}  // namespace

ClipRules clip_rules(const Practice& practice) {
    return {practice.clip_spacing, practice.clip_end, practice.clip_zone,
            practice.clip_zone_spacing};
}

std::vector<Length> clips_on(const DeckPlane& plane, const SeamStretch& stretch,
                             const ClipRules& rules) {
    const double end = nm_of(rules.end);
    const double last = stretch.top - end;
    double at = stretch.foot + end;
    if (nearest_nm(last - at) <= Length()) {
        return {nearest_nm((stretch.foot + stretch.top) / 2)};
    }
    std::vector<Length> clips = {nearest_nm(at)};
    if (rules.zone > Length()) {
        for (const auto& [from, to] : zones_along(plane, stretch.x, nm_of(rules.zone))) {
            if (to <= at || from >= last) {
                continue;
            }
            add_up_to(clips, at, from, rules.spacing);
            add_up_to(clips, std::max(at, from), std::min(to, last),
                      std::min(rules.spacing, rules.zone_spacing));
            at = std::min(to, last);
        }
    }
    add_up_to(clips, at, last, rules.spacing);
    return clips;
}

}  // namespace hemline
