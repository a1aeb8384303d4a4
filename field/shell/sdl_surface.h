// SDL2's window with OpenGL 3, or OpenGL ES 3 where there is no OpenGL 3.
#pragma once

#include <optional>
#include <string>

#include "engine/words/result_declared.h"
#include "field/shell/painter.h"

struct SDL_Window;

namespace hemline {

class SdlSurface {
  public:
    SdlSurface() = default;
    SdlSurface(const SdlSurface&) = delete;
    SdlSurface& operator=(const SdlSurface&) = delete;
    ~SdlSurface();

    /// Opens the window and makes Dear ImGui's context and renderer; the caller loads letters.
    /// Problem: no display, or no OpenGL on it.
    std::optional<Problem> open(const std::string& title, int w, int h);
    /// Drawable pixels in a window pixel: 1, or more on a dense screen.
    [[nodiscard]] float density() const;
    /// Writes the drawable's size to ImGuiIO: everything is laid out in drawable pixels.
    void measure() const;
    /// Shows what ImGui::Render() made on a plain ground.
    void present(Colour ground) const;
    [[nodiscard]] Painter& painter() { return painter_; }

  private:
    void close();
    SDL_Window* window_ = nullptr;
    Painter painter_;
    void* context_ = nullptr;  ///< OpenGL's; null: not opened
};

}  // namespace hemline
