#include "field/touch/touch_queue.h"

#include <imgui.h>

#include <cfloat>
#include <cmath>

namespace hemline {

namespace {

constexpr double speed_memory = 0.05;  // s over which a finger's speed is averaged
constexpr double fling_decay = 0.35;   // s in which a fling falls to 37 %
constexpr float slops_a_notch = 2;
constexpr double palm = 0.5;      // s
constexpr float fling_least = 3;  // slops a second: below it a list stands still

void write(float x, float y, bool down) {
    ImGuiIO& io = ImGui::GetIO();
    io.MousePos = ImVec2(x, y);
    io.MouseDown[0] = down;
}

}  // namespace

void TouchQueue::push(Touch touch) {
    if (touch.kind == TouchKind::wheel) {
        if (!finger_) {  // a finger already on the glass goes first
            queue_.push_back(touch);
        }
        return;
    }
    if (touch.kind == TouchKind::down) {
        const bool rests = phase_ == Phase::held && !dragging_ && touch.when - down_when_ > palm;
        if (finger_ && *finger_ != touch.finger && !rests) {
            return;
        }
        if (finger_) {  // its lift was lost, or it is a palm
            queue_.push_back({TouchKind::cancel, *finger_, touch.x, touch.y});
        }
        finger_ = touch.finger;
        down_when_ = touch.when;
    } else if (finger_ != touch.finger) {
        return;
    }
    if (touch.kind == TouchKind::up || touch.kind == TouchKind::cancel) {
        finger_.reset();
    }
    queue_.push_back(touch);
}

void TouchQueue::cancel() {
    if (finger_) {
        push({TouchKind::cancel, *finger_, x_, y_});
    }
}

void TouchQueue::next_frame(double dt) {
    scroll_ = aside_ = 0;
    switch (phase_) {
        case Phase::idle_done:
            rest(dt);
            break;
        case Phase::hover:
            phase_ = Phase::held;
            write(x_, y_, true);
            break;
        case Phase::held:
            hold(dt);
            break;
        case Phase::lifting:
            phase_ = Phase::idle_done;
            dragging_ = false;
            write(-FLT_MAX, -FLT_MAX, false);
            break;
    }
}

void TouchQueue::rest(double dt) {
    if (!queue_.empty()) {
        const Touch down = queue_.front();  // push() lets nothing else but a wheel stand here
        queue_.pop_front();
        if (down.kind == TouchKind::wheel) {
            turn(down);
            return;
        }
        x_ = down_x_ = down.x;
        y_ = down_y_ = down.y;
        dragging_ = fling_ != 0;  // a touch that stops a fling presses nothing
        fling_ = speed_ = 0;
        phase_ = Phase::hover;
        write(x_, y_, false);
        return;
    }
    write(-FLT_MAX, -FLT_MAX, false);
    scroll_ = fling_ * static_cast<float>(dt);
    fling_ *= static_cast<float>(std::exp(-dt / fling_decay));
    if (std::abs(fling_) < fling_least * slop_px_) {
        fling_ = 0;
    }
}

void TouchQueue::turn(const Touch& wheel) {
    down_x_ = wheel.x;
    down_y_ = wheel.y;
    fling_ = speed_ = 0;
    scroll_ = wheel.notches * slops_a_notch * slop_px_;
    write(-FLT_MAX, -FLT_MAX, false);
}

void TouchQueue::hold(double dt) {
    while (!queue_.empty() && queue_.front().kind == TouchKind::move) {
        move_to(queue_.front());
        queue_.pop_front();
    }
    if (!queue_.empty() && queue_.front().kind == TouchKind::up) {
        move_to(queue_.front());
    }
    const double weight = dt > 0 ? 1 - std::exp(-dt / speed_memory) : 0;
    if (dt > 0) {
        speed_ += static_cast<float>((scroll_ / dt - speed_) * weight);
    }
    write(x_, y_, true);
    if (queue_.empty()) {
        return;
    }
    const TouchKind end = queue_.front().kind;
    queue_.pop_front();
    phase_ = Phase::lifting;
    if (end == TouchKind::up) {
        fling_ = dragging_ && std::abs(speed_) > 2 * fling_least * slop_px_ ? speed_ : 0;
        write(x_, y_, false);
    } else {
        write(-FLT_MAX, -FLT_MAX, true);  // off first, let go afterwards: nothing is pressed
    }
}

void TouchQueue::move_to(const Touch& touch) {
    if (!dragging_ && std::hypot(touch.x - down_x_, touch.y - down_y_) > slop_px_) {
        dragging_ = true;
        x_ = down_x_;
        y_ = down_y_;  // the list moves from where the finger first touched
    }
    if (dragging_) {
        scroll_ += touch.y - y_;
        aside_ += touch.x - x_;
    }
    x_ = touch.x;
    y_ = touch.y;
}

}  // namespace hemline
