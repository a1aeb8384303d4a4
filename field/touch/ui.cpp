#include "field/touch/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>
#include <cmath>

#include "engine/require.h"

namespace hemline {

namespace {

constexpr float page_long_min = 150, page_short_min = 90;  // mm: a 7 in screen
constexpr double repeat_min = 0.080;                       // s
constexpr double refusal_shown = 0.5;                      // s
constexpr float half_pixel = 0.5F;

ImVec2 top_left(Box box) { return {box.x, box.y}; }
ImVec2 bottom_right(Box box) { return {box.right(), box.bottom()}; }

ImGuiID id_of(std::string_view name) {
    return ImGui::GetCurrentWindow()->GetID(name.data(), name.data() + name.size());
}

}  // namespace

Ui::Ui(const Palette& palette, const Fonts& fonts, float px_per_mm)
    : palette_(&palette), fonts_(&fonts), px_per_mm_(px_per_mm) {}

void Ui::begin_page(const TouchQueue* touch) {
    touch_ = touch;
    targets_.clear();
    words_.clear();
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const bool tall = window.y > window.x;
    page_ = {0, 0, std::max(window.x, mm(tall ? page_short_min : page_long_min)),
             std::max(window.y, mm(tall ? page_long_min : page_short_min))};
    if (touch_ != nullptr && touch_->dragging()) {
        ImGui::ClearActiveID();
    }
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
    ImGui::SetNextWindowPos(top_left(page_));
    ImGui::SetNextWindowSize(ImVec2(page_.w, page_.h));
    ImGui::Begin("page", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                     ImGuiWindowFlags_NoBackground | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoNav);
    ImGui::PopStyleVar(2);
}

void Ui::end_page() {
    require(scroll_ == nullptr, "every begin_scroll has its end_scroll");
    ImGui::End();
    typed_.clear();
}

ImDrawList* Ui::ink() const { return ImGui::GetWindowDrawList(); }

bool Ui::tap(std::string_view name, Box box, float w_min, float h_min, std::string_view label) {
    require(box.w >= mm(w_min) - half_pixel && box.h >= mm(h_min) - half_pixel,
            "a target is large enough for a glove");
    const Box shown = common_of(box, scroll_ != nullptr ? scroll_->view : page_);
    const bool clipped = shown.w < box.w - half_pixel || shown.h < box.h - half_pixel;
    const float least = mm(target_min) - half_pixel;
    if (clipped && (shown.w < least || shown.h < least)) {
        return false;
    }
    require(std::none_of(targets_.begin(), targets_.end(),
                         [name](const Target& target) { return target.name == name; }),
            "every target of a screen has its own name");
    targets_.push_back({std::string(name), shown, std::string(label)});
    ImGui::SetCursorScreenPos(top_left(shown));
    return ImGui::InvisibleButton(targets_.back().name.c_str(), ImVec2(shown.w, shown.h));
}

bool Ui::area(std::string_view name, Box box) { return tap(name, box, target_min, target_min); }

bool Ui::button(std::string_view name, std::string_view label, Box box, Look look) {
    bool tapped = false;
    if (look == Look::key) {
        tapped = take_key(name, tap(name, box, key_min, key_min, label));
    } else if (look != Look::off) {
        tapped =
            tap(name, box, target_min, look == Look::primary ? primary_min : target_min, label);
    }
    draw_button(name, label, box, look);
    return tapped;
}

/// A finger cannot tap one key twice in 80 ms, but a bouncing screen can. Counted from touch to
/// touch and from lift to lift, since a bounce may come at either end.
bool Ui::take_key(std::string_view name, bool tapped) {
    const double now = ImGui::GetTime();
    const bool same = keys_.name == name;
    if (ImGui::IsItemActivated() && ImGui::GetItemID() == id_of(name)) {
        keys_.lift = same ? keys_.lift : -1;
        keys_.bounced = same && now - keys_.down < repeat_min;
        keys_.down = now;
        keys_.name = name;
    }
    if (!tapped) {
        return false;
    }
    const bool repeated = keys_.bounced || (keys_.lift >= 0 && now - keys_.lift < repeat_min);
    keys_.lift = now;
    keys_.refused = repeated ? std::string(name) : std::string();
    keys_.refused_until = repeated ? now + refusal_shown : -1;
    return !repeated;
}

double Ui::refusal_left() const { return std::max(0.0, keys_.refused_until - ImGui::GetTime()); }

bool Ui::pressed(std::string_view name) const {
    const ImGuiID id = id_of(name);
    return ImGui::GetActiveID() == id && ImGui::GetIO().MouseDown[0];
}

Box Ui::begin_scroll(std::string_view name, Box view, float content_height) {
    require(scroll_ == nullptr, "one list at a time scrolls");
    scroll_ = &scrolls_.try_emplace(std::string(name)).first->second;
    scroll_->view = view;
    scroll_->content = content_height;
    if (touch_ != nullptr && view.holds(touch_->origin_x(), touch_->origin_y())) {
        scroll_->top -= touch_->scroll();
    }
    scroll_->top = std::clamp(scroll_->top, 0.0F, std::max(0.0F, content_height - view.h));
    ImGui::PushClipRect(top_left(view), bottom_right(view), true);
    return {view.x, view.y - scroll_->top, view.w, std::max(content_height, view.h)};
}

void Ui::end_scroll() {
    require(scroll_ != nullptr, "end_scroll follows a begin_scroll");
    ImGui::PopClipRect();
    const Box view = scroll_->view;
    if (scroll_->content > view.h) {  // a thumb at the edge shows that there is more, and where
        const float share = view.h / scroll_->content;
        const float w = mm(0.8F);
        const Box thumb{view.right() - w, view.y + scroll_->top * share, w, view.h * share};
        ink()->AddRectFilled(top_left(thumb), bottom_right(thumb), palette_->hairline, w / 2);
    }
    scroll_ = nullptr;
}

void Ui::draw_button(std::string_view name, std::string_view label, Box box, Look look) const {
    const Palette& p = *palette_;
    const bool down = look != Look::off && pressed(name);
    const bool refused = look == Look::key && refusal_left() > 0 && keys_.refused == name;
    Colour ground = p.key;
    Colour words = p.ink;
    if (look == Look::primary || (down && look == Look::chosen)) {
        ground = p.ink;
        words = p.paper;
    }
    if (look == Look::chosen ? !down : down) {
        ground = p.chalk;
        words = p.chalk_ink;
    }
    if (refused) {
        ground = p.warn;
        words = IM_COL32_BLACK;
    }
    const float round = mm(1.5F);
    const bool outlined = look != Look::quiet && look != Look::off;
    if (outlined || down) {
        ink()->AddRectFilled(top_left(box), bottom_right(box), ground, round);
    }
    if (look == Look::off) {
        words = p.soft;
        ink()->AddRect(top_left(box), bottom_right(box), p.hairline, round, 0, mm(0.2F));
    } else if (outlined) {
        const float thick = mm(look == Look::key || look == Look::chosen ? 0.34F : 0.5F);
        ink()->AddRect(top_left(box), bottom_right(box), p.ink, round, 0, thick);
    }
    if (refused) {  // struck through: colour alone would not say it
        ink()->AddLine({box.x + round, box.bottom() - round}, {box.right() - round, box.y + round},
                       IM_COL32_BLACK, mm(0.7F));
    }
    draw_label(label, box, look, words);
}

}  // namespace hemline
