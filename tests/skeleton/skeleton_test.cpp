// Inner edges at equal pitches against CGAL's interior straight skeleton: a program apart, since
// CGAL's licenses (GPL and LGPL) have no place in what is shipped.
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/create_straight_skeleton_2.h>
#include <doctest/doctest.h>

#include <map>

#include "engine/body/planes.h"
#include "tests/engine/body/chance_walks.h"

using namespace hemline;
using namespace hemline::test;

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
/// Plan lengths of the inner edges between two planes, by their first sides.
using Lengths = std::map<std::pair<std::size_t, std::size_t>, double>;

Lengths lengths_of(const InnerLines& lines) {
    Lengths lengths;
    for (const InnerLine& line : lines.lines) {
        lengths[std::minmax(line.left, line.right)] +=
            length_of(lines.places[line.to].at - lines.places[line.from].at);
    }
    return lengths;
}

/// The same of CGAL's skeleton. Edges between sides of one plane are left out.
Lengths lengths_by_cgal(const PlanWalk& walk, const std::vector<std::size_t>& plane_of) {
    std::vector<Kernel::Point_2> corners;
    for (const PlanVector corner : walk) {
        corners.emplace_back(corner.x, corner.y);
    }
    const auto skeleton = CGAL::create_interior_straight_skeleton_2(corners.begin(), corners.end());
    REQUIRE(skeleton);
    const auto side_of = [&](const auto& contour) {
        const Kernel::Point_2 from = contour->opposite()->vertex()->point();
        return static_cast<std::size_t>(std::find(corners.begin(), corners.end(), from) -
                                        corners.begin());
    };
    Lengths lengths;
    for (auto edge = skeleton->halfedges_begin(); edge != skeleton->halfedges_end(); ++edge) {
        if (!edge->is_bisector() || edge->id() > edge->opposite()->id()) {
            continue;
        }
        const std::size_t one = plane_of[side_of(edge->defining_contour_edge())];
        const std::size_t other = plane_of[side_of(edge->opposite()->defining_contour_edge())];
        if (one != other) {
            lengths[std::minmax(one, other)] += std::sqrt(CGAL::to_double(CGAL::squared_distance(
                edge->vertex()->point(), edge->opposite()->vertex()->point())));
        }
    }
    return lengths;
}

void compare(const PlanWalk& walk) {
    const InnerLines lines = trace_inner_lines(sides_round(walk, {1}));
    REQUIRE(lines.stuck.empty());
    const Lengths ours = lengths_of(lines), theirs = lengths_by_cgal(walk, lines.plane_of);
    for (const auto& [pair, length] : theirs) {
        const auto found = ours.find(pair);
        CHECK(std::abs((found == ours.end() ? 0 : found->second) - length) < 1e-6);
    }
    for (const auto& [pair, length] : ours) {
        CHECK((theirs.count(pair) > 0 || length < 1e-6));
    }
}

}  // namespace

TEST_CASE("500 outlines of square corners have the inner edges that CGAL finds") {
    std::mt19937 random(37);
    for (int compared = 0; compared < 500;) {
        const PlanWalk walk = rooms(random);
        if (!walk.empty()) {
            compare(walk);
            ++compared;
        }
    }
}

TEST_CASE("500 simple outlines have the inner edges that CGAL finds") {
    std::mt19937 random(41);
    for (int i = 0; i < 500; ++i) {
        compare(uncrossed(random, 4 + below(random, 37)));
    }
}
