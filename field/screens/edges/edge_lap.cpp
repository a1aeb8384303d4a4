// The lap of a single edge: "hail: the lap must be 8 in here". Keyed in, or back to the job's rule.
#include <imgui.h>

#include <algorithm>

#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/rules/rule_meaning.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float lap_above_mm = 60, lap_picture_mm = 24, piece_mm = 8, over_mm = 2.5F;
constexpr float lap_part = 0.3F;  // of the picture's width

/// Two pieces, the upper over the lower, and how far: in the lower part of the box, where it has
/// room.
void draw_lap(Ui& ui, Length lap, Box box) {
    if (box.h < ui.mm(lap_picture_mm)) {
        return;
    }
    box = take_bottom(box, ui.mm(lap_picture_mm));
    const Palette& p = ui.colours();
    const float from = box.mid_x() - box.w * lap_part / 2, to = from + box.w * lap_part;
    const float top = box.bottom() - ui.mm(piece_mm + over_mm);
    const auto piece = [&](float left, float right, float y, Colour colour) {
        ui.ink()->AddRectFilled({left, y}, {right, y + ui.mm(piece_mm)}, colour);
        ui.ink()->AddRect({left, y}, {right, y + ui.mm(piece_mm)}, p.ink, 0, 0, ui.mm(0.4F));
    };
    piece(box.x, to, top + ui.mm(over_mm), p.metal_low);
    piece(from, box.right(), top, p.metal);
    const float line = top - ui.mm(3);
    for (const float x : {from, to}) {
        ui.ink()->AddLine({x, line - ui.mm(1.5F)}, {x, top + ui.mm(piece_mm + over_mm)}, p.chalk,
                          ui.mm(0.6F));
    }
    ui.ink()->AddLine({from, line}, {to, line}, p.chalk, ui.mm(0.4F));
    ui.text((from + to) / 2, line - ui.line_height(Size::bold) - ui.mm(0.5F),
            glued(CloseLength{lap}), Size::bold, Align::centre);
}

/// Metal is cut already: says why the lap stays, and there is nothing to key in.
Wished draw_held(Ui& ui, const State& state, const Edge& edge, const Text& title, const Text& why) {
    const Frame frame =
        open_frame(ui, state, title, {{"leave", say("Back to the run"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    take_top(body, draw_band(ui, why, body));
    draw_rule_meaning(ui, state, std::string(lap_rule(edge.kind)), body);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::run, edge.id}};
    }
    return wish;
}

}  // namespace

Wished draw_edge_lap(Ui& ui, const State& state, Drafts& drafts) {
    EdgeLapDraft& draft = drafts.edge_lap;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Edge& edge = work->edge;
    const Practice& practice = state.job.practice;
    const Length lap = lap_on(edge, practice);
    const Text title = say("{1} · lap of this edge: {2} now", title_of(edge), CloseLength{lap});
    if (const Text why = lap_held_by_metal(*work, state.plan); !why.empty()) {
        return draw_held(ui, state, edge, title, why);
    }
    const bool metric = state.marks == Marks::millimetre;
    if (!draft.field_opened) {
        draft.length.field = field_of(lap);
        draft.field_opened = true;
    }
    take_typed(ui, draft.length, metric);
    std::vector<Action> actions = {{"leave", say("Back to the run")}};
    if (edge.lap) {
        actions.push_back(
            {"as the job", say("As the job: {1}", CloseLength{lap_on(edge.kind, practice)})});
    }
    actions.push_back(
        {"keep", say("So on this edge"), is_empty(draft.length) ? Look::off : Look::primary});
    const Frame frame =
        open_frame(ui, state, title, actions, {metric ? digit_keys : sixteenth_keys, lap_above_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(gap_mm));
    Box words = ui.begin_scroll("lap words", body);
    const float top = words.y;
    take_top(words, draw_band(ui, draft.length.refused, words));
    take_top(words, draw_rule_meaning(ui, state, std::string(lap_rule(edge.kind)), words));
    words.h = body.h - (words.y - top);
    draw_lap(ui, is_empty(draft.length) ? lap : shown_length(draft.length, metric), words);
    ui.end_scroll(words.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::run, edge.id}};
    } else if (frame.tapped == "as the job") {
        wish = Keep{LapChosen{edge.id, std::nullopt}, Where{Screen::run, edge.id}};
    } else if (frame.tapped == "keep" && !is_empty(draft.length)) {
        const Length keyed = shown_length(draft.length, metric);
        if (const auto fits = with_lap(practice, edge.kind, keyed); !fits) {
            draft.length.refused = said(fits.problem());
            return wish;
        }
        wish = Keep{LapChosen{edge.id, keyed}, Where{Screen::run, edge.id}};
    }
    return wish;
}

}  // namespace hemline
