#include "field/shell/glfw_events.h"

#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_internal.h>

#include <array>
#include <optional>

#include "field/touch/keys.h"

namespace hemline {

namespace {

std::optional<Key> single_key(int key, bool shift) {
    switch (key) {
        case GLFW_KEY_ENTER:
        case GLFW_KEY_KP_ENTER:
            return Key::enter;
        case GLFW_KEY_ESCAPE:
            return Key::escape;
        case GLFW_KEY_TAB:
            return shift ? Key::back_tab : Key::tab;
        case GLFW_KEY_DOWN:
            return Key::down;
        case GLFW_KEY_UP:
            return Key::up;
        case GLFW_KEY_LEFT:
            return Key::left;
        case GLFW_KEY_RIGHT:
            return Key::right;
        case GLFW_KEY_PAGE_DOWN:
            return Key::page_down;
        case GLFW_KEY_PAGE_UP:
            return Key::page_up;
        case GLFW_KEY_F1:
            return Key::keys;
        default:
            return std::nullopt;
    }
}

/// With Ctrl held down.
std::optional<Key> command_key(int key) {
    if (key == GLFW_KEY_DOWN) {
        return Key::next_edge;
    }
    if (key == GLFW_KEY_UP) {
        return Key::previous_edge;
    }
    if (types_letter(key, 'c')) {
        return Key::copy;
    }
    return types_letter(key, 'z') ? std::optional(Key::undo) : std::nullopt;
}

}  // namespace

bool types_letter(int key, char letter) {
    const char* const name = glfwGetKeyName(key, 0);
    return name != nullptr ? std::string(name) == std::string(1, letter)
                           : key == GLFW_KEY_A + (letter - 'a');
}

std::string typed_by(int key, int mods) {
    if (key == GLFW_KEY_BACKSPACE) {
        return "\b";
    }
    const std::optional<Key> one = (mods & GLFW_MOD_CONTROL) != 0
                                       ? command_key(key)
                                       : single_key(key, (mods & GLFW_MOD_SHIFT) != 0);
    return one ? std::string{static_cast<char>(*one)} : std::string{};
}

std::string text_of(unsigned int code_point) {
    std::array<char, 5> bytes{};
    ImTextCharToUtf8(bytes.data(), code_point);
    return bytes.data();
}

void MouseFinger::move(double x, double y, float density) {
    x_ = static_cast<float>(x) * density;
    y_ = static_cast<float>(y) * density;
    if (down_) {
        queue_.push({TouchKind::move, 0, x_, y_});
    }
}

void MouseFinger::press(bool down) {
    down_ = down;
    queue_.push({down ? TouchKind::down : TouchKind::up, 0, x_, y_});
}

void MouseFinger::turn(double notches) {
    queue_.push({TouchKind::wheel, 0, x_, y_, static_cast<float>(notches)});
}

}  // namespace hemline
