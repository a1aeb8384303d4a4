#include "field/shell/sdl_events.h"

#include <SDL.h>

#include <optional>

#include "field/touch/keys.h"

namespace hemline {

namespace {

constexpr std::int64_t mouse_finger = -1;  // SDL numbers it 0, as it may number a real finger

Heard touch(const SDL_TouchFingerEvent& at, TouchKind kind, float w, float h, TouchQueue& queue) {
    const std::int64_t finger = at.touchId == SDL_MOUSE_TOUCHID ? mouse_finger : at.fingerId;
    queue.push({kind, finger, at.x * w, at.y * h, 0, at.timestamp / 1000.0});
    return Heard::something;
}

Heard wheel(const SDL_MouseWheelEvent& event, float w, float h, TouchQueue& queue) {
    int window_w = 0;
    int window_h = 0;
    if (SDL_Window* const window = SDL_GetWindowFromID(event.windowID); window != nullptr) {
        SDL_GetWindowSize(window, &window_w, &window_h);
    }
    const float x = static_cast<float>(event.mouseX);
    const float y = static_cast<float>(event.mouseY);
    const bool known = window_w > 0 && window_h > 0;
    const float away = event.direction == SDL_MOUSEWHEEL_FLIPPED ? -1.0F : 1.0F;
    queue.push({TouchKind::wheel, mouse_finger, known ? x * w / static_cast<float>(window_w) : x,
                known ? y * h / static_cast<float>(window_h) : y, away * event.preciseY});
    return Heard::something;
}

/// With Ctrl held down; nothing: the key is a letter, and comes as text.
std::optional<Key> command(SDL_Keycode key) {
    switch (key) {
        case SDLK_z:
            return Key::undo;
        case SDLK_c:
            return Key::copy;
        case SDLK_DOWN:
            return Key::next_edge;
        case SDLK_UP:
            return Key::previous_edge;
        default:
            return std::nullopt;
    }
}

std::optional<Key> single(SDL_Keycode key, bool shift) {
    switch (key) {
        case SDLK_RETURN:
        case SDLK_KP_ENTER:
            return Key::enter;
        case SDLK_ESCAPE:
        case SDLK_AC_BACK:
            return Key::escape;
        case SDLK_TAB:
            return shift ? Key::back_tab : Key::tab;
        case SDLK_DOWN:
            return Key::down;
        case SDLK_UP:
            return Key::up;
        case SDLK_LEFT:
            return Key::left;
        case SDLK_RIGHT:
            return Key::right;
        case SDLK_PAGEDOWN:
            return Key::page_down;
        case SDLK_PAGEUP:
            return Key::page_up;
        case SDLK_F1:
            return Key::keys;
        default:
            return std::nullopt;
    }
}

/// Enter that is held down acts once.
Heard key(const SDL_KeyboardEvent& event, std::string& typed) {
    const auto sym = event.keysym.sym;
    if (sym == SDLK_BACKSPACE) {
        typed += '\b';
        return Heard::something;
    }
    const bool ctrl = (event.keysym.mod & KMOD_CTRL) != 0;
    const std::optional<Key> one =
        ctrl ? command(sym) : single(sym, (event.keysym.mod & KMOD_SHIFT) != 0);
    if (!one || (one == Key::enter && event.repeat != 0)) {
        return Heard::nothing;
    }
    typed += static_cast<char>(*one);
    return Heard::something;
}

Heard window(const SDL_WindowEvent& event, TouchQueue& queue) {
    switch (event.event) {
        case SDL_WINDOWEVENT_SIZE_CHANGED:
        case SDL_WINDOWEVENT_DISPLAY_CHANGED:
            queue.cancel();
            return Heard::resized;
        case SDL_WINDOWEVENT_FOCUS_LOST:
        case SDL_WINDOWEVENT_MINIMIZED:
            queue.cancel();
            return Heard::something;
        case SDL_WINDOWEVENT_EXPOSED:
        case SDL_WINDOWEVENT_SHOWN:
        case SDL_WINDOWEVENT_RESTORED:
            return Heard::something;
        default:
            return Heard::nothing;
    }
}

}  // namespace

Heard hear(const SDL_Event& event, float w, float h, TouchQueue& queue, std::string& typed) {
    switch (event.type) {
        case SDL_QUIT:
            return Heard::quit;
        case SDL_FINGERDOWN:
            return touch(event.tfinger, TouchKind::down, w, h, queue);
        case SDL_FINGERMOTION:
            return touch(event.tfinger, TouchKind::move, w, h, queue);
        case SDL_FINGERUP:
            return touch(event.tfinger, TouchKind::up, w, h, queue);
        case SDL_MOUSEWHEEL:
            return wheel(event.wheel, w, h, queue);
        case SDL_TEXTINPUT:
            typed += event.text.text;
            return Heard::something;
        case SDL_KEYDOWN:
            return key(event.key, typed);
        case SDL_WINDOWEVENT:
            return window(event.window, queue);
        case SDL_USEREVENT:
            return Heard::something;
        default:
            return Heard::nothing;
    }
}

bool is_paste(const SDL_Event& event) {
    return event.type == SDL_KEYDOWN && event.key.keysym.sym == SDLK_v &&
           (event.key.keysym.mod & KMOD_CTRL) != 0;
}

}  // namespace hemline
