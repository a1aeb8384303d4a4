// Every screen that a crew passes through, at every size and light: room for gloves, and nothing
// off the page.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE(
    "On every screen of a 10 in tablet, upright and lying, each target has room for a glove") {
    Journey crew;
    Inspection inspection{crew, {{1280, 800}, {800, 1280}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    MESSAGE(inspection.seen.size() << " screens looked at");
}

// The page of a screen by its diagonal, 16:10, in mm: w = 25.4 d 16 / √(16² + 10²).
TEST_CASE("On every screen from 7 to 13 in, upright and lying, each target has room for a glove") {
    constexpr Size2 pages_mm[] = {{150, 90}, {172, 108}, {215, 135}, {280, 175}};
    for (const float px_per_mm : {5.9F, 11.0F}) {
        std::vector<Size2> sizes;
        for (const Size2 page : pages_mm) {
            sizes.push_back({page.w * px_per_mm, page.h * px_per_mm});
            sizes.push_back({page.h * px_per_mm, page.w * px_per_mm});
        }
        // The walk is made on the largest, where nothing needs to be scrolled to.
        std::rotate(sizes.begin(), sizes.end() - 2, sizes.end());
        Journey crew(sizes.front().w, sizes.front().h, px_per_mm);
        if (px_per_mm > px_per_mm_unknown) {
            crew.tap_all({"by", "units", "leave"});  // with both units on
        }
        Inspection inspection{crew, sizes, {}};
        inspection.look();
        crew.on_screen = [&] { inspection.look(); };
        walk(crew);
        CHECK(inspection.seen.size() > 40);
    }
}

TEST_CASE("Every screen about sticks has room for a glove, from 7 to 13 in, upright and lying") {
    constexpr Size2 pages_mm[] = {{150, 90}, {172, 108}, {215, 135}, {280, 175}};
    std::vector<Size2> sizes;
    for (const Size2 page : pages_mm) {
        sizes.push_back({page.w * px_per_mm_unknown, page.h * px_per_mm_unknown});
        sizes.push_back({page.h * px_per_mm_unknown, page.w * px_per_mm_unknown});
    }
    std::rotate(sizes.begin(), sizes.end() - 2, sizes.end());
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.on_screen = [&] { inspection.look(); };
    walk_sticks(crew);
    CHECK(inspection.seen.size() > 15);
}

TEST_CASE("Every screen of handing over has room for a glove, from 7 to 13 in, upright and lying") {
    constexpr Size2 pages_mm[] = {{150, 90}, {172, 108}, {215, 135}, {280, 175}};
    std::vector<Size2> sizes;
    for (const Size2 page : pages_mm) {
        sizes.push_back({page.w * px_per_mm_unknown, page.h * px_per_mm_unknown});
        sizes.push_back({page.h * px_per_mm_unknown, page.w * px_per_mm_unknown});
    }
    std::rotate(sizes.begin(), sizes.end() - 2, sizes.end());
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.on_screen = [&] { inspection.look(); };
    walk_hand_over(crew);
    CHECK(inspection.seen.size() > 15);
}

TEST_CASE("Every step that is learnt has room for a glove, from 7 to 13 in, upright and lying") {
    constexpr Size2 pages_mm[] = {{150, 90}, {172, 108}, {215, 135}, {280, 175}};
    std::vector<Size2> sizes;
    for (const Size2 page : pages_mm) {
        sizes.push_back({page.w * px_per_mm_unknown, page.h * px_per_mm_unknown});
        sizes.push_back({page.h * px_per_mm_unknown, page.w * px_per_mm_unknown});
    }
    std::rotate(sizes.begin(), sizes.end() - 2, sizes.end());
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.on_screen = [&] { inspection.look(); };
    crew.tap_all({"demo", "person Apprentice"});
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_step("C", "tick");
    CHECK(inspection.seen.size() > 25);
}

// A crew with the least of screens, by touches alone: nothing is out of reach of a thumb.
TEST_CASE("An eave is finished on a 7 in screen, upright and lying") {
    for (const Size2 size : {Size2{885, 531}, Size2{531, 885}}) {
        Journey crew(size.w, size.h);
        Inspection inspection{crew, {size}, {}};
        crew.on_screen = [&] { inspection.look(); };
        crew.tap("demo");
        crew.read_edge("C", feet(15) + inches(8) + sixteenths(8),
                       feet(15) + inches(8) + sixteenths(7), "5");
        crew.finish_edge("C");
        CHECK(crew.status("C") == EdgeStatus::finished);
    }
}

TEST_CASE("Under the left thumb every target has the same room, on 7 and on 10 in") {
    Journey crew;
    crew.tap_all({"by", "hand", "leave"});
    Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
}

TEST_CASE("By night every target has the same room") {
    Journey crew;
    crew.tap("light");
    CHECK(crew.app->light() == Light::night);
    CHECK(crew.app->palette().paper == palette_of(Light::night).paper);
    Inspection inspection{crew, {{800, 1280}, {1280, 800}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
}
