// Where words about a section lie: their line keeps off the metal.
#include "field/screens/section/profile_places.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/field/harness.h"

using namespace hemline;

TEST_CASE("A line from words to a bend neither runs along the metal nor crosses another line") {
    int placed = 0;
    const Harness harness([&](Ui& ui) {
        const float mm = ui.mm(1);
        const Box page{0, 0, 130 * mm, 60 * mm};
        ProfileTaken taken;
        taken.add_line({{60 * mm, 10 * mm}, {60 * mm, 50 * mm}});  // a face
        taken.words = {{62 * mm, 20 * mm, 22 * mm, 12 * mm}, {36 * mm, 20 * mm, 22 * mm, 12 * mm}};
        taken.leaders.emplace_back(ImVec2(60 * mm, 50 * mm), ImVec2(90 * mm, 40 * mm));
        for (int i = 0; i <= 20; ++i) {
            const ImVec2 bend{60 * mm, (10 + 2.0F * static_cast<float>(i)) * mm};
            const auto place =
                place_beside(ui, bend, bend, {0, 0, 26 * mm, 12 * mm}, page, taken, Need::clear);
            if (!place) {
                continue;
            }
            ++placed;
            const ImVec2 end = leader_end(bend, *place);
            const float length = std::hypot(end.x - bend.x, end.y - bend.y);
            for (float at = 5 * mm; at < length; at += mm) {  // 5 mm off it has left its own place
                const float x = bend.x + (end.x - bend.x) * at / length;
                CHECK_MESSAGE(std::abs(x - 60 * mm) > mm, i << " runs along the face");
            }
        }
    });
    CHECK(placed > 10);
}
