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
std::string word_of(Place place) {
    switch (place) {
        case Place::jobs:
            return "jobs";
        case Place::roof:
            return "roof";
        case Place::add_edge:
            return "edge";
        case Place::reading:
            return "reading";
        case Place::pitch:
            return "pitch";
        case Place::tilt:
            return "tilt";
        case Place::run:
            return "run";
        case Place::card:
            return "card";
        case Place::differently:
            return "cut_differently";
        case Place::spoiled:
            return "spoiled";
        case Place::steps:
            return "step";
        case Place::look:
            return "values";
        case Place::day:
            return "day";
        case Place::send_back:
            return "send_back";
        case Place::history:
            return "record";
        case Place::person:
            return "person";
        case Place::calibrate:
            return "screen_size";
        case Place::sticks:
            return "sticks";
        case Place::stick:
            return "stick";
        case Place::on_hand:
            return "on_hand";
        case Place::stock:
            return "new_sticks";
        case Place::choices:
            return "choices";
        case Place::folded:
            return "folded";
        case Place::section:
            return "section";
        case Place::apart:
            return "made_apart";
        case Place::hand_over:
            return "hand_over";
        case Place::folder:
            return "folder";
        case Place::papers:
            return "papers";
        case Place::backup:
            return "backup";
        case Place::rules:
            return "rules";
        case Place::edge_lap:
            return "edge_lap";
        case Place::notices:
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
        const Place place = crew.where().place;
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
