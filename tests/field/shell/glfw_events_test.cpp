// GLFW's events turned into ours. Keys are GLFW's numbers.
#include "field/shell/glfw_events.h"

#include <GLFW/glfw3.h>
#include <doctest/doctest.h>
#include <imgui.h>

#include "field/touch/keys.h"
#include "tests/field/harness.h"

using namespace hemline;

TEST_CASE("A desk's keys type what a tablet's do, and letters come as text") {
    CHECK(typed_by(GLFW_KEY_ENTER, 0) == "\n");
    CHECK(typed_by(GLFW_KEY_KP_ENTER, 0) == "\n");
    CHECK(typed_by(GLFW_KEY_BACKSPACE, 0) == "\b");
    CHECK(typed_by(GLFW_KEY_ESCAPE, 0) == "\x1b");
    CHECK(typed_by(GLFW_KEY_7, 0).empty());
    CHECK(typed_by(GLFW_KEY_Z, 0).empty());
    CHECK(typed_by(GLFW_KEY_Z, GLFW_MOD_CONTROL)[0] == static_cast<char>(Key::undo));
    const auto types = [](int key, int mods, Key one) {
        return typed_by(key, mods) == std::string(1, static_cast<char>(one));
    };
    CHECK(types(GLFW_KEY_DOWN, GLFW_MOD_CONTROL, Key::next_edge));
    CHECK(types(GLFW_KEY_UP, GLFW_MOD_CONTROL, Key::previous_edge));
    CHECK(types(GLFW_KEY_C, GLFW_MOD_CONTROL, Key::copy));
    CHECK(types(GLFW_KEY_RIGHT, 0, Key::right));
    CHECK(types(GLFW_KEY_UP, 0, Key::up));
    CHECK(types(GLFW_KEY_TAB, 0, Key::tab));
    CHECK(types(GLFW_KEY_TAB, GLFW_MOD_SHIFT, Key::back_tab));
    CHECK(types(GLFW_KEY_F1, 0, Key::keys));
}

TEST_CASE("A code point is written as UTF-8") {
    CHECK(text_of('7') == "7");
    CHECK(text_of(0xF1) == "\xC3\xB1");  // ñ, RFC 3629
}

TEST_CASE("A mouse is one finger, placed in drawable pixels, and only a pressed one moves") {
    Harness harness([](Ui&) {});
    MouseFinger mouse(harness.queue());
    mouse.move(160, 100, 2);
    CHECK_FALSE(harness.queue().pending());
    mouse.press(true);
    harness.frames(4);
    CHECK(ImGui::GetIO().MousePos.x == 320);
    CHECK(ImGui::GetIO().MousePos.y == 200);
    CHECK(ImGui::GetIO().MouseDown[0]);
    mouse.press(false);
    harness.frames(3);
    CHECK_FALSE(ImGui::GetIO().MouseDown[0]);
}

TEST_CASE("A wheel turns the list under the pointer") {
    Harness harness([](Ui&) {});
    MouseFinger mouse(harness.queue());
    mouse.move(70, 80, 1);
    mouse.turn(1);
    harness.queue().next_frame(0.016);
    CHECK(harness.queue().origin_x() == 70);
    CHECK(harness.queue().scroll() > 0);
}
