// Turns GLFW's events into ours: a mouse acts as a finger, and keys type.
#pragma once

#include <string>

#include "field/touch/touch_queue.h"

namespace hemline {

/// What a key types: Enter "\n", Backspace "\b", Escape "\x1b", those of keys.h; empty for letters
/// and figures, which come as text. `key` and `mods` are GLFW's.
std::string typed_by(int key, int mods);
/// Whether the key types that letter on this keyboard: GLFW's key numbers are places, not letters.
bool types_letter(int key, char letter);

/// A code point as UTF-8; empty if it is not a valid one.
std::string text_of(unsigned int code_point);

/// A mouse as a finger on a drawable: places come in window pixels, each `density` drawable pixels.
class MouseFinger {
  public:
    explicit MouseFinger(TouchQueue& queue) : queue_(queue) {}
    void move(double x, double y, float density);
    void press(bool down);
    void turn(double notches);
    /// True when a move matters: a pointer that only hovers causes no drawing.
    [[nodiscard]] bool is_down() const { return down_; }

  private:
    TouchQueue& queue_;
    float x_ = 0, y_ = 0;
    bool down_ = false;
};

}  // namespace hemline
