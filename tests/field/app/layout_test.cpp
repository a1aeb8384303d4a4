// Every screen that a crew passes through, at every size and light: room for gloves, and nothing
// off the page.
#include <doctest/doctest.h>

#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

/// The pages of screens by their diagonal, 16:10: w = 25.4 d 16 / √(16² + 10²) mm. The largest is
/// first: a walk is made on it, where nothing needs to be scrolled to.
std::vector<Size2> sizes_from_7_to_13_in(float px_per_mm = px_per_mm_unknown) {
    constexpr Size2 pages_mm[] = {{280, 175}, {150, 90}, {172, 108}, {215, 135}};
    std::vector<Size2> sizes;
    for (const Size2 page : pages_mm) {
        sizes.push_back({page.w * px_per_mm, page.h * px_per_mm});
        sizes.push_back({page.h * px_per_mm, page.w * px_per_mm});
    }
    return sizes;
}

}  // namespace

TEST_CASE("On every screen of a 10 in tablet, upright and lying, each target has room for a glove" *
          doctest::test_suite("long")) {
    Journey crew;
    Inspection inspection{crew, {{1280, 800}, {800, 1280}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    MESSAGE(inspection.seen.size() << " screens looked at");
}

TEST_CASE("On every screen from 7 to 13 in, upright and lying, each target has room for a glove" *
          doctest::test_suite("long")) {
    for (const float px_per_mm : {5.9F, 11.0F}) {
        const std::vector<Size2> sizes = sizes_from_7_to_13_in(px_per_mm);
        Journey crew(sizes.front().w, sizes.front().h, px_per_mm);
        if (px_per_mm > px_per_mm_unknown) {
            crew.tap_all({"by", "tablet", "units", "leave"});  // with both units on
        }
        Inspection inspection{crew, sizes, {}};
        inspection.look();
        crew.on_screen = [&] { inspection.look(); };
        walk(crew);
        CHECK(inspection.seen.size() > 40);
    }
}

TEST_CASE("Walking a roof onto another has room for a glove, from 7 to 13 in, upright and lying") {
    const std::vector<Size2> sizes = sizes_from_7_to_13_in();
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.tap_all({"new job", "letter A", "keep name", "walk"});
    crew.key_in(feet(40));
    crew.tap("next");
    crew.key_in(feet(24));
    crew.tap_all({"kind gable", "close", "digit 6", "keep pitch"});
    crew.on_screen = [&] { inspection.look(); };
    crew.tap_all({"add edge", "walk"});
    crew.key_in(feet(8));
    crew.tap_all({"kind gable", "runs in", "host A"});
    crew.key_in(feet(16));
    crew.tap("next");
    crew.key_in(feet(4));
    crew.tap("next");
    crew.key_in(feet(4));
    crew.tap_all({"next", "digit 4", "keep pitch"});
    CHECK(inspection.seen.size() > 10);
}

TEST_CASE("Every screen about sticks has room for a glove, from 7 to 13 in, upright and lying" *
          doctest::test_suite("long")) {
    const std::vector<Size2> sizes = sizes_from_7_to_13_in();
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.on_screen = [&] { inspection.look(); };
    walk_sticks(crew);
    CHECK(inspection.seen.size() > 15);
}

TEST_CASE("Strips, caps, what is asked once and panels have room for a glove, 7 to 13 in" *
          doctest::test_suite("long")) {
    const std::vector<Size2> sizes = sizes_from_7_to_13_in();
    std::set<Screen> places;
    for (void (*walk_past)(Journey&) : {walk_meets, walk_panels}) {
        Journey crew(sizes.front().w, sizes.front().h);
        Inspection inspection{crew, sizes, {}};
        crew.on_screen = [&] {
            inspection.look();
            places.insert(crew.where().screen);
        };
        walk_past(crew);
    }
    for (const Screen place : {Screen::asked_once, Screen::strip_card, Screen::end_cap,
                               Screen::panels, Screen::seams, Screen::cut_pan}) {
        CHECK(places.count(place) == 1);
    }
}

TEST_CASE("Every screen of handing over has room for a glove, from 7 to 13 in, upright and lying") {
    const std::vector<Size2> sizes = sizes_from_7_to_13_in();
    Journey crew(sizes.front().w, sizes.front().h);
    Inspection inspection{crew, sizes, {}};
    crew.on_screen = [&] { inspection.look(); };
    walk_hand_over(crew);
    CHECK(inspection.seen.size() > 15);
}

TEST_CASE("Every step that is learnt has room for a glove, from 7 to 13 in, upright and lying" *
          doctest::test_suite("long")) {
    const std::vector<Size2> sizes = sizes_from_7_to_13_in();
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

TEST_CASE("Under the left thumb every target has the same room, on 7 and on 10 in" *
          doctest::test_suite("large")) {
    Journey crew;
    crew.tap_all({"by", "tablet", "hand", "leave"});
    Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
}

TEST_CASE("By night every target has the same room" * doctest::test_suite("large")) {
    Journey crew;
    crew.tap("light");
    CHECK(crew.app->light() == Light::night);
    CHECK(crew.app->palette().paper == palette_of(Light::night).paper);
    Inspection inspection{crew, {{800, 1280}, {1280, 800}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
}
