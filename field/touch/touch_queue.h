// Takes touches and gives Dear ImGui one press or release per frame: version 1.86 has no input
// queue.
//
//   down ─▶ hover frame ─▶ held ─▶ (moved past the slop: drag, fling) ─▶ lift ─▶ idle (pointer
//   nowhere)
#pragma once

#include <cstdint>
#include <deque>
#include <optional>

namespace hemline {

enum class TouchKind { down, move, up, cancel, wheel };

struct Touch {
    TouchKind kind = TouchKind::down;
    std::int64_t finger = 0;
    float x = 0, y = 0;  ///< window pixels
    float notches = 0;   ///< of a mouse wheel, up is positive
    double when = 0;     ///< seconds on any clock that goes on
};

/// Feeds ImGuiIO one step per frame. The first finger down is followed and others are ignored,
/// unless the first has rested in place for half a second: that is a palm, and presses nothing.
class TouchQueue {
  public:
    explicit TouchQueue(float slop_px) : slop_px_(slop_px) {}
    void push(Touch touch);
    /// Cancels the touch under way, if any, because the window lost it; nothing is pressed.
    void cancel();
    /// Goes on to the next phase and writes MousePos and MouseDown. `dt`: seconds since the last
    /// frame.
    void next_frame(double dt);
    /// More logic frames are needed before the next is presented.
    [[nodiscard]] bool pending() const {
        return !queue_.empty() || (phase_ != Phase::idle_done && phase_ != Phase::held);
    }
    /// A drag is under way, so nothing is pressed. Also true for a touch that stopped a fling.
    [[nodiscard]] bool dragging() const { return dragging_; }
    /// Pixels that the list under the drag moves down in this frame (drag or decaying fling).
    [[nodiscard]] float scroll() const { return scroll_; }
    /// The same sideways, for the drag only.
    [[nodiscard]] float aside() const { return aside_; }
    /// Where the drag began: the list under that point scrolls.
    [[nodiscard]] float origin_x() const { return down_x_; }
    [[nodiscard]] float origin_y() const { return down_y_; }
    /// A fling is still moving: frames are wanted.
    [[nodiscard]] bool flinging() const { return fling_ != 0; }
    void set_slop(float slop_px) { slop_px_ = slop_px; }

  private:
    enum class Phase { idle_done, hover, held, lifting };
    void rest(double dt);
    void turn(const Touch& wheel);
    void hold(double dt);
    void move_to(const Touch& touch);

    std::deque<Touch> queue_;
    std::optional<std::int64_t> finger_;
    Phase phase_ = Phase::idle_done;
    bool dragging_ = false;
    float slop_px_;
    double down_when_ = 0;
    float x_ = 0, y_ = 0, down_x_ = 0, down_y_ = 0;
    float scroll_ = 0, aside_ = 0, speed_ = 0, fling_ = 0;  // pixels; pixels a second
};

}  // namespace hemline
