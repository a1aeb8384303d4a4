// What all shells share: takes touches and typing, draws logic frames, and rests when nothing
// happens.
//
//   events ─▶ logic frames, one a button edge ─▶ the shell presents the last ─▶ … twice more ─▶
//   rest
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "field/theme/theme.h"
#include "field/touch/keys.h"
#include "field/touch/touch_queue.h"
#include "field/touch/ui.h"

namespace hemline {

/// What a window shows.
struct Scene {
    std::function<void(Ui&)> draw;
    std::function<const Palette&()> palette;
    std::function<float()> px_per_mm = {};  ///< of window pixels, where it may change; or empty
    std::function<void(Key)> press = {};    ///< a key that is not text; or empty
};

class Stage {
  public:
    Stage(Scene scene, std::string font_folder)
        : scene_(std::move(scene)), font_folder_(std::move(font_folder)) {}

    /// Sets letters and layout for a drawable with so many pixels in a millimeter; afterwards the
    /// shell copies the atlas to the graphics card. Returns what is wrong with the letters, or
    /// empty.
    std::string set_scale(float px_per_mm);

    [[nodiscard]] TouchQueue& touches() { return touches_; }
    /// Text for what is keyed in; keys of keys.h go to the scene.
    void type(const std::string& text);
    /// Lines from the clipboard.
    void paste(const std::string& text) { pasted_ += text; }
    /// Something happened: the next frames show it.
    void want_frames();
    /// True when there is nothing to draw until something happens.
    [[nodiscard]] bool at_rest() const { return frames_wanted_ == 0 && !touches_.flinging(); }
    /// Seconds after which another frame is wanted even if nothing happens; 0: none.
    [[nodiscard]] double refusal_left() const { return ui_->refusal_left(); }
    void want_frame() { frames_wanted_ = 1; }

    /// Draws up to ImGui::Render(), `since` seconds after the last time; the shell then presents.
    void draw(double since);

    [[nodiscard]] const std::vector<Target>& targets() const { return ui_->targets(); }
    [[nodiscard]] std::optional<Target> focus() const { return ui_->focus(); }
    [[nodiscard]] const std::vector<Words>& words() const { return ui_->words(); }
    /// Window pixels in a millimeter: what the scene says now, or what the window was opened with.
    [[nodiscard]] float px_per_mm(float opened) const {
        return scene_.px_per_mm ? scene_.px_per_mm() : opened;
    }
    [[nodiscard]] Colour ground() const { return scene_.palette().paper; }

  private:
    Scene scene_;
    std::string font_folder_;
    Fonts fonts_;
    TouchQueue touches_{0};
    std::optional<Ui> ui_;
    std::string typed_, pasted_;
    int frames_wanted_ = 0;
};

}  // namespace hemline
