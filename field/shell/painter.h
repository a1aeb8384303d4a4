// OpenGL and Dear ImGui's renderer in a window that a shell has opened.
#pragma once

#include <array>
#include <filesystem>

#include "field/theme/theme.h"

namespace hemline {

/// A kind of OpenGL to ask a window for, best first.
struct Dialect {
    enum class Profile { core, any, es } profile;
    int major, minor;
    const char* shading;  ///< first line of its shaders
};
constexpr std::array<Dialect, 3> dialects{{{Dialect::Profile::core, 3, 3, "#version 330 core"},
                                           {Dialect::Profile::any, 3, 0, "#version 130"},
                                           {Dialect::Profile::es, 3, 0, "#version 300 es"}}};

class Painter {
  public:
    Painter() = default;
    Painter(const Painter&) = delete;
    Painter& operator=(const Painter&) = delete;
    ~Painter();

    /// Makes Dear ImGui's context and renderer in the current OpenGL context. False: not possible
    /// with this dialect.
    bool open(const Dialect& dialect);
    /// Call it before the OpenGL context is deleted.
    void close();
    /// Copies the atlas that load_fonts() built to the graphics card.
    void take_letters();
    /// Draws what ImGui::Render() made on a plain ground; the shell then shows it.
    static void draw(Colour ground);
    /// Writes what was drawn last as a PNG, completely or not at all. False when it cannot be
    /// written.
    [[nodiscard]] static bool save_picture(const std::filesystem::path& file, Colour ground);

  private:
    bool open_ = false;
    bool drawn_with_ = false;  ///< buffers and shaders are there
};

}  // namespace hemline
