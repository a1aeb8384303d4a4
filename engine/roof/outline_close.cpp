#include "engine/roof/outline_close.h"

#include <cmath>
#include <map>

#include "engine/roof/hip.h"

namespace hemline {

namespace {

constexpr double parallel = 1e-6;  // sine of an angle that counts as 0

double dot(PlanVector a, PlanVector b) { return a.x * b.x + a.y * b.y; }
double cross(PlanVector a, PlanVector b) { return a.x * b.y - a.y * b.x; }
PlanVector left_of(PlanVector a) { return {-a.y, a.x}; }
PlanVector times(PlanVector a, double n) { return {a.x * n, a.y * n}; }
PlanVector sum(PlanVector a, PlanVector b) { return {a.x + b.x, a.y + b.y}; }

/// How far each error, at its largest, moves the walk's end: the end may be off by any sum of
/// these, each times -1 to 1.
std::vector<PlanVector> pulls_of(const Walk& walk, const Closing& closing) {
    std::vector<PlanVector> pulls;
    std::map<std::pair<SlopeNotation, std::int64_t>, PlanVector> pitches;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        if (side.length) {
            pulls.push_back(times(closing.ways[i], side.tape_nm));
        }
        if (side.length && side.pitch_nm > 0) {
            const Slope pitch = *walk.edges[*side.edge].edge.pitch;
            PlanVector& shared = pitches[{pitch.notation, pitch.millionths}];
            shared = sum(shared, times(closing.ways[i], side.pitch_nm));
        }
        if (side.after.within > Angle()) {
            const PlanVector here = closing.places[i + 1];
            const PlanVector rest = sum(closing.places.back(), times(here, -1));
            pulls.push_back(times(left_of(rest), radians_of(side.after.within)));
        }
    }
    for (const auto& [pitch, pull] : pitches) {
        pulls.push_back(pull);
    }
    return pulls;
}

double reach(const std::vector<PlanVector>& pulls, PlanVector way) {
    double far = 0;
    for (const PlanVector pull : pulls) {
        far += std::abs(dot(pull, way));
    }
    return far;
}

/// What rounding to the nanometer may leave.
constexpr double rounding_nm = 1;

/// Whether the point lies in the polygon of all such sums (a zonotope). It does when, square to
/// each pull, it lies within the reach of all pulls: those directions are the normals of the
/// polygon's sides.
bool lies_in(const std::vector<PlanVector>& pulls, PlanVector point) {
    const double size = std::hypot(point.x, point.y);
    if (size <= rounding_nm) {
        return true;
    }
    const PlanVector outward = times(point, 1 / size);
    if (size > reach(pulls, outward) + rounding_nm) {
        return false;
    }
    for (const PlanVector pull : pulls) {
        const double length = std::hypot(pull.x, pull.y);
        if (length > 0) {
            const PlanVector normal = times(left_of(pull), 1 / length);
            if (std::abs(dot(point, normal)) > reach(pulls, normal) + rounding_nm) {
                return false;
            }
        }
    }
    return true;
}

}  // namespace

PlanVector direction_of(Angle heading) {
    const Angle way = within_a_turn(heading);
    if (is_whole_number_of(way, degrees(90))) {
        constexpr PlanVector quarters[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        return quarters[way.microdegrees() / degrees(90).microdegrees()];
    }
    return {std::cos(radians_of(way)), std::sin(radians_of(way))};
}

Closing close_walk(const Walk& walk) {
    Closing closing;
    closing.places.push_back({});
    Angle heading;
    bool known = true;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        const PlanVector way = direction_of(heading);
        closing.ways.push_back(way);
        const double nm =
            side.length ? static_cast<double>(side.length->nm()) * side.plan_of_one : 0;
        closing.places.push_back(sum(closing.places.back(), times(way, nm)));
        if (!side.length) {
            closing.unread.push_back(i);
        }
        known = known && side.after.inside.has_value();
        heading += half_turn - side.after.inside.value_or(square_out);
        closing.turn_within += side.after.within;
    }
    closing.miss = closing.places.back();
    if (known) {
        closing.turn_left = full_turn - heading;
        closing.turns_close = absolute(*closing.turn_left) <= closing.turn_within;
    }
    const std::vector<PlanVector> pulls = pulls_of(walk, closing);
    switch (freedom_of(closing)) {
        case Freedom::none:
            closing.unexplained = closing.miss;
            closing.lies_within = lies_in(pulls, closing.miss);
            break;
        case Freedom::along_one_way: {
            const PlanVector aside = left_of(closing.ways[closing.unread.front()]);
            const double off = dot(closing.miss, aside);
            closing.unexplained = times(aside, off);
            closing.lies_within = std::abs(off) <= reach(pulls, aside) + rounding_nm;
            break;
        }
        case Freedom::everywhere:
            closing.lies_within = true;
            break;
    }
    return closing;
}

double reach_along(const Walk& walk, const Closing& closing, PlanVector way) {
    return reach(pulls_of(walk, closing), way);
}

Freedom freedom_of(const Closing& closing) {
    for (const std::size_t i : closing.unread) {
        if (std::abs(cross(closing.ways[closing.unread.front()], closing.ways[i])) > parallel) {
            return Freedom::everywhere;
        }
    }
    return closing.unread.empty() ? Freedom::none : Freedom::along_one_way;
}

std::vector<double> implied_nm(const Closing& closing) {
    if (!closing.turn_left) {
        return {};
    }
    const auto way = [&](std::size_t n) { return closing.ways[closing.unread[n]]; };
    if (closing.unread.size() == 1) {
        return {-dot(closing.miss, way(0))};
    }
    if (closing.unread.size() == 2 && freedom_of(closing) == Freedom::everywhere) {
        const double area = cross(way(0), way(1));
        return {-cross(closing.miss, way(1)) / area, -cross(way(0), closing.miss) / area};
    }
    return {};
}

}  // namespace hemline
