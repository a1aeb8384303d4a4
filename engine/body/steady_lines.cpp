#include "engine/body/steady_lines.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace hemline {

namespace {

/// A plane as a row: inside · place − inward × height = begin.
Space row_of(const MovingLine& line) { return {line.inside.x, line.inside.y, -line.inward}; }

double determinant(const Space& a, const Space& b, const Space& c) { return dot(a, cross(b, c)); }

/// How far the plane lies from the place.
double off_plane(const MovingLine& line, const Space& at) {
    return line.begin - dot(row_of(line), at);
}

/// Puts the three planes first that fix a place best; false: none do.
bool put_fixing_first(std::vector<std::size_t>& planes, const std::vector<MovingLine>& lines) {
    std::array<std::size_t, 3> best{};
    double most = 1e-6;  // of rows that are unit vectors in plan
    for (std::size_t i = 0; i < planes.size(); ++i) {
        for (std::size_t k = i + 1; k < planes.size(); ++k) {
            for (std::size_t m = k + 1; m < planes.size(); ++m) {
                const double fixes = std::abs(determinant(
                    row_of(lines[planes[i]]), row_of(lines[planes[k]]), row_of(lines[planes[m]])));
                if (fixes > most) {
                    most = fixes;
                    best = {planes[i], planes[k], planes[m]};
                }
            }
        }
    }
    if (best[1] == best[2]) {
        return false;
    }
    std::stable_partition(planes.begin(), planes.end(), [&](std::size_t plane) {
        return std::find(best.begin(), best.end(), plane) != best.end();
    });
    return true;
}

/// Where the first three planes meet, near `at`: as a step from there, by Cramer's rule.
Space meeting_near(const std::vector<std::size_t>& planes, const std::vector<MovingLine>& lines,
                   const Space& at) {
    const Space a = row_of(lines[planes[0]]), b = row_of(lines[planes[1]]),
                c = row_of(lines[planes[2]]);
    const Space step = cross(b, c) * off_plane(lines[planes[0]], at) +
                       cross(c, a) * off_plane(lines[planes[1]], at) +
                       cross(a, b) * off_plane(lines[planes[2]], at);
    return at + step * (1 / determinant(a, b, c));
}

/// Nobody misreads so much unnoticed that places farther from a line come to it.
constexpr double near_most_nm = 3e8;

/// From the nearest place of the line to `at`.
Space away_from(const Space& from, const Space& to, const Space& at) {
    const Space way = to - from;
    const double along = std::clamp(dot(at - from, way) / dot(way, way), 0.0, 1.0);
    return at - (from + way * along);
}

std::vector<MovingLine> lines_of(std::span<const MovingSide> sides) {
    std::vector<MovingLine> lines;
    lines.reserve(sides.size());
    for (const MovingSide& side : sides) {
        lines.push_back(line_of(side));
    }
    return lines;
}

}  // namespace

SteadyLines::SteadyLines(std::span<const MovingSide> sides, InnerLines lines)
    : lines_(std::move(lines)) {
    std::vector<std::set<std::size_t>> planes(lines_.places.size());
    for (const InnerLine& line : lines_.lines) {
        for (const std::size_t place : {line.from, line.to}) {
            planes[place].insert({line.left, line.right});
        }
    }
    const std::vector<MovingLine> moving = lines_of(sides);
    double size = 0;
    for (std::size_t i = 0; i < lines_.places.size(); ++i) {
        const LinePlace& place = lines_.places[i];
        before_.push_back({place.at.x, place.at.y, place.height});
        size = std::max(size, length_of(place.at - sides[0].from));
        if (i >= sides.size() && !planes[i].empty()) {
            places_.push_back({i, {planes[i].begin(), planes[i].end()}});
            is_fixed_ = is_fixed_ && put_fixing_first(places_.back().planes, moving);
        }
    }
    near_ = hair * size;
    find_near();
}

void SteadyLines::find_near() {
    std::vector<std::vector<std::size_t>> bounds(lines_.plane_of.size());
    for (std::size_t i = 0; i < lines_.lines.size(); ++i) {
        bounds[lines_.lines[i].left].push_back(i);
        bounds[lines_.lines[i].right].push_back(i);
    }
    for (const std::vector<std::size_t>& round : bounds) {
        std::set<std::size_t> corners;
        for (const std::size_t line : round) {
            corners.insert({lines_.lines[line].from, lines_.lines[line].to});
        }
        for (const std::size_t place : corners) {
            for (const std::size_t line : round) {
                const InnerLine& it = lines_.lines[line];
                const double apart =
                    length_of(away_from(before_[it.from], before_[it.to], before_[place]));
                if (it.from != place && it.to != place && apart < near_most_nm) {
                    near_lines_.push_back({place, line, apart});
                }
            }
        }
    }
}

std::optional<std::vector<Space>> SteadyLines::places_with(
    std::span<const MovingSide> sides) const {
    if (!is_fixed_) {
        return {};
    }
    const std::vector<MovingLine> moving = lines_of(sides);
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const MovingLine &own = moving[i], &first = moving[lines_.plane_of[i]];
        const bool is_one_plane =
            std::abs(dot(sides[i].from, first.inside) - first.begin) < near_ &&
            std::abs(dot(sides[i].to, first.inside) - first.begin) < near_ &&
            std::abs(own.inward - first.inward) < hair;
        if (!is_one_plane) {
            return {};
        }
    }
    std::vector<Space> places = before_;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        places[i] = {sides[i].from.x, sides[i].from.y, 0};
    }
    for (const Place& place : places_) {
        const Space at = meeting_near(place.planes, moving, before_[place.index]);
        for (std::size_t i = 3; i < place.planes.size(); ++i) {
            if (std::abs(off_plane(moving[place.planes[i]], at)) > near_) {
                return {};
            }
        }
        places[place.index] = at;
    }
    return keep_apart(places) ? std::optional(std::move(places)) : std::nullopt;
}

bool SteadyLines::keep_apart(const std::vector<Space>& places) const {
    double moved = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        moved = std::max(moved, length_of(places[i] - before_[i]));
    }
    return 2 * moved < near_most_nm &&
           std::all_of(near_lines_.begin(), near_lines_.end(), [&](const Near& one) {
               if (one.apart > 2 * moved + 8 * near_) {
                   return true;
               }
               const InnerLine& line = lines_.lines[one.line];
               const Space then =
                   away_from(before_[line.from], before_[line.to], before_[one.place]);
               const Space now = away_from(places[line.from], places[line.to], places[one.place]);
               return dot(now, then) > 0 && length_of(now) > 8 * near_;
           });
}

}  // namespace hemline
