// Pictures of every screen on the way past them, in both languages, lying and upright: for docs/
// and for looking at. tools/shots runs it; it proves nothing, so the other tests go past it.
#include <doctest/doctest.h>
#include <imgui.h>

#include <sys/resource.h>

#include <array>
#include <cstdlib>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "tests/field/app/layout_walks.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

/// What the file of a screen is called.
std::string word_of(Screen place) {
    switch (place) {
        case Screen::jobs:
            return "jobs";
        case Screen::roof:
            return "roof";
        case Screen::add_edge:
            return "edge";
        case Screen::reading:
            return "reading";
        case Screen::pitch:
            return "pitch";
        case Screen::tilt:
            return "tilt";
        case Screen::run:
            return "run";
        case Screen::card:
            return "card";
        case Screen::differently:
            return "cut_differently";
        case Screen::spoiled:
            return "spoiled";
        case Screen::steps:
            return "step";
        case Screen::look:
            return "values";
        case Screen::day:
            return "day";
        case Screen::send_back:
            return "send_back";
        case Screen::history:
            return "record";
        case Screen::person:
            return "person";
        case Screen::calibrate:
            return "screen_size";
        case Screen::sticks:
            return "sticks";
        case Screen::stick:
            return "stick";
        case Screen::on_hand:
            return "on_hand";
        case Screen::stock:
            return "new_sticks";
        case Screen::choices:
            return "choices";
        case Screen::folded:
            return "folded";
        case Screen::section:
            return "section";
        case Screen::apart:
            return "made_apart";
        case Screen::hand_over:
            return "hand_over";
        case Screen::folder:
            return "folder";
        case Screen::papers:
            return "papers";
        case Screen::backup:
            return "backup";
        case Screen::rules:
            return "rules";
        case Screen::edge_lap:
            return "edge_lap";
        case Screen::notices:
            return "made_of";
        case Screen::tablet:
            return "tablet";
        case Screen::lift:
            return "lift";
        case Screen::gate:
            return "gate";
        case Screen::asked_once:
            return "asked_once";
        case Screen::strip_card:
            return "strip_card";
        case Screen::walk:
            return "walk";
        case Screen::shape:
            return "shape";
        case Screen::end_cap:
            return "end_cap";
        case Screen::panels:
            return "panels";
        case Screen::seams:
            return "seams";
        case Screen::cut_pan:
            return "cut_pan";
    }
    return "screen";
}

/// Keeps a picture of each screen that has other targets than those before, and of each step.
struct Shots {
    Journey& crew;
    std::filesystem::path folder;
    std::set<std::string> seen;
    std::array<int, 64> count{};
    std::vector<std::pair<std::filesystem::path, Picture>> kept{};

    void shoot() {
        std::string id = crew.state().notice.english();
        for (const std::string& name : crew.screen->names()) {
            id += "," + name;
        }
        id += crew.where().screen == Screen::strip_card ? crew.where().edge : "";
        // "Eave C · Cleat · step 5 of 28" is the first that is drawn.
        id += crew.where().screen == Screen::steps ? crew.screen->ui().words().front().words : "";
        if (!seen.insert(id).second) {
            return;
        }
        crew.screen->frames(2);
        const Screen place = crew.where().screen;
        const int number = ++count[static_cast<std::size_t>(place)];
        const std::string name = word_of(place) + "_" + std::to_string(number) + ".png";
        kept.emplace_back(folder / name, paint(*ImGui::GetDrawData(), crew.app->palette().paper));
        rlimit room{};
        getrlimit(RLIMIT_FSIZE, &room);
        if (room.rlim_cur > 0) {  // else the walk has filled the disk
            write();
        }
    }

    void write() {
        for (const auto& [file, picture] : kept) {
            REQUIRE(write_png(picture, file));
        }
        kept.clear();
    }
};

void walk_with(const std::filesystem::path& folder, float w, float h, bool spanish,
               const std::vector<int>& parts = {6, 5, 4, 0, 1, 2, 3}) {
    std::filesystem::create_directories(folder);
    for (const int part : parts) {
        Journey crew(w, h);
        if (spanish) {
            crew.tap("language");
        }
        const std::string names[] = {"",           "sticks", "learn", "hand_over",
                                     "both_units", "meets",  "panels"};
        Shots shots{crew, folder / names[part], {}, {}};
        std::filesystem::create_directories(shots.folder);
        shots.shoot();
        crew.on_screen = [&] { shots.shoot(); };
        if (part == 0) {
            walk(crew);
        } else if (part == 1) {
            walk_sticks(crew);
        } else if (part == 3) {
            walk_hand_over(crew);
        } else if (part == 5) {
            walk_meets(crew);
        } else if (part == 6) {
            walk_panels(crew);
        } else if (part == 4) {
            crew.tap("demo");
            const Box plan = crew.screen->target("roof plan");
            crew.screen->drag_from(plan.mid_x(), plan.mid_y(), 22, 0);
            shots.shoot();
            crew.tap("roof plan");
            crew.read_edge("C", feet(15) + inches(8) + sixteenths(8),
                           feet(15) + inches(8) + sixteenths(7), "5");
            crew.tap_all({"run", "style balanced", "next"});
            crew.reach_card("C", TrimRole::main, 1);
            for (const bool both : {false, true}) {
                if (both) {
                    crew.tap_all({"leave", "by", "tablet", "units", "leave", "edge C"});
                    crew.reach_card("C", TrimRole::main, 1);
                }
                shots.seen.clear();
                shots.shoot();
            }
            crew.tap_all({"run", "leave", "edge D"});
            crew.key_in(feet(12) + inches(3) + sixteenths(5));
        } else {
            // Every step of an edge of each kind, as the apprentice sees it.
            crew.tap_all({"demo", "person Apprentice"});
            for (const auto& [edge, length] :
                 {std::pair("C", feet(15)), std::pair("J", feet(11)), std::pair("T", feet(17)),
                  std::pair("X", feet(14)), std::pair("R", feet(21)), std::pair("Y", feet(6)),
                  std::pair("Z", feet(12)), std::pair("H2", feet(16))}) {
                crew.tap(std::string("edge ") + edge);
                for (int i = 0; i < 2; ++i) {
                    crew.key_in(length);
                    crew.tap("keep");
                }
                if (crew.where().screen == Screen::pitch) {  // not said with the roof's
                    crew.tap_all({"digit 5", "keep"});
                }
                crew.reach_step(edge, "tick");
                while (crew.where().screen != Screen::roof) {
                    crew.tap("leave");
                }
            }
        }
    }
}

/// The roof walked and drawn: shapes, walk, plan, looked at closer, the solid, what readings teach.
void walk_roof_with(const std::filesystem::path& folder, Size2 size, float px_per_mm,
                    bool spanish) {
    std::filesystem::create_directories(folder);
    Journey crew(size.w, size.h, px_per_mm);
    const auto see = [&](const char* name) {
        crew.screen->frames(2);
        REQUIRE(write_png(paint(*ImGui::GetDrawData(), crew.app->palette().paper),
                          folder / (std::string(name) + ".png")));
    };
    if (spanish) {
        crew.tap("language");
    }
    crew.tap_all({"new job", "letter A", "keep name", "walk", "shape"});
    see("shapes");
    crew.tap("shape l");
    crew.key_in(feet(46));
    crew.tap("next");
    crew.key_in(feet(42) + inches(6));
    see("shape_length");
    crew.tap_all({"leave", "to walk"});
    for (const auto& [length, corner] : {std::pair(feet(46) + inches(3), "corner outside"),
                                         std::pair(feet(24) + inches(6), "corner outside"),
                                         std::pair(feet(21) + inches(9), "corner inside"),
                                         std::pair(feet(17) + inches(6), "corner outside")}) {
        see("walk");
        crew.key_in(length);
        crew.tap_all({corner, "next"});
    }
    see("walk_closing");
    crew.tap_all({"close", "digit 5"});
    see("walk_pitch");
    crew.tap("keep pitch");
    see("walked");
    crew.tap_all({"jobs", "demo"});
    see("roof");
    const Box plan = crew.screen->target("roof plan");
    crew.screen->drag_from(plan.mid_x(), plan.mid_y(), 22, 0);
    see("solid");
    crew.tap("roof plan");
    crew.screen->touch({TouchKind::down, 0, plan.mid_x() - plan.w / 6, plan.mid_y()});
    crew.screen->touch({TouchKind::up, 0, plan.mid_x() - plan.w / 6, plan.mid_y()});
    see("roof_near");
    if (crew.screen->has_target("closer")) {
        crew.tap("closer");
        see("roof_closer");
    }
    if (crew.screen->has_target("whole roof")) {
        crew.tap("whole roof");
    }
    for (const char* const hip : {"T", "U", "V"}) {  // as a pitch of 6/12 would have them
        while (crew.where().screen != Screen::roof) {
            crew.tap("leave");
        }
        crew.tap(std::string("edge ") + hip);
        for (int i = 0; i < 2; ++i) {
            crew.key_in(feet(18) + inches(1) + sixteenths(14));
            crew.tap("keep");
        }
    }
    while (crew.where().screen != Screen::roof) {
        crew.tap("leave");
    }
    for (int i = 0; i < 20; ++i) {  // the top of the list
        crew.screen->drag_from(size.w * 0.8F, size.h * 0.55F, 0, 25);
    }
    see("lesson");
}

}  // namespace

TEST_CASE("Shots of the roof, on 10 and on 7 in" * doctest::skip()) {
    const char* const folder = std::getenv("HEMLINE_SHOTS");
    REQUIRE_MESSAGE(folder != nullptr, "HEMLINE_SHOTS names the folder for the pictures");
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    constexpr float px_on_7_in = 1024 / 150.0F;
    for (const bool spanish : {false, true}) {
        const std::filesystem::path shots = std::filesystem::path(folder) / (spanish ? "es" : "en");
        walk_roof_with(shots / "roof_10_lying", {1280, 800}, px_per_mm_unknown, spanish);
        walk_roof_with(shots / "roof_10_upright", {800, 1280}, px_per_mm_unknown, spanish);
        walk_roof_with(shots / "roof_7_lying", {1024, 600}, px_on_7_in, spanish);
        walk_roof_with(shots / "roof_7_upright", {600, 1024}, px_on_7_in, spanish);
    }
}

TEST_CASE("Shots of every screen" * doctest::skip()) {
    const char* const folder = std::getenv("HEMLINE_SHOTS");
    REQUIRE_MESSAGE(folder != nullptr, "HEMLINE_SHOTS names the folder for the pictures");
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    const std::filesystem::path shots(folder);
    for (const bool spanish : {false, true}) {
        const std::filesystem::path language = shots / (spanish ? "es" : "en");
        walk_with(language / "lying", 1280, 800, spanish);
        walk_with(language / "upright", 800, 1280, spanish);
    }
}

TEST_CASE("Shots of what meets the panels and of every step, small" * doctest::skip()) {
    const char* const folder = std::getenv("HEMLINE_SHOTS");
    REQUIRE_MESSAGE(folder != nullptr, "HEMLINE_SHOTS names the folder for the pictures");
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    for (const bool spanish : {false, true}) {
        const auto language = std::filesystem::path(folder) / (spanish ? "es" : "en");
        walk_with(language / "small", 885, 531, spanish, {5, 2});
    }
}
