#include "field/shell/sdl_events.h"

#include <SDL.h>

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

Heard key(const SDL_KeyboardEvent& event, std::string& typed) {
    switch (event.keysym.sym) {
        case SDLK_RETURN:
        case SDLK_KP_ENTER:
            typed += '\n';
            return Heard::something;
        case SDLK_BACKSPACE:
            typed += '\b';
            return Heard::something;
        case SDLK_ESCAPE:
        case SDLK_AC_BACK:
            typed += '\x1b';
            return Heard::something;
        case SDLK_DOWN:
        case SDLK_RIGHT:
            typed += static_cast<char>(Key::next_edge);
            return Heard::something;
        case SDLK_UP:
        case SDLK_LEFT:
            typed += static_cast<char>(Key::previous_edge);
            return Heard::something;
        case SDLK_z:
            if ((event.keysym.mod & KMOD_CTRL) == 0) {
                return Heard::nothing;  // a letter, and comes as text
            }
            typed += static_cast<char>(Key::undo);
            return Heard::something;
        default:
            return Heard::nothing;
    }
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

}  // namespace hemline
