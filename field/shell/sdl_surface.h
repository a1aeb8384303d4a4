// SDL2's window with OpenGL 3 in it, or OpenGL ES 3 where there is no other.
#pragma once

#include <optional>
#include <string>

#include "engine/words/result.h"
#include "field/shell/painter.h"

struct SDL_Window;

namespace hemline {

class SdlSurface {
  public:
    SdlSurface() = default;
    SdlSurface(const SdlSurface&) = delete;
    SdlSurface& operator=(const SdlSurface&) = delete;
    ~SdlSurface();

    /// Opens the window and Dear ImGui's context and renderer; letters are loaded by others.
    /// Problem: no display, or no OpenGL on it.
    std::optional<Problem> open(const std::string& title, int w, int h);
    /// Drawable pixels a window pixel has: 1, or more on a dense screen.
    [[nodiscard]] float density() const;
    /// Writes the drawable's size to ImGuiIO: everything is laid out in drawable pixels.
    void measure() const;
    /// Shows what ImGui::Render() made, on a ground of one colour.
    void present(Colour ground) const;
    [[nodiscard]] Painter& painter() { return painter_; }

  private:
    void close();
    SDL_Window* window_ = nullptr;
    Painter painter_;
    void* context_ = nullptr;  ///< OpenGL's; null: not opened
};

}  // namespace hemline
