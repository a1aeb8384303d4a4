#include "field/screens/frame.h"

#include <imgui.h>

#include <cctype>
#include <cstdio>
#include <ctime>
#include <string_view>

namespace hemline {

namespace {

constexpr float action_height_mm = 14;
constexpr float gap_mm = 3;

/// The title without its last parts (" · …") where it is wider than the page.
std::string fitted(const Ui& ui, std::string title, float w) {
    constexpr std::string_view between = " · ";
    for (std::size_t cut = title.rfind(between);
         cut != std::string::npos && ui.text_width(title, Size::bold) > w;
         cut = title.rfind(between)) {
        title.resize(cut);
    }
    return title;
}

void draw_title(Ui& ui, const State& state, const std::string& whole, Box strip) {
    const std::string title = fitted(ui, whole, strip.w);
    const float baseline_y = strip.y + ui.mm(1);
    ui.text(strip.x, baseline_y, title, Size::bold);
    const std::string saved = (state.save_failed ? "! " : "✓ ") + state.saved;
    if (!state.saved.empty()) {
        const bool fits =
            ui.text_width(title, Size::bold) + ui.text_width(saved, Size::small) + ui.mm(4) <
            strip.w;
        if (fits) {
            ui.text(strip.right(), baseline_y + ui.mm(0.8F), saved, Size::small, Align::right,
                    state.save_failed ? ui.colours().ink : ui.colours().soft);
        }
    }
    ui.ink()->AddLine({strip.x, strip.bottom()}, {strip.right(), strip.bottom()}, ui.colours().ink,
                      ui.mm(0.3F));
}

/// In portrait the other actions stand in a row above the primary one.
std::string draw_actions(Ui& ui, const std::vector<Action>& actions, Box strip) {
    std::string tapped;
    if (actions.empty()) {
        return tapped;
    }
    const float gap = ui.mm(gap_mm);
    const auto draw = [&](const Action& action, Box box) {
        if (ui.button(action.name, action.label, box, action.look)) {
            tapped = action.name;
        }
    };
    Box rest = strip;
    const std::size_t others = actions.size() - 1;
    if (ui.portrait()) {
        draw(actions.back(), take_bottom(rest, ui.mm(action_height_mm + 2)));
        take_bottom(rest, gap);
    } else {
        draw(actions.back(), take_right(rest, others == 0 ? rest.w : rest.w * 0.34F));
        take_right(rest, gap);
        take_top(rest, ui.mm(1));
    }
    if (others > 0) {
        const std::vector<Box> places = columns(rest, static_cast<int>(others), gap);
        for (std::size_t i = 0; i < others; ++i) {
            draw(actions[i], places[i]);
        }
    }
    return tapped;
}

float actions_height(const Ui& ui, const std::vector<Action>& actions) {
    if (actions.empty()) {
        return 0;
    }
    const float one = ui.mm(action_height_mm + 1);
    return ui.portrait() && actions.size() > 1 ? 2 * one + ui.mm(gap_mm + 1) : one + ui.mm(1);
}

}  // namespace

float margin(const Ui& ui) { return ui.mm(6); }

Frame open_frame(Ui& ui, const State& state, const std::string& title,
                 const std::vector<Action>& actions) {
    Box page = inset(ui.page(), margin(ui), ui.mm(4));
    draw_title(ui, state, title, take_top(page, ui.line_height(Size::bold) + ui.mm(2.5F)));
    take_top(page, ui.mm(2));
    Frame frame;
    frame.tapped = draw_actions(ui, actions, take_bottom(page, actions_height(ui, actions)));
    take_bottom(page, ui.mm(gap_mm));
    const std::string& notice = state.notice;
    if (!notice.empty()) {
        const float height = ui.paragraph_height(page.w - ui.mm(6), notice, Size::body) + ui.mm(3);
        const Box band = take_top(page, height);
        ui.ink()->AddRectFilled({band.x, band.y}, {band.right(), band.bottom()}, ui.colours().warn,
                                ui.mm(1));
        ui.paragraph(band.x + ui.mm(3), band.y + ui.mm(1.5F), band.w - ui.mm(6), notice, Size::body,
                     IM_COL32(0, 0, 0, 255));
        take_top(page, ui.mm(2));
    }
    frame.body = page;
    return frame;
}

std::string title_of(const Edge& edge) {
    std::string kind(spoken(edge.kind));
    if (!kind.empty()) {
        kind[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(kind[0])));
    }
    return kind + " " + edge.id;
}

std::string clock_time(HybridTime when) {
    const std::time_t seconds = static_cast<std::time_t>(when.wall_ms / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    char text[16];
    std::snprintf(text, sizeof text, "%d:%02d", local.tm_hour, local.tm_min);
    return text;
}

}  // namespace hemline
