#include "field/touch/touch_queue.h"

#include <doctest/doctest.h>
#include <imgui.h>
#include <rapidcheck.h>

#include <vector>

#include "tests/field/harness.h"

using namespace hemline;

namespace {

/// Two boxes side by side, and what was tapped in which order.
struct TwoBoxes {
    std::vector<char> tapped;
    Harness harness{[this](Ui& ui) {
        for (const char name : {'a', 'b'}) {
            if (ui.area(std::string(1, name), box(ui, name))) {
                tapped.push_back(name);
            }
        }
    }};
    static Box box(const Ui& ui, char name) {
        return {ui.mm(name == 'a' ? 10 : 60), ui.mm(10), ui.mm(40), ui.mm(40)};
    }
    Touch at(TouchKind kind, char name, std::int64_t finger = 0) {
        const Box place = box(harness.ui(), name);
        return {kind, finger, place.mid_x(), place.mid_y()};
    }
};

}  // namespace

TEST_CASE("A tap that is shorter than a frame counts") {
    TwoBoxes boxes;
    boxes.harness.push(boxes.at(TouchKind::down, 'a'));
    boxes.harness.touch(boxes.at(TouchKind::up, 'a'));
    CHECK(boxes.tapped == std::vector<char>{'a'});
}

TEST_CASE("Taps that all came before one frame are each seen, in their order") {
    CHECK(rc::check([] {
        const auto wanted = *rc::gen::container<std::vector<char>>(rc::gen::element('a', 'b'));
        TwoBoxes boxes;
        for (const char name : wanted) {
            boxes.harness.push(boxes.at(TouchKind::down, name));
            boxes.harness.push(boxes.at(TouchKind::up, name));
        }
        bool down = false;
        std::size_t edges = 0;
        while (boxes.harness.queue().pending()) {
            boxes.harness.frames();
            edges += ImGui::GetIO().MouseDown[0] != down ? 1 : 0;
            down = ImGui::GetIO().MouseDown[0];
        }
        RC_ASSERT(edges == 2 * wanted.size());
        RC_ASSERT(boxes.tapped == wanted);
    }));
}

TEST_CASE("No sequence of touches, however broken, presses where none began, or hangs") {
    CHECK(rc::check([] {
        TwoBoxes boxes;
        const auto count = *rc::gen::inRange(0, 40);
        bool began_in_b = false;
        for (int i = 0; i < count; ++i) {
            const auto kind = *rc::gen::element(TouchKind::down, TouchKind::move, TouchKind::up,
                                                TouchKind::cancel);
            const char place = *rc::gen::element('a', 'b');
            began_in_b = began_in_b || (kind == TouchKind::down && place == 'b');
            boxes.harness.push(boxes.at(kind, place, *rc::gen::inRange(0, 3)));
            if (*rc::gen::arbitrary<bool>()) {
                boxes.harness.frames();
            }
        }
        int frames = 0;
        while (boxes.harness.queue().pending()) {
            boxes.harness.frames();
            RC_ASSERT(++frames < 400);
        }
        for (const char name : boxes.tapped) {
            RC_ASSERT(name == 'a' || began_in_b);
        }
    }));
}

TEST_CASE("While a finger rests no frame is asked for") {
    TwoBoxes boxes;
    boxes.harness.touch(boxes.at(TouchKind::down, 'a'));
    CHECK_FALSE(boxes.harness.queue().pending());
    CHECK(ImGui::GetIO().MouseDown[0]);
    boxes.harness.touch(boxes.at(TouchKind::up, 'a'));
    CHECK_FALSE(boxes.harness.queue().pending());
}

TEST_CASE("What is touched looks pressed in the frame of the touch") {
    bool seen = false;
    Harness harness([&](Ui& ui) {
        ui.area("a", TwoBoxes::box(ui, 'a'));
        seen = ui.pressed("a");
    });
    harness.press("a");
    CHECK(seen);
    harness.lift();
    CHECK_FALSE(seen);
}

TEST_CASE("A second finger presses nothing and does not disturb the first") {
    TwoBoxes boxes;
    boxes.harness.touch(boxes.at(TouchKind::down, 'a', 1));
    boxes.harness.touch(boxes.at(TouchKind::down, 'b', 2));
    boxes.harness.touch(boxes.at(TouchKind::up, 'b', 2));
    CHECK(boxes.tapped.empty());
    boxes.harness.touch(boxes.at(TouchKind::up, 'a', 1));
    CHECK(boxes.tapped == std::vector<char>{'a'});
}

TEST_CASE("A touch that the system takes back presses nothing") {
    TwoBoxes boxes;
    boxes.harness.touch(boxes.at(TouchKind::down, 'a'));
    boxes.harness.touch(boxes.at(TouchKind::cancel, 'a'));
    CHECK(boxes.tapped.empty());
    CHECK_FALSE(ImGui::GetIO().MouseDown[0]);
    boxes.harness.touch(boxes.at(TouchKind::down, 'b'));
    boxes.harness.queue().cancel();
    boxes.harness.frames(3);
    CHECK(boxes.tapped.empty());
    boxes.harness.tap("b");
    CHECK(boxes.tapped == std::vector<char>{'b'});
}

TEST_CASE("A finger whose lift was lost can tap again, and the lost touch presses nothing") {
    TwoBoxes boxes;
    boxes.harness.touch(boxes.at(TouchKind::down, 'a'));
    boxes.harness.touch(boxes.at(TouchKind::down, 'b'));
    boxes.harness.touch(boxes.at(TouchKind::up, 'b'));
    CHECK(boxes.tapped == std::vector<char>{'b'});
}

TEST_CASE("After the lift nothing is hovered") {
    TwoBoxes boxes;
    boxes.harness.touch(boxes.at(TouchKind::down, 'a'));
    CHECK(ImGui::IsMousePosValid());
    boxes.harness.touch(boxes.at(TouchKind::up, 'a'));
    CHECK_FALSE(ImGui::IsMousePosValid());
    boxes.harness.frames();  // Dear ImGui remembers the hover of the frame before
    CHECK_FALSE(ImGui::IsAnyItemHovered());
}

TEST_CASE("A finger that slips 5 mm still taps, one that moves 7 mm and comes back does not") {
    for (const float moved : {5.0F, 7.0F}) {
        TwoBoxes boxes;
        const Touch down = boxes.at(TouchKind::down, 'a');
        Touch move = boxes.at(TouchKind::move, 'a');
        move.x += boxes.harness.ui().mm(moved);
        boxes.harness.push(down);
        boxes.harness.push(move);
        boxes.harness.push({TouchKind::move, 0, down.x, down.y});
        boxes.harness.touch({TouchKind::up, 0, down.x, down.y});
        CHECK(boxes.tapped.size() == (moved < 6 ? 1 : 0));
    }
}

TEST_CASE("A lift far from the touch is a drag, though no move was reported") {
    TwoBoxes boxes;
    Touch up = boxes.at(TouchKind::up, 'a');
    up.y += boxes.harness.ui().mm(8);
    boxes.harness.push(boxes.at(TouchKind::down, 'a'));
    boxes.harness.touch(up);
    CHECK(boxes.tapped.empty());
}

TEST_CASE("A palm that rests does not deaden other fingers, and presses nothing itself") {
    TwoBoxes boxes;
    Touch palm = boxes.at(TouchKind::down, 'a', 1);
    palm.when = 10;
    boxes.harness.touch(palm);
    Touch finger = boxes.at(TouchKind::down, 'b', 2);
    finger.when = 10.2;  // two thumbs in a hurry: the first is followed
    boxes.harness.touch(finger);
    boxes.harness.touch(boxes.at(TouchKind::up, 'b', 2));
    CHECK(boxes.tapped.empty());
    finger.when = 11;
    boxes.harness.touch(finger);
    boxes.harness.touch(boxes.at(TouchKind::up, 'b', 2));
    CHECK(boxes.tapped == std::vector<char>{'b'});
    boxes.harness.touch(boxes.at(TouchKind::up, 'a', 1));
    CHECK(boxes.tapped == std::vector<char>{'b'});
}
