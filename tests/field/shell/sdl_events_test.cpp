#include "field/shell/sdl_events.h"

#include <SDL.h>
#include <doctest/doctest.h>
#include <imgui.h>

#include <cstring>

#include "tests/field/harness.h"

using namespace hemline;

namespace {

SDL_Event finger(std::uint32_t type, SDL_TouchID touch, SDL_FingerID finger, float x, float y) {
    SDL_Event event{};
    event.type = type;
    event.tfinger.touchId = touch;
    event.tfinger.fingerId = finger;
    event.tfinger.x = x;
    event.tfinger.y = y;
    return event;
}

SDL_Event key(SDL_Keycode code) {
    SDL_Event event{};
    event.type = SDL_KEYDOWN;
    event.key.keysym.sym = code;
    return event;
}

}  // namespace

TEST_CASE("A finger's place comes as a part of the window and becomes pixels of it") {
    Harness harness([](Ui&) {});
    std::string typed;
    CHECK(hear(finger(SDL_FINGERDOWN, 5, 9, 0.25F, 0.5F), 1280, 800, harness.queue(), typed) ==
          Heard::something);
    harness.frames();
    CHECK(ImGui::GetIO().MousePos.x == 320);
    CHECK(ImGui::GetIO().MousePos.y == 400);
}

TEST_CASE("A mouse is a finger of its own, and a real one with its number is another") {
    Harness harness([](Ui&) {});
    std::string typed;
    hear(finger(SDL_FINGERDOWN, SDL_MOUSE_TOUCHID, 0, 0.5F, 0.5F), 100, 100, harness.queue(),
         typed);
    hear(finger(SDL_FINGERUP, 5, 0, 0.5F, 0.5F), 100, 100, harness.queue(), typed);
    harness.frames(4);
    CHECK(ImGui::GetIO().MouseDown[0]);
    hear(finger(SDL_FINGERUP, SDL_MOUSE_TOUCHID, 0, 0.5F, 0.5F), 100, 100, harness.queue(), typed);
    harness.frames(2);
    CHECK_FALSE(ImGui::GetIO().MouseDown[0]);
}

TEST_CASE("A wheel turns at the pointer, and a flipped one the other way") {
    TouchQueue queue(6);
    std::string typed;
    Harness harness([](Ui&) {});
    for (const auto& [direction, way] :
         {std::pair(SDL_MOUSEWHEEL_NORMAL, 1.0F), std::pair(SDL_MOUSEWHEEL_FLIPPED, -1.0F)}) {
        SDL_Event event{};
        event.type = SDL_MOUSEWHEEL;
        event.wheel.direction = direction;
        event.wheel.preciseY = 1.5F;
        event.wheel.mouseX = 70;
        event.wheel.mouseY = 80;
        CHECK(hear(event, 100, 100, queue, typed) == Heard::something);
        queue.next_frame(0.016);
        CHECK(queue.origin_x() == 70);
        CHECK(queue.origin_y() == 80);
        CHECK(queue.scroll() == doctest::Approx(way * 1.5F * 2 * 6));
    }
}

TEST_CASE("A laser's text, Return, Backspace and Escape are typed") {
    TouchQueue queue(1);
    std::string typed;
    SDL_Event text{};
    text.type = SDL_TEXTINPUT;
    std::strcpy(text.text.text, "9.65 m");
    CHECK(hear(text, 1, 1, queue, typed) == Heard::something);
    CHECK(hear(key(SDLK_RETURN), 1, 1, queue, typed) == Heard::something);
    CHECK(hear(key(SDLK_KP_ENTER), 1, 1, queue, typed) == Heard::something);
    CHECK(hear(key(SDLK_BACKSPACE), 1, 1, queue, typed) == Heard::something);
    CHECK(hear(key(SDLK_ESCAPE), 1, 1, queue, typed) == Heard::something);
    CHECK(hear(key(SDLK_AC_BACK), 1, 1, queue, typed) == Heard::something);
    CHECK(typed == "9.65 m\n\n\b\x1b\x1b");
}

TEST_CASE("What changes nothing on the screen asks for no frame") {
    TouchQueue queue(1);
    std::string typed;
    SDL_Event event{};
    for (const std::uint32_t type :
         {SDL_MOUSEMOTION, SDL_MOUSEBUTTONDOWN, SDL_KEYUP, SDL_CLIPBOARDUPDATE}) {
        event.type = type;
        CHECK(hear(event, 1, 1, queue, typed) == Heard::nothing);
    }
    CHECK(hear(key(SDLK_a), 1, 1, queue, typed) == Heard::nothing);
    event.type = SDL_WINDOWEVENT;
    event.window.event = SDL_WINDOWEVENT_MOVED;
    CHECK(hear(event, 1, 1, queue, typed) == Heard::nothing);
    event.window.event = SDL_WINDOWEVENT_EXPOSED;
    CHECK(hear(event, 1, 1, queue, typed) == Heard::something);
    event.window.event = SDL_WINDOWEVENT_SIZE_CHANGED;
    CHECK(hear(event, 1, 1, queue, typed) == Heard::resized);
    event.type = SDL_QUIT;
    CHECK(hear(event, 1, 1, queue, typed) == Heard::quit);
    CHECK(typed.empty());
}

TEST_CASE("A window that loses the hand's attention presses nothing") {
    int tapped = 0;
    Harness harness([&](Ui& ui) { tapped += ui.area("a", {10, 10, 100, 100}) ? 1 : 0; });
    std::string typed;
    harness.press("a");
    SDL_Event event{};
    event.type = SDL_WINDOWEVENT;
    event.window.event = SDL_WINDOWEVENT_FOCUS_LOST;
    hear(event, 1280, 800, harness.queue(), typed);
    harness.lift();
    CHECK(tapped == 0);
    CHECK_FALSE(ImGui::GetIO().MouseDown[0]);
}
