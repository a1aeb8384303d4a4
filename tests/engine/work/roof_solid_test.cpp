// The solid of a job's roof: every plane and wall is there, as large as it is.
#include "engine/work/roof_solid.h"

#include <doctest/doctest.h>

#include <cmath>

namespace hemline {
namespace {

double area_of(const Facet& facet) {
    return length_of(
               cross(facet.corners[1] - facet.corners[0], facet.corners[2] - facet.corners[0])) /
           2;
}

/// In ft², of the planes or of the walls; the solid is 1:20.
double square_feet(const std::vector<Facet>& facets, std::size_t leg) {
    double area = 0;
    for (const Facet& facet : facets) {
        area += facet.leg == leg ? area_of(facet) : 0;
    }
    return area * 400 / (304.8 * 304.8);
}

std::vector<Facet> solid_of(SideKind second) {
    std::vector<SideWalked> sides(4);
    const SideKind kinds[] = {SideKind::eave, second, SideKind::eave, second};
    const Length lengths[] = {feet(40), feet(24), feet(40), feet(24)};
    for (std::size_t i = 0; i < sides.size(); ++i) {
        sides[i].id = std::string(1, static_cast<char>('A' + i));
        sides[i].kind = kinds[i];
        sides[i].length = lengths[i];
        sides[i].corner = degrees(90);
    }
    const WalkedBody walk{"1", {}, sides, true, {}};
    const std::vector<BodyOnJob> bodies = {roof_body(Job(), walk, rise_in_12(6))};
    return roof_solid(bodies);
}

// Deck area is plan area / cos θ: 40 × 24 ft at 6 in 12 is 960 · √1.25. A gable's triangle is half
// of 24 ft by its rise of 6 ft. Walls are drawn 2400 mm high.
TEST_CASE("a roof's solid has its planes' areas, its walls and its gable ends") {
    const double walls = 2 * (40 + 24) * 2400 / 304.8;
    for (const SideKind ends : {SideKind::eave, SideKind::gable}) {
        const std::vector<Facet> solid = solid_of(ends);
        CHECK(square_feet(solid, 0) == doctest::Approx(960 * std::sqrt(1.25)));
        const double gables = ends == SideKind::gable ? 2 * 24 * 6 / 2.0 : 0;
        CHECK(square_feet(solid, 1) == doctest::Approx(walls + gables));
        for (const Facet& facet : solid) {
            CHECK(facet.corners.size() == 3);
            CHECK(length_of(facet.normal) == doctest::Approx(1));
        }
    }
}

TEST_CASE("corners a hair off one plane are drawn all the same") {
    const std::vector<Facet> facets =
        plane_facets({{0, 0, 5}, {400, 0, 5}, {400, 400, 5.3}, {0, 400, 5}}, 0);
    CHECK(facets.size() == 2);
    CHECK(back_to_front(facets, unit(Space{1, -2, 3})).size() == 2);
}

TEST_CASE("a plane figure with an inside corner keeps its area and rims its sides alone") {
    const std::vector<Facet> facets =
        plane_facets({{0, 0, 5}, {4, 0, 5}, {4, 4, 5}, {2, 4, 5}, {2, 2, 5}, {0, 2, 5}}, 3);
    double area = 0;
    int rims = 0;
    for (const Facet& facet : facets) {
        area += area_of(facet);
        CHECK(facet.leg == 3);
        for (const Rim rim : facet.rims) {
            rims += rim == Rim::none ? 0 : 1;
        }
    }
    CHECK(area == doctest::Approx(12));
    CHECK(rims == 6);
}

}  // namespace
}  // namespace hemline
