#include "engine/work/boot.h"

#include <doctest/doctest.h>

#include <cmath>

#include "engine/trim/practice.h"

using namespace hemline;

namespace {

double in_inches(Length length) { return static_cast<double>(length.nm()) / 25.4e6; }

}  // namespace

// Worked examples: base/2 + 1 + half a seam's foot; pipe + 2 (move + 1/8) on 1/16, steel laid at
// 60 °F that reaches 180. Common practice, no published source.
TEST_CASE("a boot's least distance from a seam, its room in a 16 in pan and its hole") {
    const Practice practice;
    const struct {
        int pipe16, base, feet_away;
        double least, room, hole;
    } rows[] = {
        {56, 6, 10, 4.25, 7.5, 4}, {72, 9, 15, 5.75, 4.5, 5.0625}, {128, 14, 5, 8.25, -0.5, 8.375}};
    for (const auto& row : rows) {
        const Boot boot = boot_of(sixteenths(row.pipe16), inches(row.base), feet(row.feet_away),
                                  MetalFamily::galvanized, practice);
        CHECK(in_inches(boot.seam_least) == doctest::Approx(row.least));
        CHECK(in_inches(boot.room) == doctest::Approx(row.room));
        CHECK(in_inches(boot.hole) == doctest::Approx(row.hole));
        CHECK(fits(boot) == (row.room >= 1));
    }
    // Aluminum moves nearly twice as far (coefficient 12.9 for 6.7): 15 ft by 0.279 in.
    CHECK(in_inches(
              boot_of(sixteenths(72), inches(9), feet(15), MetalFamily::aluminum, practice).hole) ==
          doctest::Approx(5.3125));
}

// Laid at 20 °F that reaches 180, or at 150 °F that reaches −20: 15 ft of steel moves by 0.193 in
// and 0.205 in. The coefficient: see metal_family_test; −20 °F from memory.
TEST_CASE("a boot's hole is as wide as the metal moves from the temperature it is laid at") {
    for (const int laid_at : {20, 150}) {
        Practice practice;
        practice.site.metal_now = fahrenheit(laid_at);
        const Boot boot =
            boot_of(sixteenths(72), inches(9), feet(15), MetalFamily::galvanized, practice);
        CHECK(in_inches(boot.hole) == doctest::Approx(5.1875));
    }
}

// IRC Table R1003.20 (from memory): W/6 at 4/12, W/4 at 6/12, W/3 at 8/12.
TEST_CASE("a cricket's height and the true length of its valleys") {
    const struct {
        int width;
        double rise, height, valley;
    } rows[] = {{32, 4, 5.33333, 23.2475}, {48, 6, 12, 36}, {40, 8, 13.3333, 31.2694}};
    for (const auto& row : rows) {
        const Cricket cricket =
            cricket_of(inches(row.width), std::atan(row.rise / 12) * 180 / 3.14159265358979);
        CHECK(std::abs(in_inches(cricket.height) - row.height) < 1e-4);
        CHECK(std::abs(in_inches(cricket.valley) - row.valley) < 1e-3);
    }
}
