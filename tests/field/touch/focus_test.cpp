// Where Tab and arrows lead on a page: keys at the right, a list at the left, actions below.
//
//   +------+  +---+---+
//   | a    |  | 7 | 8 |
//   | b    |  | 4 | 5 |
//   : c    :  +---+---+      c is scrolled out of sight
//   [leave]   [ keep  ]
#include <doctest/doctest.h>

#include "field/touch/keyboard.h"

using namespace hemline;

namespace {

const int list_id = 0;
const Box list_view{0, 0, 100, 90};

Focusable one(const char* name, Box box) { return {name, box, box}; }

Focusable row(const char* name, float y) {
    const Box box{0, y, 100, 40};
    return {name, box, common_of(box, list_view), y < 50, false, &list_id, list_view};
}

/// In the order in which a page draws them: the actions first.
std::vector<Focusable> page() {
    return {one("leave", {0, 100, 60, 40}),
            one("keep", {150, 100, 90, 40}),
            one("7", {150, 0, 40, 40}),
            one("8", {200, 0, 40, 40}),
            one("4", {150, 50, 40, 40}),
            one("5", {200, 50, 40, 40}),
            row("a", 0),
            row("b", 45),
            row("c", 90)};
}

std::string at(std::optional<std::size_t> place) {
    return place ? page()[*place].name : std::string("none");
}

std::size_t place(const std::string& name) {
    const std::vector<Focusable> all = page();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].name == name) {
            return i;
        }
    }
    FAIL("no such target");
    return 0;
}

}  // namespace

TEST_CASE("Tab goes as one reads, a list as a whole, and from the last to the first") {
    std::string order;
    for (const std::size_t i : reading_order(page())) {
        order += page()[i].name + " ";
    }
    CHECK(order == "a b c 7 8 4 5 leave keep ");
    CHECK(at(after(page(), std::nullopt, Key::tab)) == "a");
    CHECK(at(after(page(), std::nullopt, Key::back_tab)) == "keep");
    CHECK(at(after(page(), place("c"), Key::tab)) == "7");
    CHECK(at(after(page(), place("keep"), Key::tab)) == "a");
    CHECK(at(after(page(), place("a"), Key::back_tab)) == "keep");
    CHECK_FALSE(after({}, std::nullopt, Key::tab).has_value());
}

TEST_CASE("Arrows go to the nearest that way, in a list to its next row though it does not show") {
    const auto from = [](const char* name, Key way) {
        return at(beside(page(), place(name), way));
    };
    CHECK(from("7", Key::right) == "8");
    CHECK(from("8", Key::left) == "7");
    CHECK(from("7", Key::down) == "4");
    CHECK(from("5", Key::down) == "keep");
    CHECK(from("keep", Key::up) == "4");
    CHECK(from("b", Key::down) == "c");
    CHECK(from("c", Key::down) == "leave");
    CHECK(from("a", Key::right) == "7");
    CHECK(from("leave", Key::up) == "b");
    CHECK(from("a", Key::up) == "none");
    CHECK(from("keep", Key::right) == "none");
}

TEST_CASE("Escape presses the first target that is said to go back, or none") {
    const auto pressed_by_escape = [](std::initializer_list<std::string_view> names) {
        Keyboard keyboard;
        keyboard.type("\x1b");
        keyboard.begin_frame();
        for (const std::string_view name : names) {
            keyboard.goes_back(name);
        }
        keyboard.end_frame(0);
        keyboard.begin_frame();
        return std::string(keyboard.presses("leave")   ? "leave"
                           : keyboard.presses("later") ? "later"
                                                       : "none");
    };
    CHECK(pressed_by_escape({"leave", "later"}) == "leave");
    CHECK(pressed_by_escape({"later"}) == "later");
    CHECK(pressed_by_escape({}) == "none");
}
