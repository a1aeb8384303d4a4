// What is drawn on: a window with OpenGL 3 in it, or OpenGL ES 3 where there is no other.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "engine/result.h"
#include "field/theme/theme.h"

struct SDL_Window;

namespace hemline {

class Surface {
  public:
    Surface() = default;
    Surface(const Surface&) = delete;
    Surface& operator=(const Surface&) = delete;
    ~Surface();

    /// Opens the window and Dear ImGui's context and renderer; letters are loaded by others.
    /// Problem: no display, or no OpenGL on it.
    std::optional<Problem> open(const std::string& title, int w, int h);
    /// Drawable pixels a window pixel has: 1, or more on a dense screen.
    [[nodiscard]] float density() const;
    /// Writes the drawable's size to ImGuiIO: everything is laid out in drawable pixels.
    void measure() const;
    /// Takes the atlas that load_fonts() built to the screen's memory.
    void take_letters();
    /// Shows what ImGui::Render() made, on a ground of one colour.
    void present(Colour ground) const;
    /// The last picture presented, as a PNG, whole or not at all. False when it cannot be written.
    [[nodiscard]] bool save_picture(const std::filesystem::path& file, Colour ground) const;

  private:
    void close();
    static void draw(Colour ground);
    SDL_Window* window_ = nullptr;
    bool drawn_with_ = false;  ///< buffers and shaders are there
    void* context_ = nullptr;  ///< OpenGL's; null: not opened
};

}  // namespace hemline
