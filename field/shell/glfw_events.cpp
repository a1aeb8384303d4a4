#include "field/shell/glfw_events.h"

#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_internal.h>

#include <array>

#include "field/touch/keys.h"

namespace hemline {

std::string typed_by(int key, int mods) {
    switch (key) {
        case GLFW_KEY_ENTER:
        case GLFW_KEY_KP_ENTER:
            return "\n";
        case GLFW_KEY_BACKSPACE:
            return "\b";
        case GLFW_KEY_ESCAPE:
            return "\x1b";
        case GLFW_KEY_DOWN:
        case GLFW_KEY_RIGHT:
            return {static_cast<char>(Key::next_edge)};
        case GLFW_KEY_UP:
        case GLFW_KEY_LEFT:
            return {static_cast<char>(Key::previous_edge)};
        default:
            break;
    }
    // The key that says Z here, wherever it lies: GLFW's key numbers are places, not letters.
    const char* const name = glfwGetKeyName(key, 0);
    const bool z = name != nullptr ? std::string(name) == "z" : key == GLFW_KEY_Z;
    return z && (mods & GLFW_MOD_CONTROL) != 0 ? std::string{static_cast<char>(Key::undo)}
                                               : std::string{};
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
