#include "field/shell/sdl_window.h"

#include <SDL.h>
#include <imgui.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>

#include "field/shell/sdl_events.h"
#include "field/shell/surface.h"
#include "field/shell/targets_file.h"
#include "field/touch/ui.h"

namespace hemline {

namespace {

constexpr int frames_after_event = 3;
constexpr float slop = 6;            // mm
constexpr double logic_step = 1e-5;  // s: an extra logic frame takes no time
constexpr double step_max = 1;       // s: what went on before a long rest is over

void say_once(bool& said, const char* what, const std::filesystem::path& file) {
    if (!said) {
        std::fprintf(stderr, "hemline: %s cannot be written: %s\n", what, file.c_str());
    }
    said = true;
}

class Window {
  public:
    Window(const WindowOptions& options, const Scene& scene) : options_(options), scene_(scene) {}
    std::optional<Problem> open();
    void run();

  private:
    std::string load_letters();
    bool listen();
    void draw_frame();
    void report_frame();
    [[nodiscard]] bool at_rest() const { return frames_wanted_ == 0 && !queue_.flinging(); }

    const WindowOptions& options_;
    const Scene& scene_;
    Surface surface_;
    Fonts fonts_;
    TouchQueue queue_{0};
    std::optional<Ui> ui_;
    TargetsFile targets_{options_.targets};
    std::string typed_;
    float density_ = 0;
    std::uint64_t frame_at_ = 0;  // SDL's performance counter
    int frames_wanted_ = frames_after_event;
    bool targets_failed_ = false, picture_failed_ = false;  // said once
};

std::optional<Problem> Window::open() {
    if (std::optional<Problem> problem = surface_.open("Hemline", options_.w, options_.h)) {
        return problem;
    }
    if (std::string wrong = load_letters(); !wrong.empty()) {
        return Problem{wrong, "Then start it again."};
    }
    if (SDL_HasScreenKeyboardSupport() == SDL_FALSE) {  // there it would cover the screen
        SDL_StartTextInput();
    }
    return {};
}

/// Letters and layout follow the display's density; nothing is done while it stays.
std::string Window::load_letters() {
    surface_.measure();
    const float density = surface_.density();
    if (density == density_) {
        return {};
    }
    density_ = density;
    const float px_per_mm = options_.px_per_mm * density;
    std::string wrong = load_fonts(options_.font_folder, px_per_mm, fonts_);
    if (wrong.empty()) {
        surface_.take_letters();
        queue_.set_slop(slop * px_per_mm);
        ui_.emplace(palette_of(Light::day), fonts_, px_per_mm);
    }
    return wrong;
}

void Window::run() {
    while (listen()) {
        if (!at_rest()) {
            draw_frame();
            frames_wanted_ = std::max(0, frames_wanted_ - 1);
            report_frame();
        }
    }
}

/// Hears everything there is, after waiting for it when nothing is to be drawn. False: closed.
bool Window::listen() {
    SDL_Event event;
    bool there = false;
    if (!at_rest()) {
        there = SDL_PollEvent(&event) != 0;
    } else if (const double left = ui_->refusal_left(); left > 0) {
        there = SDL_WaitEventTimeout(&event, static_cast<int>(left * 1000) + 1) != 0;
        frames_wanted_ = 1;
    } else {
        there = SDL_WaitEvent(&event) != 0;
    }
    for (; there; there = SDL_PollEvent(&event) != 0) {
        const ImVec2 size = ImGui::GetIO().DisplaySize;
        const Heard heard = hear(event, size.x, size.y, queue_, typed_);
        if (heard == Heard::quit) {
            return false;
        }
        if (heard == Heard::resized) {
            load_letters();
        }
        if (heard != Heard::nothing) {
            frames_wanted_ = frames_after_event;
        }
    }
    return true;
}

void Window::draw_frame() {
    const std::uint64_t now = SDL_GetPerformanceCounter();
    const double since = frame_at_ == 0 ? logic_step
                                        : static_cast<double>(now - frame_at_) /
                                              static_cast<double>(SDL_GetPerformanceFrequency());
    frame_at_ = now;
    double step = std::clamp(since, logic_step, step_max);
    ui_->type(typed_);
    typed_.clear();
    do {
        queue_.next_frame(step);
        ImGui::GetIO().DeltaTime = static_cast<float>(step);
        ImGui::NewFrame();
        ui_->set_palette(scene_.palette());
        ui_->begin_page(&queue_);
        scene_.draw(*ui_);
        ui_->end_page();
        ImGui::Render();
        step = logic_step;
    } while (queue_.pending());
    surface_.present(scene_.palette().paper);
    if (options_.presented) {
        options_.presented();
    }
}

void Window::report_frame() {
    if (!options_.targets.empty() && !targets_.update(ui_->targets(), density_)) {
        say_once(targets_failed_, "the targets", options_.targets);
    }
    if (!options_.picture.empty() && at_rest() &&
        !surface_.save_picture(options_.picture, scene_.palette().paper)) {
        say_once(picture_failed_, "the picture", options_.picture);
    }
}

}  // namespace

std::optional<Problem> show_window(const WindowOptions& options, const Scene& scene) {
    Window window(options, scene);
    std::optional<Problem> problem = window.open();
    if (!problem) {
        window.run();
    }
    return problem;
}

}  // namespace hemline
