// A window: woken by events and asleep between them. Either of two shells is linked: SDL2 for a
// tablet (sdl_window.cpp), GLFW for a desk (glfw_window.cpp).
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "engine/words/result_declared.h"
#include "field/shell/stage.h"
#include "field/theme/theme.h"

namespace hemline {

struct WindowOptions {
    int w = 1280, h = 800;                ///< window pixels
    float px_per_mm = px_per_mm_unknown;  ///< of window pixels
    std::string font_folder = font_folder_usual;
    std::filesystem::path targets;    ///< rewritten after each drawn frame; empty: none
    std::filesystem::path picture;    ///< a PNG of each frame that is at rest; empty: none
    std::function<void()> presented;  ///< called after each presented frame; may be empty
    /// Asked when the window is to be closed: false keeps it open. wake_window() must not be called
    /// after it returned true. Empty: the window may close.
    std::function<bool()> may_close;
};

/// Opens a window and draws until it is closed. Problem: no screen, no OpenGL, no letters.
std::optional<Problem> show_window(const WindowOptions& options, const Scene& scene);
/// Puts text on the clipboard.
void copy_text(const std::string& text);

/// From any thread while a window is shown: makes it draw its scene again.
void wake_window();

}  // namespace hemline
