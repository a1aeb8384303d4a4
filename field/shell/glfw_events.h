// GLFW's events in our words: a mouse that is a finger, and keys that type.
#pragma once

#include <string>

#include "field/touch/touch_queue.h"

namespace hemline {

/// What a key types: Enter "\n", Backspace "\b", Escape "\x1b", those of keys.h; empty for letters
/// and figures, which come as text. `key` and `mods` are GLFW's.
std::string typed_by(int key, int mods);

/// A code point as UTF-8; empty for what is none.
std::string text_of(unsigned int code_point);

/// One mouse as a finger of a drawable: places come in window pixels, `density` drawable ones each.
class MouseFinger {
  public:
    explicit MouseFinger(TouchQueue& queue) : queue_(queue) {}
    void move(double x, double y, float density);
    void press(bool down);
    void turn(double notches);
    /// True when a move matters: nothing is drawn for a pointer that only hovers.
    [[nodiscard]] bool is_down() const { return down_; }

  private:
    TouchQueue& queue_;
    float x_ = 0, y_ = 0;
    bool down_ = false;
};

}  // namespace hemline
