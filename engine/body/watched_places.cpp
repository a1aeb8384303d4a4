#include "engine/body/watched_places.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

constexpr double crosses_least = 1e-3;  // the sine between two lines that say where they meet

PlanVector plan_of(const Space& place) { return {place.x, place.y}; }

/// The slope of a plane in plan.
PlanVector slope_of(const EndlessPlane& plane) { return plane.inside * plane.rise; }

}  // namespace

WatchedPlaces::WatchedPlaces(const JoinedBodies& joined, const SteadyBodies& bodies,
                             const MovedBodies& now)
    : joined_(joined), near_(overlay_hair * joined.overlay.size) {
    std::vector<bool> used;  // what lines have ended at on the way up is not
    for (std::size_t body = 0; body < now.host.size(); ++body) {
        const InnerLines& lines = bodies.lines(body);
        body_of_own_.insert(body_of_own_.end(), lines.places.size(), body);
        used.insert(used.end(), lines.plane_of.size(), true);
        used.resize(body_of_own_.size());
        for (const InnerLine& line : lines.lines) {
            used[bodies.first_place(body) + line.from] = true;
            used[bodies.first_place(body) + line.to] = true;
        }
    }
    take_places(used, now);
    take_lines(bodies, now);
}

/// Ends of what is seen, then what bodies have of their own, each once.
void WatchedPlaces::take_places(const std::vector<bool>& used, const MovedBodies& now) {
    const Overlay& overlay = joined_.overlay;
    std::vector<std::optional<std::size_t>> watched(overlay.places.size());
    const auto watch = [&](std::size_t place) {
        if (!watched[place]) {
            watched[place] = places_.size();
            places_.push_back({overlay.places[place], {}, {}, false, {}});
        }
        return *watched[place];
    };
    for (const OverlayPiece& piece : overlay.pieces) {
        segments_.push_back({watch(piece.from), watch(piece.to), {}});
        for (const std::size_t end : {segments_.back().from, segments_.back().to}) {
            Place& place = places_[end];
            for (const std::optional<std::size_t>& plane : {piece.left, piece.right}) {
                if (plane &&
                    std::find(place.seen.begin(), place.seen.end(), *plane) == place.seen.end()) {
                    place.seen.push_back(*plane);
                }
            }
        }
    }
    place_of_own_.resize(used.size());
    for (std::size_t own = 0; own < used.size(); ++own) {
        if (!used[own]) {
            continue;
        }
        const PlanVector at = plan_of(now.places[own]);
        const auto same = std::find_if(places_.begin(), places_.end(), [&](const Place& place) {
            return std::abs(place.before.x - at.x) < near_ && length_of(place.before - at) < near_;
        });
        place_of_own_[own] = static_cast<std::size_t>(same - places_.begin());
        if (same == places_.end()) {
            places_.push_back({at, {}, {}, false, {}});
            const auto plane = plane_seen_at(joined_.planes, at, overlay.size);
            if (plane) {
                places_.back().seen.push_back(*plane);
            }
        }
        places_[place_of_own_[own]].own.push_back(own);
    }
}

void WatchedPlaces::take_lines(const SteadyBodies& bodies, const MovedBodies& now) {
    const auto take_own = [&](std::size_t body, std::size_t from, std::size_t to) {
        const std::size_t first = bodies.first_place(body);
        const Segment made = {place_of_own_[first + from], place_of_own_[first + to], body};
        if (made.from != made.to) {
            segments_.push_back(made);
            lines_.push_back({first + from, first + to, {}});
        }
    };
    const std::size_t pieces = joined_.overlay.pieces.size();
    for (std::size_t body = 0; body < now.host.size(); ++body) {
        const InnerLines& lines = bodies.lines(body);
        for (std::size_t i = 0; i < lines.plane_of.size(); ++i) {
            take_own(body, i, (i + 1) % lines.plane_of.size());
        }
        for (const InnerLine& line : lines.lines) {
            take_own(body, line.from, line.to);
        }
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
        Place& place = places_[i];
        for (std::size_t k = 0; k < lines_.size(); ++k) {
            const Segment& segment = segments_[pieces + k];
            const PlanVector from = places_[segment.from].before, to = places_[segment.to].before;
            if (lies_along(from, to, place.before, near_)) {
                place.lines.push_back(k);
            }
        }
    }
    const std::size_t first = joined_.edges.size() + joined_.open.size(), owns = lines_.size();
    for (const PlanesCross& crossing : joined_.crossings) {
        lines_.push_back({0, 0, crossing});
    }
    for (std::size_t i = 0; i < pieces; ++i) {
        for (const std::size_t line : joined_.overlay.pieces[i].lines) {
            for (const std::size_t end : {segments_[i].from, segments_[i].to}) {
                std::vector<std::size_t>& through = places_[end].lines;
                const std::size_t index = owns + line - first;
                if (line >= first &&
                    std::find(through.begin(), through.end(), index) == through.end()) {
                    through.push_back(index);
                }
            }
        }
    }
    std::vector<Straight> straights;
    for (const Line& line : lines_) {
        straights.push_back(straight(line, now));
    }
    for (Place& place : places_) {
        put_crossing_first(place, straights);
    }
}

void WatchedPlaces::put_crossing_first(Place& place, const std::vector<Straight>& lines) const {
    double most = crosses_least;
    std::vector<std::size_t>& through = place.lines;
    std::pair<std::size_t, std::size_t> best;
    for (std::size_t i = 0; i < through.size() && place.own.empty(); ++i) {
        for (std::size_t k = i + 1; k < through.size(); ++k) {
            const double turned =
                std::abs(turn(lines[through[i]].across, lines[through[k]].across));
            if (turned > most) {
                most = turned;
                best = {i, k};
                place.is_crossing = true;
            }
        }
    }
    if (place.is_crossing) {
        std::swap(through[0], through[best.first]);
        std::swap(through[1], through[best.second]);
    }
}

bool WatchedPlaces::is_of(std::size_t place, std::size_t body) const {
    const std::vector<std::size_t>& own = places_[place].own;
    return std::any_of(own.begin(), own.end(),
                       [&](std::size_t one) { return body_of_own_[one] == body; });
}

WatchedPlaces::Straight WatchedPlaces::straight(const Line& line, const MovedBodies& now) const {
    if (!line.crossing) {
        const PlanVector from = plan_of(now.places[line.from]);
        const PlanVector way = plan_of(now.places[line.to]) - from;
        const PlanVector across = PlanVector{-way.y, way.x} * (1 / length_of(way));
        return {across, dot(from, across)};
    }
    const PlacedPlane& plane = joined_.planes[line.crossing->plane];
    const EndlessPlane& one = now.planes[plane.side];
    const EndlessPlane& other = line.crossing->other
                                    ? now.planes[joined_.planes[*line.crossing->other].side]
                                    : *now.host[plane.body];
    const PlanVector slope = slope_of(one) - slope_of(other);
    const double steep = length_of(slope);
    return {slope * (1 / steep), (other.height_over({}) - one.height_over({})) / steep};
}

std::optional<std::vector<PlanVector>> WatchedPlaces::at(const MovedBodies& now) const {
    std::vector<Straight> lines;
    lines.reserve(lines_.size());
    for (const Line& line : lines_) {
        lines.push_back(straight(line, now));
    }
    std::vector<PlanVector> made;
    made.reserve(places_.size());
    for (const Place& place : places_) {
        PlanVector at = place.before;
        if (!place.own.empty()) {
            at = plan_of(now.places[place.own.front()]);
        } else if (place.is_crossing) {
            const Straight &a = lines[place.lines[0]], &b = lines[place.lines[1]];
            at = PlanVector{a.begin * b.across.y - b.begin * a.across.y,
                            b.begin * a.across.x - a.begin * b.across.x} *
                 (1 / turn(a.across, b.across));
        } else if (!place.lines.empty()) {
            const Straight& only = lines[place.lines[0]];
            at = at + only.across * (only.begin - dot(at, only.across));
        }
        for (const std::size_t line : place.lines) {
            if (std::abs(dot(at, lines[line].across) - lines[line].begin) > near_) {
                return {};
            }
        }
        for (const std::size_t own : place.own) {
            if (length_of(plan_of(now.places[own]) - at) > near_) {
                return {};
            }
        }
        made.push_back(at);
    }
    return made;
}

}  // namespace hemline
