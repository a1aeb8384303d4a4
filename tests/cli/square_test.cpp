#include <doctest/doctest.h>

#include <cmath>

#include "tests/cli/program.h"

using namespace hemline::test;

// 3-4-5 and equal diagonals: Army carpentry texts. The skew of a 30 × 20 ft rectangle whose
// diagonals are 1/4 in apart, (d1² − d2²)/(4a) with the square diagonal √(30² + 20²) = 36.0555 ft
// between them: 0.150 in.
TEST_CASE("square finds the 3-4-5 on two sides and the skew that two diagonals imply") {
    const Desk desk;
    const auto json = desk.run({"square", "30 ft", "20 ft", "--diagonal", "36 ft 0 13/16 in",
                                "--diagonal2", "36 ft 0 9/16 in", "--json"})
                          .json();
    CHECK(json["three_nm"] == 18 * 12 * inch_nm);
    CHECK(json["four_nm"] == 24 * 12 * inch_nm);
    CHECK(json["five_nm"] == 30 * 12 * inch_nm);
    CHECK(json["diagonal_nm"].get<double>() / static_cast<double>(inch_nm) ==
          doctest::Approx(36.0555 * 12).epsilon(1e-5));
    CHECK(json["off_nm"] == inch_nm / 4);
    CHECK(std::abs(json["skew_nm"].get<double>() / static_cast<double>(inch_nm) - 0.150) < 0.001);
    CHECK(json["square"].is_boolean());
}

TEST_CASE("square gives the corner that a length across two sides makes") {
    const Desk desk;
    const auto corner = [&](const char* across) {
        return desk.run({"square", "3 m", "4 m", "--across", across, "--unit", "mm", "--json"})
            .json()["corner_deg"]
            .get<double>();
    };
    CHECK(corner("5 m") == doctest::Approx(90));
    CHECK(corner("5.4 m") > 90);
}

TEST_CASE("square says which length it cannot use, and what to do") {
    const Desk desk;
    const Ran bad = desk.run({"square", "30 ft", "20 bananas"});
    CHECK(bad.exit == 1);
    CHECK(bad.err.find("OTHER") != std::string::npos);
    CHECK(desk.run({"square", "30 ft", "20 ft", "--across", "90 ft"}).exit == 1);
    CHECK(desk.run({"square", "30 ft", "20 ft", "--diagonal", "36 ft"}).exit == 2);
    CHECK(desk.run({"square", "30 ft"}).exit == 2);
}
