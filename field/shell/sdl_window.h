// The tablet's shell: events in, frames out, and nothing at all while nothing happens.
//
//   wait ─▶ events ─▶ logic frames, one a button edge ─▶ present the last ─▶ … twice more ─▶ wait
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "engine/result.h"
#include "field/theme/theme.h"
#include "field/touch/ui.h"

namespace hemline {

struct WindowOptions {
    int w = 1280, h = 800;                ///< window pixels
    float px_per_mm = px_per_mm_unknown;  ///< of window pixels
    std::string font_folder = font_folder_usual;
    std::filesystem::path targets;    ///< rewritten after each drawn frame; empty: none
    std::filesystem::path picture;    ///< a PNG of each frame that is at rest; empty: none
    std::function<void()> presented;  ///< called after each presented frame; may be empty
};

/// What the window shows.
struct Scene {
    std::function<void(Ui&)> draw;
    std::function<const Palette&()> palette;
};

/// Opens a window and draws until it is closed. Problem: no screen, no OpenGL, no letters.
std::optional<Problem> show_window(const WindowOptions& options, const Scene& scene);

}  // namespace hemline
