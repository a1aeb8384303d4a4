#include <doctest/doctest.h>
#include <imgui.h>

#include "field/theme/theme.h"

using namespace hemline;

// WCAG 2.2, "contrast ratio": 21:1 for black on white by its formula. The grays are the values
// commonly quoted for that formula, from memory: #767676 is the lightest that reaches 4.5 on white,
// #595959 the lightest that reaches 7.
TEST_CASE("Contrast is counted as WCAG 2.2 counts it") {
    const Colour white = IM_COL32(255, 255, 255, 255);
    CHECK(contrast_of(IM_COL32(0, 0, 0, 255), white) == doctest::Approx(21));
    CHECK(contrast_of(white, IM_COL32(0, 0, 0, 255)) == doctest::Approx(21));
    CHECK(contrast_of(white, white) == doctest::Approx(1));
    CHECK(contrast_of(IM_COL32(0x76, 0x76, 0x76, 255), white) ==
          doctest::Approx(4.54).epsilon(2e-3));
    CHECK(contrast_of(IM_COL32(0x77, 0x77, 0x77, 255), white) < 4.5);
    CHECK(contrast_of(IM_COL32(0x59, 0x59, 0x59, 255), white) >= 7);
    CHECK(contrast_of(IM_COL32(0x5A, 0x5A, 0x5A, 255), white) < 7);
    // pure red, green and blue have the luminances 0.2126, 0.7152 and 0.0722 of the definition
    CHECK(contrast_of(IM_COL32(255, 0, 0, 255), white) == doctest::Approx(1.05 / 0.2626));
    CHECK(contrast_of(IM_COL32(0, 255, 0, 255), white) == doctest::Approx(1.05 / 0.7652));
    CHECK(contrast_of(IM_COL32(0, 0, 255, 255), white) == doctest::Approx(1.05 / 0.1222));
}

// WCAG 2.2, 1.4.6 (AAA): 7:1.
TEST_CASE("Every text stands at 7:1 or better on its ground, by day and by night") {
    for (const Light light : {Light::day, Light::night}) {
        for (const TextPair& pair : text_pairs(palette_of(light))) {
            CAPTURE(pair.name);
            CHECK(contrast_of(pair.text, pair.ground) >= 7);
        }
    }
}

// (500 + 255) / 255 is what a 255 cd/m² veil leaves of black on white at 500 cd/m²; the share is
// our rule.
TEST_CASE("Under the sun's veil every text keeps 80 % of what black on white keeps") {
    CHECK(share_left_in_sun(IM_COL32_BLACK, IM_COL32_WHITE) == doctest::Approx(1));
    CHECK(share_left_in_sun(IM_COL32_WHITE, IM_COL32_WHITE) == doctest::Approx(255.0 / 755));
    for (const Light light : {Light::day, Light::night}) {
        for (const TextPair& pair : text_pairs(palette_of(light))) {
            CAPTURE(pair.name);
            CHECK(share_left_in_sun(pair.text, pair.ground) >= 0.8);
        }
    }
}
