// A screen without a window: real letters, real touches through the queue, and no pixels.
//
//   Harness harness([&](Ui& ui) { app.draw(ui); });
//   harness.tap("keep");                // a down and an up before the next frame, then a pause
//   CHECK(harness.has_target("again"));
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "field/touch/ui.h"

struct ImGuiContext;

namespace hemline {

class Harness {
  public:
    using Draw = std::function<void(Ui&)>;
    /// Draws a frame. Size in window pixels.
    explicit Harness(Draw draw, float w = 1280, float h = 800, float px_per_mm = px_per_mm_unknown);
    ~Harness();
    Harness(const Harness&) = delete;
    Harness& operator=(const Harness&) = delete;

    /// Touches the middle of a target and lets go before a frame is drawn, then waits 0.25 s as a
    /// hand does, and as long as a warning is to be read. Fails the test, naming the targets that
    /// are there, when it is not one of them.
    void tap(std::string_view name);
    /// Taps until the last of the names.
    void tap_all(const std::vector<std::string>& names);
    /// Touches the middle of a target and moves by so many millimeters in ten frames.
    void drag(std::string_view name, float dx_mm, float dy_mm);
    /// The same from a place in window pixels.
    void drag_from(float x, float y, float dx_mm, float dy_mm);
    void press(std::string_view name);
    void lift();
    /// A touch as it is, then the frames it asks for.
    void touch(Touch touch);
    /// A touch that waits for the next frame.
    void push(Touch touch) { queue_.push(touch); }
    /// Text from a keyboard or a laser.
    void type(std::string_view text);
    /// A key of a keyboard, and the rest that a hand takes after it.
    void press(Key key);
    void paste(std::string_view text);
    void frames(int n = 1, double step = 1.0 / 60);
    void resize(float w, float h);

    [[nodiscard]] bool has_target(std::string_view name) const;
    [[nodiscard]] Box target(std::string_view name) const;
    [[nodiscard]] std::vector<std::string> names() const;
    /// Targets outside the window, or nearer to each other than 3 mm: a line each; empty is good.
    [[nodiscard]] std::string crowded() const;
    [[nodiscard]] int frames_drawn() const { return frames_drawn_; }
    [[nodiscard]] Ui& ui() { return ui_; }
    [[nodiscard]] TouchQueue& queue() { return queue_; }

  private:
    void press_at(float x, float y);
    void settle_keys();
    void rest();
    void read_warning();
    struct Close {
        void operator()(ImGuiContext* context) const;
    };
    std::unique_ptr<ImGuiContext, Close> context_;
    Draw draw_;
    float px_per_mm_;
    Fonts fonts_;
    TouchQueue queue_;
    Ui ui_;
    float x_ = 0, y_ = 0;
    int frames_drawn_ = 0;
};

}  // namespace hemline
