#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <eigen3/Eigen/Dense>

#include "engine/roof/square_check.h"
#include "engine/words/result.h"
#include "tests/engine/roof/in.h"

using namespace hemline;

TEST_CASE("Diagonals of a 30 by 20 ft rectangle 1/4 in apart are a skew of 0.150 in") {
    // By hand: d is about 432.67 in, so (d1² − d2²)/(4·360) = 0.25 × 865.3/1440 = 0.1502.
    const Length diagonal = nanometres(std::llround(std::hypot(360.0, 240.0) * 25.4e6));
    const Length skew =
        skew_of(feet(30), diagonal + thirty_seconds(4), diagonal - thirty_seconds(4));
    CHECK(std::abs(in(skew)-0.150) <= 0.0005);
    CHECK(skew_of(feet(30), diagonal, diagonal) == Length());
}

TEST_CASE("A skewed rectangle's diagonals give its skew back") {
    CHECK(rc::check([] {
        const double a = *rc::gen::inRange(3'000, 30'000);
        const double b = *rc::gen::inRange(3'000, 30'000);
        const double skew = *rc::gen::inRange(-300, 300);
        // Corners in mm: the far side moved along by `skew`.
        const Eigen::Vector2d far1(a + skew, b);
        const Eigen::Vector2d far2(skew, b);
        const Eigen::Vector2d near2(a, 0);
        const auto mm = [](double length) { return nanometres(std::llround(length * 1e6)); };
        const Length found = skew_of(mm(a), mm(far1.norm()), mm((far2 - near2).norm()));
        RC_ASSERT(std::abs(static_cast<double>(found.nm()) - skew * 1e6) <= 5);
    }));
}

TEST_CASE("Equal diagonals hold within what two readings may differ by") {
    // NIST Handbook 44 §5.52: 1/8 in from 31 to 55 ft; twice it and 1/16 in is 5/16 in.
    CHECK(check_diagonals(feet(36) + sixteenths(5), feet(36), Tape()).holds());
    CHECK(!check_diagonals(feet(36) + sixteenths(6), feet(36), Tape()).holds());
}

TEST_CASE("3-4-5: the corner between sides of 3 and 4 whose ends are 5 apart is square") {
    // Army carpentry texts.
    const Result<double> square = corner_of(feet(3), feet(4), feet(5));
    REQUIRE(square.ok());
    CHECK(*square == doctest::Approx(90));
    CHECK(*corner_of(feet(7), feet(7), feet(7)) == doctest::Approx(60));
    CHECK(!corner_of(feet(3), feet(4), feet(8)).ok());
    CHECK(!corner_of(Length(), feet(4), feet(4)).ok());
}

TEST_CASE("The largest 3-4-5 lies with its longer leg on the longer side") {
    const auto found = three_four_five(feet(30), feet(20), feet(1));
    REQUIRE(found);
    CHECK(found->three == feet(18));
    CHECK(found->four == feet(24));
    CHECK(found->five == feet(30));
    CHECK(!three_four_five(feet(2), feet(20), feet(1)));
    const auto metric = three_four_five(millimetres(6200), millimetres(9000), millimetres(100));
    REQUIRE(metric);
    CHECK(metric->five == millimetres(10'000));
}

TEST_CASE("A gable's slope is held against run and pitch: 12 ft at 5 in 12 is 13 ft") {
    // 5-12-13 triangle.
    const ShapeCheck exact = check_gable(feet(13), feet(12), rise_in_12(5), Tape());
    CHECK(exact.off == Length());
    CHECK(exact.holds());
    const ShapeCheck foot = check_gable(feet(14), feet(12), rise_in_12(5), Tape());
    CHECK(!foot.holds());
    CHECK(foot.off == feet(1));
    CHECK(foot.cause == LikelyCause::misread_foot);
    const Result<double> pitch = implied_pitch_degrees(feet(13), feet(12));
    REQUIRE(pitch.ok());
    CHECK(*pitch == doctest::Approx(degrees_of(rise_in_12(5))));
    CHECK(!implied_pitch_degrees(feet(11), feet(12)).ok());
}
