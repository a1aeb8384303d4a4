#include "field/touch/ui.h"

#include <doctest/doctest.h>
#include <imgui.h>

#include <cmath>
#include <string>
#include <vector>

#include "tests/field/harness.h"

using namespace hemline;

namespace {

/// What is wrong with a button of that size, in mm.
std::vector<std::string> faults_of(Look look, float w, float h) {
    Harness screen([&](Ui& ui) {
        ui.button("it", Text("It"), {99, 99, ui.mm(w), ui.mm(h)}, look);
    });
    return screen.ui().faults();
}

}  // namespace

// Least sizes: 10 mm, primary 14 mm high, key 19 mm: above bare thumbs (Parhi et al. 2006, 9.2–9.6
// mm) and at the mitten's 19 mm of MIL-STD-1472E.
TEST_CASE("A target that is too small for a glove is a fault of the screen, named") {
    CHECK(faults_of(Look::plain, 9.5F, 20) ==
          std::vector<std::string>{"it is too small for a glove"});
    CHECK(faults_of(Look::plain, 20, 9.5F).size() == 1);
    CHECK(faults_of(Look::plain, 10, 10).empty());
    CHECK(faults_of(Look::primary, 40, 13).size() == 1);
    CHECK(faults_of(Look::primary, 40, 14).empty());
    CHECK(faults_of(Look::key, 19, 18).size() == 1);
    CHECK(faults_of(Look::key, 18, 19).size() == 1);
    CHECK(faults_of(Look::key, 19, 19).empty());
}

// A crew on a roof goes on with a screen that has a fault: it must not lose its program.
TEST_CASE("A target that is too small taps as if it were large enough") {
    int taps = 0;
    Harness screen([&](Ui& ui) {
        taps += ui.button("it", Text("It"), {99, 99, ui.mm(4), ui.mm(4)}) ? 1 : 0;
    });
    const Box box = screen.target("it");
    CHECK(box.w == doctest::Approx(screen.ui().mm(10)));
    CHECK(box.h == doctest::Approx(screen.ui().mm(10)));
    CHECK(box.mid_x() == doctest::Approx(99 + screen.ui().mm(2)));
    screen.tap("it");
    CHECK(taps == 1);
}

TEST_CASE(
    "More than a page holds does not end the program: the rest does not show, and is a fault") {
    Harness screen([](Ui& ui) {
        for (int i = 0; i < 30'000; ++i) {
            ui.ink()->AddCircleFilled({200, 200}, 50, IM_COL32_BLACK);
            ui.text(200, 200, Text("circle"));
        }
        ui.button("it", Text("It"), {300, 300, ui.mm(20), ui.mm(20)});
    });
    screen.frames(3);
    CHECK(screen.ui().faults() == std::vector<std::string>{"more is drawn than a page holds"});
    CHECK(screen.target("it").w > 0);
}

TEST_CASE("Thirty thousand buttons of a list are no more than a page holds" *
          doctest::test_suite("long")) {
    Harness screen([](Ui& ui) {
        Box list = ui.begin_scroll("list", ui.page());
        const float top = list.y;
        for (int i = 0; i < 30'000; ++i) {
            ui.button("it " + std::to_string(i), Text("It"), take_top(list, ui.mm(12)));
        }
        ui.end_scroll(list.y - top);
    });
    screen.frames(2);
    CHECK(screen.ui().faults() == std::vector<std::string>{});
}

TEST_CASE("Two targets of one name on a screen are a fault, and the first is the target") {
    int first = 0;
    int second = 0;
    Harness screen([&](Ui& ui) {
        first += ui.area("it", {10, 10, ui.mm(20), ui.mm(20)}) ? 1 : 0;
        second += ui.area("it", {10, ui.mm(40), ui.mm(20), ui.mm(20)}) ? 1 : 0;
    });
    CHECK(screen.ui().faults() == std::vector<std::string>{"two targets are named it"});
    screen.tap("it");
    CHECK(first == 1);
    CHECK(second == 0);
}

TEST_CASE("What is off is shown but is no target") {
    Harness harness([](Ui& ui) {
        CHECK_FALSE(ui.button("off", Text("Off"), {10, 10, ui.mm(20), ui.mm(20)}, Look::off));
    });
    CHECK_FALSE(harness.has_target("off"));
}

TEST_CASE("A window smaller than a 7 in screen shows a part of the page, which stays whole") {
    Harness harness([](Ui&) {}, 200, 100);
    CHECK(harness.ui().page().w == doctest::Approx(150 * 5.9));
    CHECK(harness.ui().page().h == doctest::Approx(90 * 5.9));
    harness.resize(100, 200);
    harness.frames();
    CHECK(harness.ui().portrait());
    CHECK(harness.ui().page().h == doctest::Approx(150 * 5.9));
}

TEST_CASE("What is on the screen can be heard: words, figures in full, and what a target says") {
    Harness harness([](Ui& ui) {
        ui.text(ui.mm(10), ui.mm(10), Text("the fascia"));
        ui.figure(ui.mm(10), ui.mm(20), feet(31) + inches(7) + sixteenths(10), Marks::sixteenth);
        ui.button("keep", Text("Keep it"), {10, ui.mm(50), ui.mm(30), ui.mm(14)});
        ui.begin_scroll("list", {0, ui.mm(70), ui.mm(100), ui.mm(10)}, ui.mm(100));
        ui.text(ui.mm(10), ui.mm(71), Text("in sight"));
        ui.text(ui.mm(10), ui.mm(120), Text("out of sight"));
        ui.end_scroll();
    });
    std::vector<std::string> words;
    for (const Words& heard : harness.ui().words()) {
        words.push_back(heard.words);
    }
    CHECK(words == std::vector<std::string>{"the fascia", "31 ft 7 5/8 in", "in sight"});
    CHECK(harness.ui().targets().at(0).label == "Keep it");
}

TEST_CASE("A sentence tells its lengths on the marks of its reader") {
    const Phrases english;
    const CrewWords usual;
    const auto heard = [&](Marks marks) {
        Harness harness([&](Ui& ui) {
            ui.speak(english, marks, usual);
            ui.text(ui.mm(10), ui.mm(10), say("{1} short", feet(5)));
        });
        return harness.ui().words().at(0).words;
    };
    CHECK(heard(Marks::millimetre) == "1524 mm short");
    CHECK(heard(Marks::sixteenth) == "5 ft short");
}

TEST_CASE("Typed text is there for one frame, and Enter by itself in the next") {
    std::vector<std::string> seen;
    Harness harness([&](Ui& ui) { seen.push_back(ui.keyboard().take(true)); });
    harness.type("31-7-5/8\n");
    CHECK(seen == std::vector<std::string>{"", "31-7-5/8", "\n", ""});
}

namespace {

struct OneKey {
    int taken = 0;
    Look look = Look::key;
    Harness harness{[this](Ui& ui) {
        const Box box{ui.mm(10), ui.mm(10), ui.mm(20), ui.mm(20)};
        taken += ui.button("seven", Text("7"), box, look) ? 1 : 0;
        taken += ui.button("eight", Text("8"), {ui.mm(40), ui.mm(10), ui.mm(20), ui.mm(20)}, look)
                     ? 1
                     : 0;
    }};
    /// Taps in frames of 1 ms and lets `rest` seconds go by.
    void tap(float x_mm, double rest) {
        const float x = harness.ui().mm(x_mm);
        harness.push({TouchKind::down, 0, x, x});
        harness.push({TouchKind::up, 0, x, x});
        while (harness.queue().pending()) {
            harness.frames(1, 0.001);
        }
        if (rest > 0) {
            harness.frames(1, rest);
        }
    }
};

}  // namespace

TEST_CASE("The same key within 80 ms is refused, and shown as refused") {
    OneKey key;
    key.tap(20, 0.040);
    CHECK(key.taken == 1);
    CHECK(key.harness.ui().refusal_left() == 0);
    key.tap(20, 0.010);
    CHECK(key.taken == 1);
    CHECK(key.harness.ui().refusal_left() > 0);
    key.harness.frames(1, 0.6);
    CHECK(key.harness.ui().refusal_left() == 0);
    key.tap(20, 0);
    CHECK(key.taken == 2);
}

TEST_CASE("The same key after 90 ms counts again, and so does another key at once") {
    OneKey key;
    key.tap(20, 0.090);
    key.tap(20, 0.001);
    CHECK(key.taken == 2);
    OneKey keys;
    keys.tap(20, 0.010);
    const float x = keys.harness.ui().mm(50);
    const float y = keys.harness.ui().mm(20);
    keys.harness.push({TouchKind::down, 0, x, y});
    keys.harness.touch({TouchKind::up, 0, x, y});
    CHECK(keys.taken == 2);
}

TEST_CASE("A bounce as the finger falls is refused too: a brief touch, then the long one") {
    OneKey key;
    key.tap(20, 0.020);
    const float x = key.harness.ui().mm(20);
    key.harness.push({TouchKind::down, 0, x, x});
    key.harness.frames(3, 0.001);
    key.harness.frames(1, 0.200);
    key.harness.touch({TouchKind::up, 0, x, x});
    CHECK(key.taken == 1);
    CHECK(key.harness.ui().refusal_left() > 0);
}

TEST_CASE("Buttons that are no keys may be tapped as fast as one likes") {
    OneKey key;
    key.look = Look::plain;
    key.tap(20, 0.010);
    key.tap(20, 0.010);
    CHECK(key.taken == 2);
}

namespace {

struct List {
    std::vector<int> tapped;
    Box moving;
    Harness harness{[this](Ui& ui) {
        const Box view{ui.mm(10), ui.mm(10), ui.mm(80), ui.mm(70)};
        moving = ui.begin_scroll("list", view, ui.mm(20) * 12);
        Box rest = moving;
        for (int i = 0; i < 12; ++i) {
            if (ui.area("row:" + std::to_string(i),
                        inset(take_top(rest, ui.mm(20)), 0, ui.mm(2)))) {
                tapped.push_back(i);
            }
        }
        ui.end_scroll();
    }};
    float top() { return harness.ui().mm(10) - moving.y; }
};

}  // namespace

TEST_CASE("A list goes with the finger from where it fell, and presses nothing") {
    List list;
    list.harness.drag("row:2", 0, -30);
    CHECK(list.top() == doctest::Approx(list.harness.ui().mm(30)));
    CHECK(list.tapped.empty());
    list.harness.tap("row:2");
    CHECK(list.tapped == std::vector<int>{2});
}

TEST_CASE("A list stops at its ends") {
    List list;
    list.harness.drag("row:1", 0, 40);
    CHECK(list.top() == 0);
    for (int i = 0; i < 8; ++i) {
        list.harness.drag(list.harness.names().front(), 0, -60);
    }
    CHECK(list.top() == doctest::Approx(list.harness.ui().mm(20 * 12 - 70)));
}

TEST_CASE("A drag that begins beside the list leaves it where it is") {
    List list;
    const float x = list.harness.ui().mm(120);
    list.harness.touch({TouchKind::down, 0, x, x});
    list.harness.touch({TouchKind::move, 0, x, x - 200});
    list.harness.touch({TouchKind::up, 0, x, x - 200});
    CHECK(list.top() == 0);
}

TEST_CASE("A wheel over a list moves it by 12 mm a notch, and presses nothing") {
    List list;
    const Box row = list.harness.target("row:1");
    list.harness.touch({TouchKind::wheel, 0, row.mid_x(), row.mid_y(), -2});
    CHECK(list.top() == doctest::Approx(list.harness.ui().mm(24)));
    list.harness.touch({TouchKind::wheel, 0, row.mid_x(), row.mid_y(), 1});
    CHECK(list.top() == doctest::Approx(list.harness.ui().mm(12)));
    CHECK(list.tapped.empty());
    SUBCASE("beside the list it moves nothing") {
        const float x = list.harness.ui().mm(120);
        list.harness.touch({TouchKind::wheel, 0, x, x, -2});
        CHECK(list.top() == doctest::Approx(list.harness.ui().mm(12)));
    }
    SUBCASE("under a finger that is down it is passed over") {
        list.harness.press(list.harness.names().front());
        list.harness.touch({TouchKind::wheel, 0, row.mid_x(), row.mid_y(), -2});
        CHECK(list.top() == doctest::Approx(list.harness.ui().mm(12)));
        list.harness.lift();
    }
}

TEST_CASE("Rows out of view are no targets, and a sliver of a row is none either") {
    List list;
    CHECK(list.harness.has_target("row:0"));
    CHECK(list.harness.has_target("row:2"));
    CHECK_FALSE(list.harness.has_target("row:4"));
    const Box view{list.harness.ui().mm(10), list.harness.ui().mm(10), list.harness.ui().mm(80),
                   list.harness.ui().mm(70)};
    for (const Target& target : list.harness.ui().targets()) {
        CHECK(target.box.y >= view.y - 0.5F);
        CHECK(target.box.bottom() <= view.bottom() + 0.5F);
        CHECK(target.box.h >= list.harness.ui().mm(10) - 1);
    }
}

TEST_CASE("A flung list runs on, slower and slower, and comes to rest; a touch stops it") {
    List list;
    const Box row = list.harness.target("row:2");
    list.harness.touch({TouchKind::down, 0, row.mid_x(), row.mid_y()});
    for (int i = 1; i <= 6; ++i) {
        list.harness.push({TouchKind::move, 0, row.mid_x(),
                           row.mid_y() - static_cast<float>(i) * list.harness.ui().mm(3)});
        list.harness.frames();
    }
    list.harness.touch({TouchKind::up, 0, row.mid_x(), row.mid_y() - list.harness.ui().mm(18)});
    REQUIRE(list.harness.queue().flinging());
    const float at_lift = list.top();
    list.harness.frames();
    const float first = list.top() - at_lift;
    CHECK(first > 0);
    const float before = list.top();
    list.harness.frames();
    CHECK(list.top() - before < first);
    SUBCASE("it comes to rest by itself") {
        int frames = 0;
        while (list.harness.queue().flinging() && frames < 600) {
            list.harness.frames();
            ++frames;
        }
        CHECK(frames < 240);
        CHECK(list.tapped.empty());
    }
    SUBCASE("a touch stops it and presses nothing") {
        list.harness.touch({TouchKind::down, 0, row.mid_x(), row.mid_y()});
        list.harness.touch({TouchKind::up, 0, row.mid_x(), row.mid_y()});
        CHECK_FALSE(list.harness.queue().flinging());
        CHECK(list.tapped.empty());
        list.harness.touch({TouchKind::down, 0, row.mid_x(), row.mid_y()});
        list.harness.touch({TouchKind::up, 0, row.mid_x(), row.mid_y()});
        CHECK(list.tapped.size() == 1);
    }
}

TEST_CASE("Figures are as wide to the left as to the right of where they stand") {
    Harness harness([](Ui& ui) {
        for (const Length length : {Length(), sixteenths(10), inches(12), millimetres(9650),
                                    feet(31) + inches(7) + sixteenths(10)}) {
            const float left = ui.figure(0, 0, length, Marks::sixteenth);
            CHECK(left > 0);
            CHECK(ui.figure(0, 0, length, Marks::sixteenth, Size::figure, Align::right) == left);
            CHECK(ui.figure(0, 0, length, Marks::millimetre, Size::figure, Align::centre) > 0);
        }
        // inches are shown even when they are 0, where there are feet
        CHECK(ui.figure(0, 0, feet(12), Marks::sixteenth) >
              ui.figure(0, 0, feet(1) + inches(1), Marks::sixteenth));
        CHECK(ui.figure(0, 0, feet(1), Marks::sixteenth) ==
              ui.figure(0, 0, feet(1) + inches(1), Marks::sixteenth));
    });
}

TEST_CASE("No scroll is carried to another job") {
    std::string job = "one";
    Harness harness([&](Ui& ui) {
        ui.lists_of(job);
        const Box list = ui.begin_scroll("rows", {0, 0, 400, 200}, 1000);
        for (int i = 0; i < 10; ++i) {
            ui.area("row " + std::to_string(i), {0, list.y + 100.0F * float(i), 300, 80});
        }
        ui.end_scroll();
    });
    harness.drag("row 1", 0, -30);
    CHECK(!harness.has_target("row 0"));
    harness.frames(2);
    CHECK(!harness.has_target("row 0"));
    job = "another";
    harness.frames(2);
    CHECK(harness.has_target("row 0"));
}

TEST_CASE("What is to be seen of a list is counted until it is in sight") {
    Harness harness([&](Ui& ui) {
        const Box list = ui.begin_scroll("rows", {0, 0, 400, 200}, 1000);
        for (int i = 0; i < 10; ++i) {
            ui.to_be_seen({0, list.y + 100.0F * float(i), 300, 80});
        }
        ui.end_scroll();
    });
    harness.frames();
    Ui& ui = harness.ui();
    CHECK(ui.left_below("rows") == 8);
    CHECK(ui.left_below("no such list") == 0);
    for (std::size_t left = 6; left > 0; left -= 2) {
        ui.go_on_below("rows");
        harness.frames();
        CHECK(ui.left_below("rows") == left);
    }
    ui.go_on_below("rows");
    harness.frames();
    CHECK(ui.left_below("rows") == 0);
}
