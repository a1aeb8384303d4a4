#include <SDL.h>
#include <imgui.h>

#include <cstdint>
#include <cstdio>

#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "field/shell/sdl_events.h"
#include "field/shell/sdl_surface.h"
#include "field/shell/targets_file.h"
#include "field/shell/window.h"

namespace hemline {

namespace {

void say_once(bool& said, const char* what, const std::filesystem::path& file) {
    if (!said) {
        std::fprintf(stderr, "hemline: %s cannot be written: %s\n", what,
                     shown_text(file.string()).c_str());
    }
    said = true;
}

class Window {
  public:
    Window(const WindowOptions& options, const Scene& scene)
        : options_(options), stage_(scene, options.font_folder) {}
    std::optional<Problem> open();
    void run();

  private:
    std::string load_letters();
    bool listen();
    void draw_frame();
    void report_frame();

    const WindowOptions& options_;
    SdlSurface surface_;
    Stage stage_;
    TargetsFile targets_{options_.targets};
    float density_ = 0, px_per_mm_ = 0;
    std::uint64_t frame_at_ = 0;                            // SDL's performance counter
    bool targets_failed_ = false, picture_failed_ = false;  // said once
};

std::optional<Problem> Window::open() {
    if (std::optional<Problem> problem = surface_.open("Hemline", options_.w, options_.h)) {
        return problem;
    }
    if (std::string wrong = load_letters(); !wrong.empty()) {
        return Problem{Text(wrong), Text("Then start it again.")};
    }
    if (SDL_HasScreenKeyboardSupport() == SDL_FALSE) {  // a keyboard would cover the screen there
        SDL_StartTextInput();
    }
    return {};
}

/// Letters and layout follow the display's density; does nothing while it stays the same.
std::string Window::load_letters() {
    surface_.measure();
    const float density = surface_.density();
    const float px_per_mm = stage_.px_per_mm(options_.px_per_mm) * density;
    if (density == density_ && px_per_mm == px_per_mm_) {
        return {};
    }
    density_ = density;
    px_per_mm_ = px_per_mm;
    std::string wrong = stage_.set_scale(px_per_mm);
    if (wrong.empty()) {
        surface_.painter().take_letters();
    }
    return wrong;
}

void Window::run() {
    while (listen()) {
        if (!stage_.at_rest()) {
            load_letters();  // the crew may have measured the screen
            draw_frame();
            report_frame();
        }
    }
}

/// Handles all waiting events; waits for an event when nothing is to be drawn. False: closed.
bool Window::listen() {
    SDL_Event event;
    bool there = false;
    if (!stage_.at_rest()) {
        there = SDL_PollEvent(&event) != 0;
    } else if (const double left = stage_.refusal_left(); left > 0) {
        there = SDL_WaitEventTimeout(&event, static_cast<int>(left * 1000) + 1) != 0;
        stage_.want_frame();
    } else {
        there = SDL_WaitEvent(&event) != 0;
    }
    for (; there; there = SDL_PollEvent(&event) != 0) {
        const ImVec2 size = ImGui::GetIO().DisplaySize;
        std::string typed;
        const Heard heard = hear(event, size.x, size.y, stage_.touches(), typed);
        stage_.type(typed);
        if (is_paste(event)) {
            char* const lines = SDL_GetClipboardText();
            stage_.paste(lines != nullptr ? lines : "");
            SDL_free(lines);
            stage_.want_frames();
        }
        if (heard == Heard::quit && (!options_.may_close || options_.may_close())) {
            return false;
        }
        if (heard == Heard::resized) {
            load_letters();
        }
        if (heard != Heard::nothing) {
            stage_.want_frames();
        }
    }
    return true;
}

void Window::draw_frame() {
    const std::uint64_t now = SDL_GetPerformanceCounter();
    const double since = frame_at_ == 0 ? 0
                                        : static_cast<double>(now - frame_at_) /
                                              static_cast<double>(SDL_GetPerformanceFrequency());
    frame_at_ = now;
    stage_.draw(since);
    surface_.present(stage_.ground());
    if (options_.presented) {
        options_.presented();
    }
}

void Window::report_frame() {
    if (!options_.targets.empty() && !targets_.update(stage_.targets(), density_)) {
        say_once(targets_failed_, "the targets", options_.targets);
    }
    if (!options_.picture.empty() && stage_.at_rest() &&
        !Painter::save_picture(options_.picture, stage_.ground())) {
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

void wake_window() {
    SDL_Event event{};
    event.type = SDL_USEREVENT;
    SDL_PushEvent(&event);
}

void copy_text(const std::string& text) { SDL_SetClipboardText(text.c_str()); }

}  // namespace hemline
