// Status without colors: a screen in the sun, or eyes that see few of them.
#include "field/screens/page/status_mark.h"

#include <doctest/doctest.h>
#include <imgui.h>

#include <cstdlib>
#include <vector>

#include "tests/field/harness.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

constexpr float side = 80;  // pixels of a square that holds the mark

/// Lightness of each pixel, 0…255 (ITU-R BT.709's weights).
std::vector<int> grey(const Picture& picture) {
    std::vector<int> lightness;
    for (std::size_t i = 0; i + 2 < picture.rgb.size(); i += 3) {
        lightness.push_back(
            (2126 * picture.rgb[i] + 7152 * picture.rgb[i + 1] + 722 * picture.rgb[i + 2]) / 10000);
    }
    return lightness;
}

std::vector<int> mark_of(EdgeStatus status) {
    Harness harness(
        [&](Ui& ui) { draw_status_mark(ui, side / 2, side / 2, side / 3, status, "A"); }, side,
        side);
    harness.frames(2);
    return grey(paint(*ImGui::GetDrawData(), palette_of(Light::day).paper));
}

}  // namespace

TEST_CASE("Without colour, marks of edges that want different things differ in shape and fill") {
    const std::vector<std::vector<int>> marks = {
        mark_of(EdgeStatus::no_reading),        mark_of(EdgeStatus::one_reading),
        mark_of(EdgeStatus::readings_disagree), mark_of(EdgeStatus::ready),
        mark_of(EdgeStatus::fitting),           mark_of(EdgeStatus::finished)};
    for (std::size_t a = 0; a < marks.size(); ++a) {
        for (std::size_t b = a + 1; b < marks.size(); ++b) {
            int differ = 0;
            for (std::size_t i = 0; i < marks[a].size(); ++i) {
                differ += std::abs(marks[a][i] - marks[b][i]) > 64 ? 1 : 0;
            }
            CAPTURE(a);
            CAPTURE(b);
            // A share of the mark's area, which is a third of the square's: our choice.
            CHECK(differ > static_cast<int>(side * side / 3 * 0.05F));
        }
    }
}
