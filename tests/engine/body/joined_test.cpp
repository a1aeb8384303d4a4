// What is seen of bodies over one another, against Boost.Geometry's polygons.
#include "engine/body/joined_bodies.h"

#include <doctest/doctest.h>

#include <cmath>

#include "engine/body/placing.h"
#include "engine/words/result.h"
#include "tests/engine/body/boost_polygons.h"
#include "tests/engine/body/chance_walks.h"
#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

using PlanPolygons = std::vector<std::vector<PlanVector>>;

/// Of each polygon the part where slope·p + at_zero > 0: cut at a straight line, corner by corner
/// (Sutherland and Hodgman 1974, from memory). Its area is right whatever shape it has.
PlanPolygons cut(const PlanPolygons& polygons, PlanVector slope, double at_zero) {
    PlanPolygons made;
    for (const std::vector<PlanVector>& walk : polygons) {
        made.emplace_back();
        for (std::size_t i = 0; i < walk.size(); ++i) {
            const PlanVector a = walk[i], b = walk[(i + 1) % walk.size()];
            const double at_a = dot(slope, a) + at_zero, at_b = dot(slope, b) + at_zero;
            if (at_a > 0) {
                made.back().push_back(a);
            }
            if ((at_a > 0) != (at_b > 0)) {
                made.back().push_back(a + (b - a) * (at_a / (at_a - at_b)));
            }
        }
    }
    return made;
}

/// Where a is higher than b.
PlanPolygons higher(const PlanPolygons& polygons, const EndlessPlane& a, const EndlessPlane& b) {
    return cut(polygons, a.inside * a.rise - b.inside * b.rise,
               a.height_over({}) - b.height_over({}));
}

double area_of_all(const PlanPolygons& polygons) {
    double area = 0;
    for (const std::vector<PlanVector>& walk : polygons) {
        for (std::size_t i = 0; i < walk.size(); ++i) {
            area += turn(walk[i] - walk[0], walk[(i + 1) % walk.size()] - walk[0]) / 2;
        }
    }
    return std::abs(area);
}

/// Where both planes are, by the library; in feet, since it rounds to ten million steps.
PlanPolygons both(const PlacedPlane& a, const PlacedPlane& b) {
    const auto in_feet_of = [](std::vector<PlanVector> walk) {
        for (PlanVector& corner : walk) {
            corner = corner * (1 / foot);
        }
        return boost_polygon(walk);
    };
    BoostPolygons met;
    bg::intersection(in_feet_of(a.pieces.front()), in_feet_of(b.pieces.front()), met);
    PlanPolygons made;
    for (const BoostPolygon& polygon : met) {
        made.emplace_back();
        for (const BoostPoint& corner : polygon.outer()) {
            made.back().push_back(PlanVector{corner.x(), corner.y()} * foot);
        }
    }
    return made;
}

/// The area of that without what lies under the plane's host.
double over_host(const PlanPolygons& polygons, const PlacedPlane& plane) {
    if (!plane.host) {
        return area_of_all(polygons);
    }
    const PlanVector inside = plane.host->inside;
    const PlanPolygons in = cut(polygons, inside, -plane.host->begin);
    return area_of_all(cut(polygons, inside * -1, plane.host->begin)) +
           area_of_all(higher(in, plane, *plane.host));
}

/// What no other plane lies over. Those of one body lie beside one another, and so do the bodies
/// here that run in. By intersections alone: the library's differences of polygons that share
/// stretches of line are wrong in one case of thirty.
double seen_of(const PlacedPlane& plane, const std::vector<PlacedPlane>& planes) {
    double area = over_host({plane.pieces.front()}, plane);
    for (const PlacedPlane& other : planes) {
        if (other.body == plane.body) {
            continue;
        }
        const PlanPolygons under = higher(both(plane, other), other, plane);
        area -= plane.host && !other.host ? over_host(under, plane) : over_host(under, other);
    }
    return area;
}

RoofBody house(std::mt19937& random) {
    const SideKind ends = below(random, 2) == 0 ? SideKind::gable : SideKind::eave;
    const std::string pitch = std::to_string(4 + below(random, 9)) + "/12";
    const std::string of_ends = is_upright(ends) ? "" : pitch;
    return {"main",
            {said_side("A", SideKind::eave, 50, pitch), said_side("B", ends, 30, of_ends),
             said_side("C", SideKind::eave, 50, pitch), said_side("D", ends, 30, of_ends)},
            {}};
}

/// A dormer or wing by chance, its front a gable, a hip or an eave alone.
RoofBody run_in(std::mt19937& random, const std::string& id, double along) {
    const int front = below(random, 3);
    const std::string pitch = std::to_string(2 + below(random, 7)) + "/12";
    const double wide = 4 + 8 * share(random);
    const SideKind cheeks = front == 2 ? SideKind::gable : SideKind::eave;
    return {id,
            {said_side(id + "1", front == 0 ? SideKind::gable : SideKind::eave, wide,
                       front == 0 ? "" : pitch),
             said_side(id + "2", cheeks, 0, front == 2 ? "" : pitch),
             said_side(id + "3", SideKind::open, 0),
             said_side(id + "4", cheeks, 0, front == 2 ? "" : pitch)},
            RunsInto{"A", in_feet(along), in_feet(9 * share(random) - 4),
                     in_feet(4 * share(random) - 1)}};
}

}  // namespace

TEST_CASE("What is seen of planes over one another is what Boost.Geometry leaves of them") {
    std::mt19937 random(23);
    int compared = 0;
    for (int i = 0; i < 600 && compared < 200; ++i) {
        const std::vector<RoofBody> bodies = {house(random),
                                              run_in(random, "e", 2 + 8 * share(random)),
                                              run_in(random, "f", 24 + 8 * share(random))};
        const auto placed = place_bodies(bodies, Tape(), WalkThatIsOpen::is_said);
        if (!placed) {
            continue;
        }
        const JoinedBodies joined = join_bodies(placed->bodies);
        if (!edges_of_roof(joined, bodies)) {
            continue;
        }
        ++compared;
        for (const BodyPlane& seen : planes_of_roof(joined)) {
            const PlacedPlane& plane =
                *std::find_if(joined.planes.begin(), joined.planes.end(),
                              [&](const PlacedPlane& one) { return one.side == seen.side; });
            CHECK(std::abs(seen_of(plane, joined.planes) - seen.plan_area) <
                  1e-6 * 1500 * foot * foot);
        }
    }
    CHECK(compared == 200);
}
