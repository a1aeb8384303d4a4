// Pans cover their plane: areas by Boost.Geometry, widths by sum, on roofs by chance.
#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <random>

#include "engine/panels/plane_readings.h"
#include "tests/engine/body/boost_polygons.h"
#include "tests/engine/body/chance_walks.h"
#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

constexpr double inch = 25.4e6;

/// The plane out of the roof's own polygons, flat, x from its own eave's corner.
BoostPolygons flat_plane(const Roof& roof, const std::vector<RoofBody>& bodies,
                         const BodyPlane& plane) {
    const LaidSide& eave = roof.walk[plane.side];
    const PlanVector begin{eave.from.x, eave.from.y};
    const PlanVector way{eave.to.x - begin.x, eave.to.y - begin.y};
    const PlanVector along = way * (1 / length_of(way));
    const double stretch = slope_factor_of(*sides_of(bodies)[plane.side]->pitch);
    const auto deck = [&](const std::vector<Space>& walk) {
        std::vector<PlanVector> flat;
        for (const Space& place : walk) {
            const PlanVector at = PlanVector{place.x, place.y} - begin;
            flat.push_back(PlanVector{dot(at, along), turn(along, at) * stretch} * (1 / inch));
        }
        return boost_polygon(flat).front();
    };
    BoostPolygons all;
    for (const auto& piece : plane.pieces) {
        all.push_back(deck(piece));
    }
    for (const auto& hole : plane.holes) {
        for (BoostPolygon& piece : all) {
            const BoostPolygon inside = deck(hole);
            if (bg::within(inside.outer().front(), piece)) {
                piece.inners().push_back(inside.outer());
            }
        }
    }
    bg::correct(all);
    return all;
}

/// In square inches, between two lines.
double boost_area_between(const BoostPolygons& plane, double from, double to) {
    const double far = 2000;
    BoostPolygons within;
    bg::intersection(plane, boost_polygon({{from, -far}, {to, -far}, {to, far}, {from, far}}),
                     within);
    return bg::area(within);
}

/// x of the plane's own eave's left end, in the deck's.
double eave_begins(const Roof& roof, const BodyPlane& plane, const DeckPlane& deck) {
    const LaidSide& eave = roof.walk[plane.side];
    const PlanVector begin{eave.from.x, eave.from.y};
    const PlanVector way{eave.to.x - begin.x, eave.to.y - begin.y};
    double least = 1e18;
    for (const auto& piece : plane.pieces) {
        for (const Space& place : piece) {
            least =
                std::min(least, dot(PlanVector{place.x, place.y} - begin, way) / length_of(way));
        }
    }
    return deck.left - least;
}

/// Checks every plane; how many pans there are.
std::size_t check_planes(const std::vector<RoofBody>& bodies, const Roof& roof) {
    std::size_t pans = 0;
    for (const BodyPlane& plane : roof.planes) {
        const DeckPlane deck = deck_plane(roof, bodies, plane);
        PanelJob job;
        job.practice.side_gap = Length();
        const PanelLayout layout = laid(deck, job);
        const BoostPolygons flat = flat_plane(roof, bodies, plane);
        const double begins = eave_begins(roof, plane, deck);
        std::map<int, double> areas;
        Length widths;
        double area = 0;
        for (const LaidPan& pan : layout.pans) {
            widths += areas.count(pan.number) == 0 ? pan.width : Length();
            areas[pan.number] += area_of(pan.flat) / inch / inch;
            area += area_of(pan.flat) / inch / inch;
            CHECK(pan.width <= inches(16));
            CHECK(pan.length >= pan.exact - nanometres(1));
            CHECK(pan.length < pan.exact + sixteenths(4));
        }
        CHECK(widths == layout.frame.right.at - layout.frame.left.at);
        CHECK(area / bg::area(flat) == doctest::Approx(1).epsilon(1e-6));
        for (const LaidPan& pan : layout.pans) {
            const double from = (static_cast<double>(pan.from.nm()) - begins) / inch;
            const double wanted =
                boost_area_between(flat, from, from + static_cast<double>(pan.width.nm()) / inch);
            CHECK(std::abs(areas[pan.number] - wanted) < 1 + wanted * 1e-3);
        }
        for (const PanClosures& closures : layout.closures) {
            std::int64_t count = 0;
            for (const ClosureBlanks& blanks : closures.blanks) {
                count += blanks.count;
                CHECK(blanks.blank <= closures.blank);
            }
            CHECK(count == closures.count);
        }
        pans += layout.pans.size();
    }
    return pans;
}

/// The roof's own polygon with heights that were read: from `left` to `right` along the eave.
BoostPolygons as_read(BoostPolygons plane, const DeckPlane& deck, double begins, Length left,
                      Length right) {
    bg::for_each_point(plane, [&](auto& point) {
        const double share =
            (bg::get<0>(point) + (begins - deck.left) / inch) / ((deck.right - deck.left) / inch);
        const double slope = in(left) + (in(right)-in(left)) * share;
        bg::set<1>(point, bg::get<1>(point) / (deck.top / inch) * slope);
    });
    return plane;
}

/// Planes put right by slope lengths that differ, by chance; how many there are.
std::size_t check_read_planes(const std::vector<RoofBody>& bodies, const Roof& roof,
                              std::mt19937& random) {
    for (const BodyPlane& plane : roof.planes) {
        const DeckPlane deck = deck_plane(roof, bodies, plane);
        const Length top = nearest_nm(deck.top);
        const Length left = top + sixteenths(within(random, -80, 80));
        const Length right = left + sixteenths(within(random, 16, 80));
        const Result<ReadPlane> read = read_plane(deck, {left, right, {}, {}}, Tape());
        REQUIRE(read.ok());
        PanelJob job;
        job.practice.side_gap = Length();
        const PanelLayout layout = laid(read->plane, job);
        double area = 0;
        for (const LaidPan& pan : layout.pans) {
            area += area_of(pan.flat) / inch / inch;
            CHECK(pan.length >= pan.exact - nanometres(1));
        }
        const BoostPolygons flat = as_read(flat_plane(roof, bodies, plane), deck,
                                           eave_begins(roof, plane, deck), left, right);
        CHECK(area / bg::area(flat) == doctest::Approx(1).epsilon(1e-6));
    }
    return roof.planes.size();
}

std::string letters(std::size_t i) { return "s" + std::to_string(i); }

/// A walk by chance in one body: eaves and gables at several pitches.
std::vector<RoofBody> chance_house(std::mt19937& random) {
    const PlanWalk walk = rooms(random);
    std::vector<RoofBody> bodies = {{"house", {}, {}}};
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const PlanVector a = walk[i], b = walk[(i + 1) % walk.size()],
                         c = walk[(i + 2) % walk.size()];
        const bool left = turn(b - a, c - b) > 0;
        const bool gable = below(random, 4) == 0;
        BodySide side =
            said_side(letters(i), gable ? SideKind::gable : SideKind::eave, length_of(b - a) * 6,
                      gable ? "" : std::to_string(3 + below(random, 8)) + "/12");
        side.corner = left ? square_out : square_in;
        bodies[0].sides.push_back(side);
    }
    return bodies;
}

}  // namespace

TEST_CASE("Pans cover the planes of gable, hip and dormer houses") {
    for (const std::vector<RoofBody>& bodies :
         {gable_roof(480, 30), hip_roof(480, 24), dormer_roof(456, 188), dormer_roof(480, 192),
          gable_roof(471, 21, SideKind::eave)}) {
        const Result<Roof> roof = work_out_roof(bodies, Tape());
        REQUIRE(roof.ok());
        CHECK(check_planes(bodies, *roof) > 30);
    }
}

TEST_CASE("Pans cover planes whose slope lengths were read, holes and all") {
    std::mt19937 random(10);
    std::size_t planes = 0;
    for (int time = 0; time < 20; ++time) {
        for (const std::vector<RoofBody>& bodies :
             {gable_roof(480, 30), hip_roof(480, 24), dormer_roof(456, 188), l_roof(),
              gable_roof(471, 21, SideKind::eave)}) {
            const Result<Roof> roof = work_out_roof(bodies, Tape());
            REQUIRE(roof.ok());
            planes += check_read_planes(bodies, *roof, random);
        }
    }
    CHECK(planes > 300);
}

TEST_CASE("Pans cover the planes of 300 houses by chance" * doctest::test_suite("long")) {
    std::mt19937 random(18);
    std::size_t pans = 0, houses = 0;
    for (int house = 0; house < 300; ++house) {
        const std::vector<RoofBody> bodies = chance_house(random);
        const Result<Roof> roof = work_out_roof(bodies, Tape());
        if (roof && roof->closes) {
            ++houses;
            pans += check_planes(bodies, *roof);
        }
    }
    CHECK(houses > 100);
    CHECK(pans > 1000);
}
