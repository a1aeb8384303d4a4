// The main screens to the pixel, as they were when somebody last looked at them and found them
// good: tests/pictures. HEMLINE_GOLDEN=write tests the same and keeps what it sees: look at
// every picture before it is committed. Pixels are drawn by the processor alone (picture.h); the
// letters are those of Debian 12's FreeType and B612.
#include <doctest/doctest.h>
#include <imgui.h>

#include <cstdlib>
#include <set>
#include <string>
#include <string_view>

#include "tests/field/app/layout_walks.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

/// Half a 10 in tablet's pixels, so half the letters' too: the layout is the same.
constexpr float w = 640, h = 400, px_per_mm = px_per_mm_unknown / 2;

std::filesystem::path golden() {
    return std::filesystem::path(std::getenv("HEMLINE_SOURCE")) / "tests/pictures";
}

void compare(const Journey& crew, const std::string& name) {
    crew.screen->frames(2);
    const Picture seen = paint(*ImGui::GetDrawData(), crew.app->palette().paper);
    const std::filesystem::path file = golden() / (name + ".png");
    const char* const mode = std::getenv("HEMLINE_GOLDEN");
    if (mode != nullptr && std::string_view(mode) == "write") {
        REQUIRE(write_png(seen, file));
    }
    const long pixels = differing(seen, read_png(file), 32);
    if (pixels > 0) {
        write_png(seen, std::filesystem::temp_directory_path() / (name + ".png"));
    }
    CHECK_MESSAGE(pixels == 0, name << ": " << pixels << " pixels differ from " << file.string()
                                    << "; what is seen now lies in "
                                    << std::filesystem::temp_directory_path().string());
}

void walk(Journey& crew, const std::string& after) {
    const auto see = [&](const std::string& name) { compare(crew, name + after); };
    see("jobs");
    crew.tap("demo");
    const Length length = feet(31) + inches(7) + sixteenths(10);
    crew.read_edge("A", length, length + sixteenths(1), "5");
    crew.tap("leave");
    see("roof");
    crew.tap("edge C");
    crew.key_in(feet(15) + inches(8) + sixteenths(8));
    see("reading");
    crew.tap("keep");
    crew.key_in(feet(16) + inches(8) + sixteenths(8));
    crew.tap("keep");
    see("reading_questioned");
    crew.tap("clear");
    crew.key_in(feet(15) + inches(8) + sixteenths(7));
    crew.tap_all({"keep", "digit 5"});
    see("pitch");
    crew.tap_all({"keep", "run"});
    see("run");
    crew.tap("next");
    for (int i = 0; i < 20 && crew.where().screen != Screen::gate; ++i) {
        crew.do_next();
    }
    see("gate");
    crew.pass_gate();
    see("confirm");
    crew.reach_card("C", TrimRole::main, 1);
    see("card");
    crew.tap("cut");
    crew.reach_step("C", "string");
    see("step");
    crew.key_in(sixteenths(6));
    crew.tap_all({"answer", "answer"});  // over practice, noted
    crew.finish_edge("C");
    crew.tap("edge C");
    see("finished");
    crew.tap_all({"leave", "person Foreman"});
    see("roof_foreman");
    crew.tap("edge C");
    see("look");
    crew.tap_all({"leave", "day"});
    see("day");
}

}  // namespace

TEST_CASE("The main screens look as they did when they were found good, lying and upright" *
          doctest::test_suite("long")) {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    Journey lying(w, h, px_per_mm);
    walk(lying, "");
    Journey upright(h, w, px_per_mm);
    walk(upright, "_upright");
}

TEST_CASE("What the apprentice sees looks as it did when it was found good, lying and upright" *
          doctest::test_suite("long")) {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    for (const bool upright : {false, true}) {
        Journey crew(upright ? h : w, upright ? w : h, px_per_mm);
        const std::string after = upright ? "_upright" : "";
        crew.tap_all({"demo", "person Apprentice"});
        crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
        crew.reach_step("C", "cut", 1);
        compare(crew, "learn_cut" + after);
        crew.reach_step("C", "slide", 2);
        compare(crew, "learn_lap" + after);
        crew.reach_step("C", "ends");
        compare(crew, "learn_ends" + after);
    }
}

TEST_CASE("What is asked once and the cards of strip and cap look as when they were found good" *
          doctest::test_suite("long")) {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    for (const bool upright : {false, true}) {
        Journey crew(upright ? h : w, upright ? w : h, px_per_mm);
        std::set<Screen> seen;
        crew.on_screen = [&] {
            const std::pair<Screen, const char*> places[] = {{Screen::asked_once, "asked_once"},
                                                             {Screen::strip_card, "strip_card"},
                                                             {Screen::end_cap, "end_cap"}};
            for (const auto& [place, name] : places) {
                if (crew.where().screen == place && seen.insert(place).second) {
                    compare(crew, name + std::string(upright ? "_upright" : ""));
                }
            }
        };
        walk_meets(crew);
        CHECK(seen.size() == 3);
    }
}

TEST_CASE("Shapes, the walk and a roof's place looked at closer look as they were found good" *
          doctest::test_suite("long")) {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    for (const bool upright : {false, true}) {
        Journey crew(upright ? h : w, upright ? w : h, px_per_mm);
        const std::string after = upright ? "_upright" : "";
        crew.tap_all({"new job", "letter A", "keep name", "walk", "shape"});
        compare(crew, "shapes" + after);
        crew.tap("shape l");
        crew.key_in(feet(46));
        crew.tap("next");
        crew.key_in(feet(42) + inches(6));
        compare(crew, "shape_length" + after);
        crew.tap_all({"leave", "to walk"});
        for (const auto& [length, corner] : {std::pair(feet(46) + inches(3), "corner outside"),
                                             std::pair(feet(24) + inches(6), "corner outside"),
                                             std::pair(feet(21) + inches(9), "corner inside")}) {
            crew.key_in(length);
            crew.tap_all({corner, "next"});
        }
        crew.key_in(feet(17) + inches(6));
        compare(crew, "walk" + after);
        crew.tap_all({"leave", "jobs", "demo"});
        const Box b = crew.screen->target("roof B"), a = crew.screen->target("roof A");
        crew.screen->touch({TouchKind::down, 0, b.mid_x(), a.mid_y()});
        crew.screen->touch({TouchKind::up, 0, b.mid_x(), a.mid_y()});
        crew.tap("closer");
        compare(crew, "roof_closer" + after);
        crew.tap("whole roof");
        for (const char* const hip : {"T", "U", "V"}) {  // as a pitch of 6/12 would have them
            crew.tap(std::string("edge ") + hip);
            for (int i = 0; i < 2; ++i) {
                crew.key_in(feet(18) + inches(1) + sixteenths(14));
                crew.tap("keep");
            }
            while (crew.where().screen != Screen::roof) {
                crew.tap("leave");
            }
        }
        for (int i = 0; i < 20; ++i) {  // the top of the list
            crew.screen->drag_from((upright ? h : w) * 0.8F, (upright ? w : h) * 0.55F, 0, 25);
        }
        compare(crew, "roof_lesson" + after);
    }
}

TEST_CASE("The cut card by night looks as it did when it was found good") {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    Journey crew(w, h, px_per_mm);
    crew.tap_all({"light", "demo"});
    crew.read_edge("A", feet(31), feet(31), "5");
    crew.reach_card("A", TrimRole::main, 1);
    compare(crew, "card_night");
}

TEST_CASE("Pictures are compared colour by colour") {
    const Picture black{2, 1, {0, 0, 0, 0, 0, 0}};
    CHECK(differing(black, black, 0) == 0);
    CHECK(differing(black, {2, 1, {0, 0, 0, 0, 0, 9}}, 8) == 1);
    CHECK(differing(black, {2, 1, {0, 0, 0, 0, 0, 8}}, 8) == 0);
    CHECK(differing(black, {1, 1, {0, 0, 0}}, 8) == 2);
}
