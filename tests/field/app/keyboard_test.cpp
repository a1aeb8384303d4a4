// Everything by keyboard alone: an eave from the list of jobs to the tick, every screen's targets
// by Tab, text into every field, the sheet of keys; a table copied, a list pasted.
#include <doctest/doctest.h>
#include <imgui.h>

#include <algorithm>
#include <set>

#include "field/screens/page/actions.h"
#include "field/state/pool_view.h"
#include "field/touch/focus.h"
#include "tests/field/app/layout_walks.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

constexpr float least_in_sight = 4;  // mm

void press(Harness& screen, Key key) {
    screen.ui().keyboard().type(std::string(1, static_cast<char>(key)));
    do {
        screen.frames();
    } while (screen.ui().keyboard().is_pending());
}

/// What the words on the screen say now.
std::string all_words(const Ui& ui) {
    std::string words;
    for (const Words& one : ui.words()) {
        words += one.words + "\n";
    }
    for (const Target& target : ui.targets()) {
        words += target.label + "\n";
    }
    return words;
}

/// What a screen reader says of that target.
std::string label_of(const Journey& crew, std::string_view name) {
    for (const Target& target : crew.screen->ui().targets()) {
        if (target.name == name) {
            return target.label;
        }
    }
    return {};
}

bool is_in_sight(const Ui& ui, const Target& focus) {
    const Box page = ui.page(), box = focus.box;
    const float least = std::min(ui.mm(least_in_sight), ui.mm(target_min));
    return box.w >= least && box.h >= least && box.x >= 0 && box.y >= 0 &&
           box.right() <= page.w + 1 && box.bottom() <= page.h + 1;
}

/// Tab all the way round and Shift+Tab back, so that lists are where they were.
void check_tabs(Journey& crew) {
    Harness& screen = *crew.screen;
    std::set<std::string> wanted;
    for (const std::string& name : screen.names()) {
        wanted.insert(name);
    }
    const std::string place = std::to_string(static_cast<int>(crew.where().screen)) + " at " +
                              std::to_string(screen.ui().page().w) + " px";
    const bool is_record = crew.where().screen == Screen::history;
    for (const Key key : {Key::tab, Key::back_tab}) {
        std::set<std::string> reached;
        std::string first;
        for (std::size_t i = 0; i < 600; ++i) {
            press(screen, key);
            const std::optional<Target> focus = screen.ui().focus();
            REQUIRE_MESSAGE(focus.has_value(), "no focus on screen " << place);
            CHECK_MESSAGE(is_in_sight(screen.ui(), *focus),
                          focus->name << " on screen " << place << " is framed out of sight");
            first = first.empty() ? focus->name : first;
            if (!reached.insert(focus->name).second) {
                // Of a long record only what is near is drawn, and known to go back to.
                const bool turns = focus->name == first || is_record;
                CHECK_MESSAGE(turns, "Tab turns short on screen " << place);
                break;
            }
        }
        for (const std::string& name : wanted) {
            const bool is_far = is_record && key == Key::back_tab;
            // What is below comes into sight as Tab goes there, and another action in its place.
            const bool is_past = name == below_target;
            CHECK_MESSAGE((is_far || is_past || reached.count(name) > 0),
                          "Tab does not reach " << name << " on screen " << place);
        }
    }
}

/// Where there are keys for digits or letters, a typed one shows, and can be erased again.
void check_typing(Journey& crew) {
    Harness& screen = *crew.screen;
    const bool letters = screen.has_target("letter E");
    if (!letters && !screen.has_target("digit 7") && !screen.has_target("inches 7")) {
        return;
    }
    const std::string before = all_words(screen.ui());
    screen.type(letters ? "e" : "7");
    const std::string typed = all_words(screen.ui());
    screen.type("\b");
    // A field that is full takes nothing more, but gives back.
    CHECK_MESSAGE((typed != before || all_words(screen.ui()) != before),
                  "nothing typed shows on screen " << static_cast<int>(crew.where().screen));
}

/// On the way past every screen, once for each kind.
struct TabWalk {
    Journey& crew;
    std::vector<Size2> sizes = {{1280, 800}};
    std::set<std::string> seen = {};

    void look() {
        std::string id = std::to_string(static_cast<int>(crew.where().screen));
        for (const std::string& name : crew.screen->names()) {
            id += "," + name;
        }
        if (!seen.insert(id).second) {
            return;
        }
        for (const Size2 size : sizes) {
            crew.screen->resize(size.w, size.h);
            crew.screen->frames(2);
            check_tabs(crew);
        }
        crew.screen->resize(sizes.front().w, sizes.front().h);
        crew.screen->frames(2);
        check_typing(crew);
        const bool has_way_back = !crew.screen->ui().keyboard().way_back().empty();
        const bool may_lack = crew.where().screen == Screen::jobs ||
                              crew.where().screen == Screen::person;  // nobody holds it
        CHECK_MESSAGE((has_way_back || may_lack),
                      "Esc leads nowhere from screen " << static_cast<int>(crew.where().screen));
    }
};

}  // namespace

TEST_CASE("An eave goes from the list of jobs to the tick by keyboard alone") {
    Journey crew;
    crew.by_keyboard = true;
    crew.tap("demo");
    REQUIRE(crew.where().screen == Screen::roof);
    crew.tap("edge A");
    for (const int sixteenth : {4, 3}) {
        crew.screen->type("46 ft 0 " + std::to_string(sixteenth) + "/16 in");
        crew.screen->press(Key::enter);
        CHECK(shows(crew, sixteenth == 4 ? "1/4" : "3/16"));
        CHECK(crew.work("A").readings.size() == (sixteenth == 4 ? 0U : 1U));
        crew.screen->press(Key::enter);
        CHECK(crew.work("A").readings.size() == (sixteenth == 4 ? 1U : 2U));
    }
    CHECK(crew.work("A").readings[0].length == feet(46) + sixteenths(4));
    if (crew.where().screen == Screen::pitch) {
        crew.screen->type("5");
        crew.screen->press(Key::enter);  // on to the next edge, which nobody has read
        CHECK(crew.where().screen == Screen::reading);
        crew.tap_all({"leave", "edge A"});
    }
    crew.finish_edge("A");
    CHECK(crew.status("A") == EdgeStatus::finished);
}

TEST_CASE("On roof, reading, run and card Tab reaches every target, and frames it in sight") {
    Journey crew;
    TabWalk walk{crew};
    walk.look();
    crew.tap("demo");
    walk.look();
    crew.tap("edge C");
    walk.look();
    for (int i = 0; i < 2; ++i) {
        crew.key_in(eave_c_length);
        crew.tap("keep");
    }
    if (crew.where().screen == Screen::pitch) {
        crew.tap_all({"digit 5", "keep"});
    }
    walk.look();
    crew.reach_card("C", TrimRole::main, 1);
    walk.look();
    CHECK(walk.seen.size() == 5);
}

TEST_CASE("On every screen Tab reaches every target, and frames it in sight" *
          doctest::test_suite("large")) {
    for (int part = 0; part < 4; ++part) {
        Journey crew;
        // Large first: the way past the screens is made there.
        TabWalk tabs{crew, {{1280, 800}, {800, 1280}, {531, 885}, {1920, 1080}}};
        tabs.look();
        crew.on_screen = [&] { tabs.look(); };
        part == 0   ? walk(crew)
        : part == 1 ? walk_sticks(crew)
        : part == 2 ? walk_hand_over(crew)
                    : walk_meets(crew);
        MESSAGE(tabs.seen.size() << " screens, each at " << tabs.sizes.size() << " sizes");
    }
}

TEST_CASE("On the least page Tab frames in sight what is asked about a second pitch") {
    Journey crew;
    crew.tap_all({"demo", "add edge", "kind transition"});
    for (const char* const end : {"left end ", "right end "}) {
        const std::vector<std::string> names = crew.screen->names();
        const auto found = std::find_if(names.begin(), names.end(), [&](const std::string& name) {
            return name.rfind(end, 0) == 0;
        });
        REQUIRE(found != names.end());
        crew.tap(*found);
    }
    REQUIRE(crew.screen->has_target("pitch the same"));
    crew.screen->resize(885, 531);
    crew.screen->frames(3);
    check_tabs(crew);
    for (int i = 0; i < 40; ++i) {
        press(*crew.screen, Key::tab);
        if (crew.screen->ui().focus()->name == "pitch the same") {
            break;
        }
    }
    CHECK(crew.screen->ui().focus()->name == "pitch the same");
    crew.screen->press(Key::enter);
    CHECK(!crew.screen->has_target("pitch the same"));
}

TEST_CASE("The focus is drawn around its target, and a touch puts it away") {
    Journey crew;
    crew.tap("demo");
    const auto picture = [&] {
        crew.screen->frames();
        return paint(*ImGui::GetDrawData(), crew.app->palette().paper);
    };
    CHECK_FALSE(crew.screen->ui().focus().has_value());
    const Picture before = picture();
    crew.screen->press(Key::tab);
    const std::optional<Target> focus = crew.screen->ui().focus();
    REQUIRE(focus.has_value());
    const Picture framed = picture();
    CHECK(differing(before, framed, 100) > 200);
    crew.screen->tap("history");
    crew.screen->tap("leave");
    CHECK_FALSE(crew.screen->ui().focus().has_value());
}

TEST_CASE(
    "Enter twice within a bounce does not keep a reading, and Esc goes back and keeps nothing") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.screen->type("46 ft 0 1/4 in\n\n");  // a laser that ends its line with two
    CHECK(shows(crew, "46 ft 0 1/4 in"));
    CHECK(crew.work("A").readings.empty());
    crew.screen->press(Key::enter);
    CHECK(crew.work("A").readings.size() == 1);
    crew.screen->press(Key::escape);
    CHECK(crew.where().screen == Screen::roof);
    crew.screen->press(Key::escape);
    CHECK(crew.where().screen == Screen::jobs);
}

TEST_CASE("Backspace erases what was read, and a typed line shows until Enter") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.screen->type("46'");
    CHECK(shows(crew, "46'_"));
    crew.screen->type("\b\b7'\n");
    CHECK(label_of(crew, "field feet") == "47 feet");
    for (int i = 0; i < 2; ++i) {
        crew.screen->type("\b");  // sixteenths, inches
    }
    crew.screen->type("\b");
    CHECK(label_of(crew, "field feet") == "4 feet");
}

TEST_CASE("A question mark shows the keys in both languages, and what is keyed in stays") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap_all({"demo", "edge A"});
        crew.screen->type("46 ft 1 in\n?");
        CHECK(shows(crew, spanish ? "Teclas" : "Keys"));
        CHECK(crew.screen->crowded().empty());
        crew.screen->press(Key::escape);
        CHECK_FALSE(shows(crew, spanish ? "Teclas" : "Keys"));
        CHECK(label_of(crew, "field feet").rfind("46 ", 0) == 0);
        CHECK(label_of(crew, "field inches").rfind("1 ", 0) == 0);
        crew.screen->press(Key::keys);
        crew.screen->press(Key::enter);
        CHECK(crew.where().screen == Screen::reading);
        CHECK(crew.work("A").readings.empty());
    }
}

TEST_CASE("In a name a question mark is a letter") {
    Journey crew;
    crew.tap("new job");
    crew.screen->type("Barn?");
    CHECK(shows(crew, "Barn?"));
}

TEST_CASE("Pieces and sticks are copied as lines with tabs between") {
    Journey crew;
    crew.tap("demo");
    crew.app->press(Key::copy);
    CHECK(crew.copied.empty());
    CHECK(crew.state().notice.english() == "There are no pieces to copy yet: read an edge first.");
    crew.screen->frames(2);
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.app->press(Key::copy);
    const Run& run = run_on(crew, "C");
    const std::string piece = "C\t" + crew.app->in_words(trim_name(crew.state(), run.trim)) +
                              "\t1\t" + print_length(run.pieces[0].cut, Marks::sixteenth) + "\t" +
                              print_length(run.pieces[0].covers, Marks::sixteenth);
    CHECK_MESSAGE(crew.copied.find(piece) != std::string::npos, crew.copied);
    CHECK(crew.copied.rfind("edge\ttrim\tpiece\tcut length\tcovers\tcut already\n", 0) == 0);
    crew.tap_all({"leave", "sticks"});
    crew.app->press(Key::copy);
    CHECK_MESSAGE(crew.copied.find("C/1") != std::string::npos, crew.copied);
    CHECK(crew.copied.rfind("stick\tstick length\tpiece\tbegins at\tcut length\n", 0) == 0);
}

TEST_CASE(
    "A pasted list comes line by line, each shown before it is kept, and bad lines are named") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.screen->paste("46' 0 1/4\"\r\n\r\n46 0 1/4\nC\t15 ft 8 in\nQQ\t3 ft\n");
    CHECK(shows(crew, "Line 1 of the list: 46' 0 1/4\""));
    CHECK(shows(crew, "46 ft 0 1/4 in"));
    CHECK(crew.work("A").readings.empty());
    crew.tap("keep");
    CHECK(crew.work("A").readings.size() == 1);
    CHECK(crew.where() == Where{Screen::reading, "A"});
    CHECK(shows(crew, "Line 3 of the list is not a reading: 46 0 1/4."));
    CHECK_FALSE(crew.screen->has_target("keep"));
    crew.tap("skip line");
    CHECK(crew.where() == Where{Screen::reading, "C"});
    CHECK(shows(crew, "Line 4 of the list"));
    crew.tap("keep");
    CHECK(crew.work("C").readings.at(0).length == feet(15) + inches(8));
    CHECK_MESSAGE(shows(crew, "There is no edge QQ on this job."), all_words(crew.screen->ui()));
}
