// The lap of one edge alone: "hail: the lap must be 8 in here". Keyed in, or the job's rule again.
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/rules/rule_meaning.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float gap_mm = 3, above_keys_mm = 60;

/// What is cut lies as it was cut: why the lap stays, and nothing to key in.
Wish draw_held(Ui& ui, const State& state, const Edge& edge, const Text& title, const Text& why) {
    Wish wish;
    const Frame frame =
        open_frame(ui, state, title, {{"leave", say("Back to the run"), Look::primary}});
    Box body = frame.body;
    take_top(body, draw_band(ui, why, body));
    draw_rule_meaning(ui, state, std::string(lap_rule(edge.kind)), body);
    if (frame.tapped == "leave") {
        wish.go = Where{Place::run, edge.id};
    }
    return wish;
}

}  // namespace

Wish draw_edge_lap(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        wish.go = Where{Place::roof, {}};
        return wish;
    }
    const Edge& edge = work->edge;
    const Practice& practice = state.job.practice;
    const Length lap = lap_on(edge, practice);
    const Text title = say("{1} · lap of this edge: {2} now", title_of(edge), CloseLength{lap});
    if (const Text why = lap_held_by_metal(*work, state.plan); !why.empty()) {
        return draw_held(ui, state, edge, title, why);
    }
    const bool metric = state.marks == Marks::millimetre;
    if (!drafts.field_opened) {
        drafts.length.field = field_of(lap);
        drafts.field_opened = true;
    }
    take_typed(drafts.length, drafts.typed, ui.typed(), metric);
    std::vector<Action> actions = {{"leave", say("Back to the run")}};
    if (edge.lap) {
        actions.push_back(
            {"as the job", say("As the job: {1}", CloseLength{lap_on(edge.kind, practice)})});
    }
    actions.push_back(
        {"keep", say("So on this edge"), is_empty(drafts.length) ? Look::off : Look::primary});
    const Frame frame = open_frame(ui, state, title, actions,
                                   {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    draw_length_keys(ui, drafts.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, drafts.length, body, tapes_of(state)) + ui.mm(gap_mm));
    Box words = ui.begin_scroll("lap words", body);
    const float top = words.y;
    take_top(words, draw_band(ui, drafts.length.refused, words));
    take_top(words, draw_rule_meaning(ui, state, std::string(lap_rule(edge.kind)), words));
    ui.end_scroll(words.y - top);
    if (frame.tapped == "leave") {
        wish.go = Where{Place::run, edge.id};
    } else if (frame.tapped == "as the job") {
        wish.fact = LapChosen{edge.id, std::nullopt};
        wish.go = Where{Place::run, edge.id};
    } else if (frame.tapped == "keep" && !is_empty(drafts.length)) {
        const Length keyed = shown_length(drafts.length, metric);
        if (const auto fits = with_lap(practice, edge.kind, keyed); !fits) {
            drafts.length.refused = said(fits.problem());
            return wish;
        }
        wish.fact = LapChosen{edge.id, keyed};
        wish.go = Where{Place::run, edge.id};
    }
    return wish;
}

}  // namespace hemline
