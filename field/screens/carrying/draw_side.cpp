#include "field/screens/carrying/draw_side.h"

#include <imgui.h>

#include "engine/record/about_thing.h"
#include "field/screens/page/frame.h"
#include "field/state/told.h"

namespace hemline {

namespace {

constexpr float pad_mm = 3, chosen_mm = 9;
constexpr float figure_mm = 92;  // "46 ft 11 15/16 in" in figures

/// In large figures or, where it is narrow, in figures of the title's size.
Size figure_size(const Ui& ui, float inner) {
    return inner >= ui.mm(figure_mm) ? Size::figure : Size::title;
}

Text who(const Event& event) { return event.by.empty() ? say("nobody named") : Text(event.by); }

Text where_and_when(const State& state, const Event& event) {
    const Text when = day_and_time(wall_time(event));
    return event.id.device == state.writer ? say("on this tablet, {1}", when)
                                           : say("on another tablet, {1}", when);
}

/// "picked by Ben, on another tablet, 4 May …"; empty when nobody did.
Text picked_words(const State& state, const SideView& side) {
    return side.picked == nullptr
               ? Text()
               : say("picked by {1}, {2}", who(*side.picked), where_and_when(state, *side.picked));
}

float picked_height(const Ui& ui, const State& state, const SideView& side, float w) {
    return side.picked == nullptr ? 0
                                  : ui.paragraph_height(w, picked_words(state, side), Size::body);
}

}  // namespace

std::optional<Length> length_of(const Fact& fact) {
    const std::optional<ValueSaid> said = value_in(fact);
    const auto* const length = said ? std::get_if<Length>(&said->value) : nullptr;
    return length == nullptr ? std::nullopt : std::optional(*length);
}

float side_height(const Ui& ui, const State& state, const SideView& side, float w) {
    const Event& event = *side.value;
    const float inner = w - 2 * ui.mm(pad_mm);
    const float value = length_of(event.fact)
                            ? ui.figure_height(figure_size(ui, inner))
                            : ui.paragraph_height(inner, told(state, event.fact), Size::title);
    return value + ui.paragraph_height(inner, who(event), Size::bold) +
           ui.paragraph_height(inner, where_and_when(state, event), Size::body) +
           picked_height(ui, state, side, inner) + ui.mm(2 * pad_mm + chosen_mm + 3);
}

bool draw_side(Ui& ui, const State& state, const SideView& side, const std::string& name,
               bool chosen, Box box) {
    const Event& event = *side.value;
    const bool tapped = !name.empty() && ui.area(name, box, told(state, event.fact));
    const bool lit = chosen || (!name.empty() && ui.pressed(name));
    const Palette& colour = ui.colours();
    const float round = ui.mm(1.5F);
    ui.ink()->AddRectFilled({box.x, box.y}, {box.right(), box.bottom()}, colour.key, round);
    Box in = inset(box, ui.mm(pad_mm));
    if (lit) {
        const Box strip{box.x, box.bottom() - ui.mm(chosen_mm), box.w, ui.mm(chosen_mm)};
        ui.ink()->AddRectFilled({strip.x, strip.y}, {strip.right(), strip.bottom()}, colour.chalk,
                                round, ImDrawFlags_RoundCornersBottom);
        ui.text(in.x, strip.mid_y() - ui.line_height(Size::bold) / 2, say("✓ This one"), Size::bold,
                Align::left, colour.chalk_ink);
    }
    ui.ink()->AddRect({box.x, box.y}, {box.right(), box.bottom()}, lit ? colour.chalk : colour.ink,
                      round, 0, ui.mm(lit ? 1.2F : 0.4F));
    if (const std::optional<Length> length = length_of(event.fact)) {
        const Size size = figure_size(ui, in.w);
        ui.figure(in.x, in.y, *length, state.marks, size);
        take_top(in, ui.figure_height(size) + ui.mm(2));
    } else {
        take_top(in,
                 ui.paragraph(in.x, in.y, in.w, told(state, event.fact), Size::title) + ui.mm(2));
    }
    take_top(in, ui.paragraph(in.x, in.y, in.w, who(event), Size::bold));
    take_top(in, ui.paragraph(in.x, in.y, in.w, where_and_when(state, event), Size::body));
    if (side.picked != nullptr) {
        ui.paragraph(in.x, in.y, in.w, picked_words(state, side), Size::body);
    }
    return tapped;
}

}  // namespace hemline
