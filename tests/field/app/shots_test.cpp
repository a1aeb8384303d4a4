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
    }
    return "screen";
}

/// Keeps a picture of each screen that has other targets than those before.
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

void walk_with(const std::filesystem::path& folder, float w, float h, bool spanish) {
    std::filesystem::create_directories(folder);
    for (const int part : {0, 1, 2, 3, 4}) {
        Journey crew(w, h);
        if (spanish) {
            crew.tap("language");
        }
        const std::string names[] = {"", "sticks", "learn", "hand_over", "both_units"};
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
        } else if (part == 4) {
            crew.tap("demo");
            crew.read_edge("C", feet(15) + inches(8) + sixteenths(8),
                           feet(15) + inches(8) + sixteenths(7), "5");
            crew.tap_all({"run", "style balanced", "next"});
            crew.reach_card("C", TrimRole::main, 1);
            for (const bool both : {false, true}) {
                if (both) {
                    crew.tap_all({"leave", "by", "units", "leave", "edge C"});
                    crew.reach_card("C", TrimRole::main, 1);
                }
                shots.seen.clear();
                shots.shoot();
            }
            crew.tap_all({"run", "leave", "edge D"});
            crew.key_in(feet(12) + inches(3) + sixteenths(5));
        } else {
            crew.tap_all({"demo", "person Apprentice"});
            crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
            crew.reach_step("C", "tick");
        }
    }
}

}  // namespace

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
