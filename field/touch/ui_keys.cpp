// The keyboard on a page: its press, the focus drawn in sight, and lists that scroll to it.
#include <imgui.h>

#include <algorithm>

#include "field/touch/ui.h"

namespace hemline {

namespace {

constexpr float row_kept = 12;    // mm of a list that show beyond what the focus is on
constexpr float scroll_row = 12;  // mm
constexpr float page_share = 0.8F;
constexpr float ring_gap = 0.7F, ring = 0.8F;  // mm

}  // namespace

/// Where it was touched is the middle, for those who ask.
bool Ui::press_by_key(std::string_view name, Box shown) {
    if (!keyboard_.presses(name)) {
        return false;
    }
    ImGui::GetIO().MousePos = ImVec2(shown.mid_x(), shown.mid_y());
    return true;
}

std::optional<Target> Ui::focus() const {
    const std::optional<std::size_t> on = keyboard_.focus();
    if (!on) {
        return std::nullopt;
    }
    const Focusable& one = keyboard_.all()[*on];
    return Target{one.name, one.shown};
}

void Ui::do_keys() {
    if (ImGui::GetIO().MouseDown[0]) {
        keyboard_.hide();
    }
    const Keyboard::Scrolls scrolls = keyboard_.end_frame(ImGui::GetTime());
    if (scrolls.to) {
        scroll_to(keyboard_.all()[*scrolls.to]);
    } else if (scrolls.by) {
        scroll_by(*scrolls.by);
    }
    draw_focus();
}

void Ui::scroll_to(const Focusable& one) {
    for (auto& [name, scroll] : scrolls_) {
        if (&scroll != one.list) {
            continue;
        }
        const Box view = scroll.view;
        const float room = std::max(0.0F, std::min(mm(row_kept), (view.h - one.box.h) / 2));
        const float below = one.box.bottom() + room - view.bottom();
        const float above = view.y - (one.box.y - room);
        scroll.top += above > 0 ? -above : std::max(0.0F, below);
    }
}

/// The list that the focus is in, or else the longest.
void Ui::scroll_by(Key key) {
    Scroll* longest = nullptr;
    const std::optional<std::size_t> on = keyboard_.focus();
    for (auto& [name, scroll] : scrolls_) {
        if (on && keyboard_.all()[*on].list == &scroll) {
            longest = &scroll;
            break;
        }
        const float more = scroll.content - scroll.view.h;
        if (scroll.drawn && more > 0 &&
            (longest == nullptr || more > longest->content - longest->view.h)) {
            longest = &scroll;
        }
    }
    if (longest == nullptr || key == Key::left || key == Key::right) {
        return;
    }
    const bool page = key == Key::page_up || key == Key::page_down;
    const float by = page ? page_share * longest->view.h : mm(scroll_row);
    longest->top += key == Key::up || key == Key::page_up ? -by : by;
}

/// A ring with a gap: it shows around light and dark alike.
void Ui::draw_focus() const {
    const std::optional<Target> on = focus();
    if (!on || on->box.w <= 0 || on->box.h <= 0) {
        return;
    }
    const float out = mm(ring_gap + ring / 2);
    const Box around = inset(page_, mm(ring / 2));
    const Box box = common_of(
        {on->box.x - out, on->box.y - out, on->box.w + 2 * out, on->box.h + 2 * out}, around);
    ink()->AddRect({box.x, box.y}, {box.right(), box.bottom()}, palette_->ink, mm(2), 0, mm(ring));
}

}  // namespace hemline
