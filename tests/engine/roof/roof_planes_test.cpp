// Folds, hips and miters again, from explicit planes and directions in space: nothing of the
// engine's formulas, only Eigen's crosses, dots and solutions.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <eigen3/Eigen/Dense>
#include <numbers>

#include "engine/roof/cut_offset.h"
#include "engine/roof/fold_angle.h"
#include "engine/roof/hip.h"
#include "engine/words/result.h"

using namespace hemline;

namespace {

using Vector = Eigen::Vector3d;

double between(const Vector& a, const Vector& b) {
    return degrees_in(std::atan2(a.cross(b).norm(), a.dot(b)));
}

/// Two roofs over a corner at the origin. Eave 1 runs along x, eave 2 at the corner's angle from
/// it, the building between them.
struct Planes {
    Vector eave1, eave2, normal1, normal2, line;

    explicit Planes(const RoofCorner& corner) {
        const double angle = radians_of(corner.inside);
        eave1 = {1, 0, 0};
        eave2 = {std::cos(angle), std::sin(angle), 0};
        const Vector up = {0, 0, 1};
        // Inward of each eave: the building is left of eave 1 and right of eave 2.
        const Vector inward1 = up.cross(eave1);
        const Vector inward2 = -up.cross(eave2);
        normal1 = up - inward1 * std::tan(radians_of(degrees_of(corner.pitch1)));
        normal2 = up - inward2 * std::tan(radians_of(degrees_of(corner.pitch2)));
        normal1.normalize();
        normal2.normalize();
        line = normal1.cross(normal2);
        line *= line.z() < 0 ? -1 : 1;
        line.normalize();
    }
};

Slope any_pitch() { return {SlopeNotation::rise_in_12, *rc::gen::inRange(500'000, 24'000'000)}; }

RoofCorner any_corner() {
    const bool inside = *rc::gen::element(0, 1) == 1;
    const Angle angle = microdegrees(*rc::gen::inRange(20'000'000, 170'000'000));
    return {any_pitch(), any_pitch(), inside ? degrees(360) - angle : angle};
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-7 * std::max(1.0, std::abs(b)); }

}  // namespace

TEST_CASE("Hip and valley lines lie where the two planes meet") {
    CHECK(rc::check([] {
        const RoofCorner corner = any_corner();
        const Planes planes(corner);
        const Result<HipLine> found = hip_line(corner);
        RC_ASSERT(found.ok());
        const Vector level(planes.line.x(), planes.line.y(), 0);
        RC_ASSERT(near(found->slope_degrees, between(planes.line, level)));
        RC_ASSERT(near(found->from_eave1_degrees, between(level, planes.eave1)));
        RC_ASSERT(near(found->from_eave2_degrees, between(level, planes.eave2)));
        RC_ASSERT(near(found->dihedral_degrees, 180 - between(planes.normal1, planes.normal2)));
    }));
}

TEST_CASE("Backing angles are each roof's against the level, square to the line") {
    CHECK(rc::check([] {
        const RoofCorner corner = any_corner();
        const Planes planes(corner);
        const Result<HipLine> found = hip_line(corner);
        RC_ASSERT(found.ok());
        // The level direction square to the line, toward roof 1 (the side of eave 1).
        Vector aside = planes.line.cross(Vector(0, 0, 1));
        aside *= aside.dot(planes.eave1) < 0 ? -1 : 1;
        aside.normalize();
        // Where each roof runs in the plane square to the line.
        Vector in1 = planes.normal1.cross(planes.line);
        Vector in2 = planes.normal2.cross(planes.line);
        in1 *= in1.dot(aside) < 0 ? -1 : 1;
        in2 *= in2.dot(-aside) < 0 ? -1 : 1;
        const auto falls = [](const Vector& way) { return way.z() < 0 ? 1 : -1; };
        RC_ASSERT(near(found->backing1_degrees, falls(in1) * between(in1, aside)));
        RC_ASSERT(near(found->backing2_degrees, falls(in2) * between(in2, -aside)));
    }));
}

TEST_CASE("The flange mitre ends where the flange's back edge meets the other roof") {
    CHECK(rc::check([] {
        const RoofCorner corner = any_corner();
        const Length flange = nanometres(*rc::gen::inRange(10'000'000, 500'000'000));
        const Planes planes(corner);
        // The point on both roofs, a flange's width up roof 1 from eave 1.
        const Vector up_roof1 = planes.normal1.cross(planes.eave1).normalized();
        Eigen::Matrix3d rows;
        rows << planes.normal1.transpose(), planes.normal2.transpose(), up_roof1.transpose();
        const Vector point =
            rows.colPivHouseholderQr().solve(Vector(0, 0, static_cast<double>(flange.nm())));
        const double along = point.dot(planes.eave1);
        const Result<Length> found = flange_mitre_setback(flange, corner);
        RC_ASSERT(found.ok());
        RC_ASSERT(std::abs(static_cast<double>(found->nm()) - along) <= 1 + 1e-9 * std::abs(along));
    }));
}

TEST_CASE("Jacks grow by what the line climbs between them") {
    CHECK(rc::check([] {
        const RoofCorner corner = any_corner();
        const Planes planes(corner);
        // The point of the line over a length of 1 along eave 1; its distance up roof 1 from the
        // eave.
        const Vector top = planes.line / planes.line.dot(planes.eave1);
        const Vector jack = top - planes.eave1;
        const double sense = planes.line.dot(planes.eave1) < 0 ? -1 : 1;
        const double expected = sense * jack.norm() * static_cast<double>(inches(16).nm());
        const Result<Length> found = jack_difference(inches(16), corner);
        RC_PRE(std::abs(expected) < 9e11);
        RC_ASSERT(found.ok());
        RC_ASSERT(std::abs(static_cast<double>(found->nm()) - expected) <=
                  1 + 1e-9 * std::abs(expected));
    }));
}

TEST_CASE("Folds over two roofs are the angle between their planes") {
    CHECK(rc::check([] {
        const RoofCorner corner = any_corner();
        const Planes planes(corner);
        const bool valley = corner.inside > degrees(180);
        const Result<FoldAngle> found =
            fold_of({valley ? EdgeKind::valley : EdgeKind::hip, corner.pitch1, corner.pitch2,
                     corner.inside, Fascia::plumb});
        RC_ASSERT(found.ok());
        RC_ASSERT(near(found->bend_degrees, between(planes.normal1, planes.normal2)));
    }));
}

TEST_CASE("Folds along a level edge are the angle between the legs' directions in its section") {
    CHECK(rc::check([] {
        const Slope one = any_pitch();
        const Slope two = any_pitch();
        const double a = radians_of(degrees_of(one));
        const double b = radians_of(degrees_of(two));
        const Vector up_roof(std::cos(a), std::sin(a), 0);
        const Vector down_roof(std::cos(a), -std::sin(a), 0);
        const Vector plumb_down(0, -1, 0);
        const auto included = [&](EdgeKind kind) {
            return fold_of({kind, one, two, {}, Fascia::plumb}).value().included_degrees;
        };
        RC_ASSERT(near(included(EdgeKind::eave), between(up_roof, plumb_down)));
        RC_ASSERT(near(included(EdgeKind::high_eave), between(down_roof, plumb_down)));
        RC_ASSERT(near(included(EdgeKind::headwall), between(down_roof, -plumb_down)));
        RC_ASSERT(near(included(EdgeKind::curb_head), between(up_roof, -plumb_down)));
        RC_ASSERT(near(included(EdgeKind::ridge),
                       between(down_roof, Vector(-std::cos(b), -std::sin(b), 0))));
        RC_ASSERT(near(included(EdgeKind::transition),
                       between(down_roof, Vector(-std::cos(b), std::sin(b), 0))));
    }));
}
