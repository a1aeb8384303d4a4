// What the browser draws on: a canvas with WebGL 2, whose context the browser may take away.
#pragma once

#include <optional>

#include "engine/words/result_declared.h"
#include "field/theme/theme.h"

namespace hemline {

class PageScreen {
  public:
    /// Makes WebGL 2 on the element "#screen" and Dear ImGui's context. Problem: there is none.
    std::optional<Problem> open();
    /// After the browser gave a new context: letters must be loaded and taken again.
    std::optional<Problem> open_again();
    /// Sets the canvas to so many pixels, and ImGuiIO with it.
    void set_size(int w, int h);
    /// Copies the atlas that load_fonts() built to the graphics card.
    void take_letters() const;
    /// Shows what ImGui::Render() made on a plain ground.
    void present(Colour ground) const;

  private:
    std::optional<Problem> make_context();
    int context_ = 0;
};

}  // namespace hemline
