#include "engine/body/steady_overlay.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

/// Nobody misreads so much unnoticed that places farther from a line come to it.
constexpr double watched_within_nm = 3e8;

/// From the nearest place of the segment to `at`.
PlanVector away_in_plan(PlanVector from, PlanVector to, PlanVector at) {
    const PlanVector way = to - from;
    const double along = std::clamp(dot(at - from, way) / dot(way, way), 0.0, 1.0);
    return at - (from + way * along);
}

/// Within the plane or on its border.
bool reaches(const PlacedPlane& plane, PlanVector place, double near) {
    if (!plane.box.holds(place, near)) {
        return false;
    }
    if (plane.holds(place)) {
        return true;
    }
    for (const std::vector<PlanVector>& piece : plane.pieces) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            if (lies_along(piece[i], piece[(i + 1) % piece.size()], place, near)) {
                return true;
            }
        }
    }
    return false;
}

}  // namespace

SteadyOverlay::SteadyOverlay(const JoinedBodies& joined, std::span<const BodyEdge> edges,
                             const SteadyBodies& bodies, const MovedBodies& now)
    : joined_(joined),
      watched_(joined, bodies, now),
      near_(4 * overlay_hair * joined.overlay.size) {
    take_orders(now);
    take_near();
    take_edges(edges);
}

void SteadyOverlay::take_orders(const MovedBodies& now) {
    const std::vector<WatchedPlaces::Place>& places = watched_.places();
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto take = [&](std::size_t plane, std::optional<std::size_t> seen) {
            orders_.push_back({i, plane, seen, 0});
            orders_.back().sign = sign_of(orders_.back(), places[i].before, now);
        };
        is_fixed_ = is_fixed_ && !places[i].seen.empty();
        for (std::size_t plane = 0; plane < joined_.planes.size(); ++plane) {
            const PlacedPlane& one = joined_.planes[plane];
            if (!reaches(one, places[i].before, near_)) {
                continue;
            }
            for (const std::size_t seen : places[i].seen) {
                if (seen != plane) {
                    take(plane, seen);
                }
            }
            if (one.host && one.host->in_from_eave(places[i].before) > near_) {
                take(plane, {});
            }
        }
    }
}

void SteadyOverlay::take_near() {
    const std::vector<WatchedPlaces::Place>& places = watched_.places();
    const std::vector<WatchedPlaces::Segment>& segments = watched_.segments();
    for (std::size_t k = 0; k < segments.size(); ++k) {
        const PlanVector from = places[segments[k].from].before, to = places[segments[k].to].before;
        PlanBox box = {from, from};
        box.take(to);
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (i == segments[k].from || i == segments[k].to ||
                !box.holds(places[i].before, watched_within_nm) ||
                (segments[k].body && watched_.is_of(i, *segments[k].body))) {
                continue;
            }
            const double apart = length_of(away_in_plan(from, to, places[i].before));
            if (apart > near_ && apart < watched_within_nm) {
                near_segments_.push_back({i, k, apart});
            }
        }
    }
}

void SteadyOverlay::take_edges(std::span<const BodyEdge> edges) {
    const std::vector<WatchedPlaces::Place>& places = watched_.places();
    const auto place_at = [&](const Space& end) {
        const auto here = std::find_if(places.begin(), places.end(), [&](const auto& place) {
            return std::abs(place.before.x - end.x) < near_ &&
                   std::abs(place.before.y - end.y) < near_;
        });
        is_fixed_ = is_fixed_ && here != places.end();
        return static_cast<std::size_t>(here - places.begin());
    };
    for (const BodyEdge& edge : edges) {
        edges_.push_back({edge.sides.front(), edge.sides.back(), edge.planes.front(),
                          place_at(edge.from), place_at(edge.to)});
    }
}

int SteadyOverlay::sign_of(const Order& order, PlanVector at, const MovedBodies& now) const {
    const PlacedPlane& plane = joined_.planes[order.plane];
    const EndlessPlane& other =
        order.seen ? now.planes[joined_.planes[*order.seen].side] : *now.host[plane.body];
    const double higher = now.planes[plane.side].height_over(at) - other.height_over(at);
    return higher > near_ ? 1 : higher < -near_ ? -1 : 0;
}

std::optional<std::vector<RoofStretch>> SteadyOverlay::edges_with(const MovedBodies& now) const {
    if (!is_fixed_) {
        return {};
    }
    const std::optional<std::vector<PlanVector>> places = watched_.at(now);
    if (!places || !keep_apart(*places) ||
        !std::all_of(orders_.begin(), orders_.end(), [&](const Order& one) {
            return sign_of(one, (*places)[one.place], now) == one.sign;
        })) {
        return {};
    }
    std::vector<RoofStretch> made;
    made.reserve(edges_.size());
    for (const Edge& edge : edges_) {
        const EndlessPlane& plane = now.planes[edge.plane];
        const PlanVector from = (*places)[edge.from], to = (*places)[edge.to];
        made.push_back({edge.side,
                        edge.other,
                        {from.x, from.y, plane.height_over(from)},
                        {to.x, to.y, plane.height_over(to)}});
    }
    return made;
}

bool SteadyOverlay::keep_apart(const std::vector<PlanVector>& places) const {
    const std::vector<WatchedPlaces::Place>& before = watched_.places();
    double moved = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        moved = std::max(moved, dot(places[i] - before[i].before, places[i] - before[i].before));
    }
    moved = std::sqrt(moved);
    return 2 * moved < watched_within_nm &&
           std::all_of(near_segments_.begin(), near_segments_.end(), [&](const Near& one) {
               if (one.apart > 2 * moved + 2 * near_) {
                   return true;
               }
               const WatchedPlaces::Segment& segment = watched_.segments()[one.segment];
               const PlanVector then =
                   away_in_plan(before[segment.from].before, before[segment.to].before,
                                before[one.place].before);
               const PlanVector now =
                   away_in_plan(places[segment.from], places[segment.to], places[one.place]);
               return dot(now, then) > 0 && length_of(now) > 2 * near_;
           });
}

}  // namespace hemline
