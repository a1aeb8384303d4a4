#include "field/shell/stage.h"

#include <imgui.h>

#include <algorithm>

namespace hemline {

namespace {

constexpr int frames_after_event = 3;
constexpr float slop = 6;            // mm
constexpr double logic_step = 1e-5;  // s: an extra logic frame takes no time
constexpr int layouts_most = 3;      // a list whose bar comes and goes lets it lie at that
constexpr double step_max = 1;       // s: a longer rest counts as this

}  // namespace

std::string Stage::set_scale(float px_per_mm) {
    std::string wrong = load_fonts(font_folder_, px_per_mm, fonts_);
    if (wrong.empty()) {
        touches_.set_slop(slop * px_per_mm);
        ui_.emplace(scene_.palette(), fonts_, px_per_mm);
        want_frames();
    }
    return wrong;
}

void Stage::type(const std::string& text) {
    for (const char letter : text) {
        switch (const Key key{letter}) {
            case Key::next_edge:
            case Key::previous_edge:
            case Key::undo:
            case Key::copy:
                if (scene_.press) {
                    scene_.press(key);
                }
                break;
            default:
                typed_ += letter;
        }
    }
}

void Stage::want_frames() { frames_wanted_ = frames_after_event; }

void Stage::draw(double since) {
    double step = std::clamp(since, logic_step, step_max);
    ui_->keyboard().type(typed_);
    ui_->keyboard().paste(pasted_);
    typed_.clear();
    pasted_.clear();
    int layouts = 0;
    do {
        touches_.next_frame(step);
        ImGui::GetIO().DeltaTime = static_cast<float>(step);
        ImGui::NewFrame();
        ui_->set_palette(scene_.palette());
        ui_->begin_page(&touches_);
        scene_.draw(*ui_);
        ui_->end_page();
        ImGui::Render();
        step = logic_step;
        layouts = ui_->is_laid_out() ? 0 : layouts + 1;
    } while (touches_.pending() || ui_->keyboard().is_pending() ||
             (layouts > 0 && layouts < layouts_most));
    frames_wanted_ = std::max(0, frames_wanted_ - 1);
}

}  // namespace hemline
