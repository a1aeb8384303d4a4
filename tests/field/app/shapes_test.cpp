// Start from a shape: what is drawn on its buttons, and while a length is asked. Looked at by its
// pixels, with nothing of the drawing's code.
#include <doctest/doctest.h>
#include <imgui.h>

#include <algorithm>
#include <set>

#include "tests/field/app/journey.h"
#include "tests/field/app/layout_walks.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

constexpr const char* shape_names[] = {"gable", "hip", "l", "t", "lean-to"};

/// A new job, at the choice of shapes.
void begin_shapes(Journey& crew) {
    crew.tap_all({"new job", "letter A", "keep name", "walk", "shape"});
}

Picture seen(const Journey& crew) {
    crew.screen->frames(2);
    return paint(*ImGui::GetDrawData(), crew.app->palette().paper);
}

Colour colour_at(const Picture& picture, int x, int y) {
    const std::size_t at = 3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(picture.w) +
                                static_cast<std::size_t>(x));
    return IM_COL32(picture.rgb[at], picture.rgb[at + 1], picture.rgb[at + 2], 255);
}

/// The pixels of a colour within a box, and the box around them.
struct Inked {
    int count = 0;
    float left = 1e6F, right = 0, top = 1e6F, low = 0;
    [[nodiscard]] float w() const { return right - left; }
    [[nodiscard]] float h() const { return low - top; }
};
Inked inked(const Picture& picture, Box box, Colour colour) {
    Inked found;
    for (int y = static_cast<int>(box.y); y < static_cast<int>(box.bottom()); ++y) {
        for (int x = static_cast<int>(box.x); x < static_cast<int>(box.right()); ++x) {
            if (colour_at(picture, x, y) == colour) {
                ++found.count;
                found.left = std::min(found.left, static_cast<float>(x));
                found.right = std::max(found.right, static_cast<float>(x));
                found.top = std::min(found.top, static_cast<float>(y));
                found.low = std::max(found.low, static_cast<float>(y));
            }
        }
    }
    return found;
}

/// Where a shape is drawn while its lengths are asked: below the fields, beside the keys.
Box drawn_in(const Journey& crew) {
    const Box feet_field = crew.screen->target("field feet");
    const Box key = crew.screen->target("digit 7"), leave = crew.screen->target("leave");
    return {feet_field.x, feet_field.bottom() + 2, key.x - feet_field.x - 4,
            leave.y - feet_field.bottom() - 4};
}

}  // namespace

TEST_CASE("Each shape is drawn on its button, and no two look alike, from 7 to 13 in, both ways" *
          doctest::test_suite("long")) {
    for (const Size2 size : {Size2{885, 531}, Size2{531, 885}, Size2{1280, 800}, Size2{800, 1280},
                             Size2{1652, 1032}}) {
        const float w = size.w, h = size.h;
        CAPTURE(w);
        Journey crew(w, h);
        begin_shapes(crew);
        const Picture picture = seen(crew);
        std::set<std::vector<Colour>> looks;
        for (const char* const name : shape_names) {
            CAPTURE(name);
            const Box card = crew.screen->target(std::string("shape ") + name);
            const float mm = crew.screen->ui().mm(1);
            // Its outline is as large as a bare thumb's print (15 mm, from memory) or more.
            const Inked ink = inked(picture, inset(card, 2 * mm), crew.app->palette().ink);
            CHECK(ink.w() > 15 * mm);
            CHECK(ink.h() > 15 * mm);
            std::vector<Colour> look;
            for (int i = 1; i < 40; ++i) {
                for (int k = 1; k < 28; ++k) {
                    look.push_back(colour_at(
                        picture, static_cast<int>(card.x + card.w * static_cast<float>(i) / 40),
                        static_cast<int>(card.y + card.h * 0.8F * static_cast<float>(k) / 28)));
                }
            }
            looks.insert(look);
        }
        CHECK(looks.size() == std::size(shape_names));
    }
}

TEST_CASE("The side whose length is asked is in chalk, and lengths given stand on their sides") {
    Journey crew;
    begin_shapes(crew);
    crew.tap("shape l");
    const Colour chalk = crew.app->palette().chalk;
    const Inked bottom = inked(seen(crew), drawn_in(crew), chalk);
    CHECK(bottom.count > 100);
    CHECK(bottom.w() > 5 * bottom.h());  // one arm's outside lies along the page
    crew.key_in(feet(46));
    crew.tap("next");
    const Inked side = inked(seen(crew), drawn_in(crew), chalk);
    CHECK(side.h() > 5 * side.w());  // the other's stands up, at the left
    CHECK(side.right < bottom.left + bottom.w() / 4);
    CHECK(shows(crew, "46 ft"));
    crew.key_in(feet(42) + inches(6));
    crew.tap("next");
    const Inked both = inked(seen(crew), drawn_in(crew), chalk);
    CHECK(both.w() > 100);  // how wide they are is two sides: one upright, one level
    CHECK(both.h() > 100);
    CHECK(shows(crew, "42 ft 6 in"));
    for (const Words& one : crew.screen->ui().words()) {
        if (one.words == "46 ft" || one.words == "42 ft 6 in") {
            const Box box = drawn_in(crew);
            CHECK(box.holds(one.box.mid_x(), one.box.mid_y()));
        }
    }
}

TEST_CASE("The side asked is in chalk on a 7 in screen too, both ways up") {
    for (const Size2 size : {Size2{885, 531}, Size2{531, 885}}) {
        const float w = size.w, h = size.h;
        CAPTURE(w);
        Journey crew(w, h);
        begin_shapes(crew);
        for (const char* const name : shape_names) {
            CAPTURE(name);
            crew.tap(std::string("shape ") + name);
            const Box field = crew.screen->target("field inches");
            Box body = crew.screen->ui().page();
            take_top(body, field.bottom() + 2);
            take_bottom(body, h - crew.screen->target(w > h ? "leave" : "digit 7").y + 4);
            if (w > h) {
                body.w = crew.screen->target("digit 7").x - 4;
            }
            CHECK(inked(seen(crew), body, crew.app->palette().chalk).w() > 60);
            crew.tap("leave");
        }
    }
}
