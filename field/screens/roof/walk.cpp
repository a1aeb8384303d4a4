// A walk round a roof: kind, length, corner, next. What closes the roof is offered as one touch.
//
//   ┌─────────────┐  26 ft 0 in                                the building is on the left;
//   │  ┄┄┄●━━━━━  │  [ eave ][ gable end ][ wall ] …            a walk that is open is a gap,
//   │     ┃    C  │  [ outside corner ][ inside corner ] …      not a fault
//   └─────────────┘
#include <algorithm>

#include "engine/measure/angle_text.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/roof/draw_roof_plan.h"
#include "field/screens/roof/host_pages.h"
#include "field/screens/roof/pitch_page.h"
#include "field/screens/roof/walk_answers.h"
#include "field/screens/roof/walk_closing.h"
#include "field/screens/roof/walk_said.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr float above_length_mm = 90, above_degrees_mm = 52;
constexpr float walked_mm_least = 20, walked_mm_below = 45;
constexpr float heads_mm = 15, wide_mm = 140;
constexpr float scroll_bar_mm = 4;  // of a list, with the gap before it
constexpr std::size_t degrees_most = 6;

void draw_walked(Ui& ui, const State& state, const WalkedBody& preview, Box drawn) {
    const BodyOnJob roof = roof_body(state.job, preview);
    RoofSheet sheet = body_sheet(state, roof, inset(drawn, ui.mm(7)));
    sheet.now = roof.sides.back().id;
    draw_sheet(ui, sheet, drawn);
}

float fields_height(const Ui& ui, const State& state) {
    return state.marks == Marks::millimetre ? ui.figure_height() + ui.mm(2)
                                            : length_fields_height(ui);
}

Text angle_words(const SideWalked& side) {
    return say("{1} inside the building", print_degrees(side.corner));
}

/// Without a line of words above each kind of answer.
float asked_height(const Ui& ui, const State& state, const SideWalked& side, const WalkDraft& draft,
                   float w) {
    const float angle = draft.corner == CornerAsked::other
                            ? ui.mm(gap_mm) + ui.paragraph_height(w, angle_words(side), Size::body)
                            : 0;
    return fields_height(ui, state) + ui.mm(gap_mm) + band_height(ui, draft.length.refused, w) +
           answers_height(ui, w) + angle;
}

/// `walked_below`: the walk comes after what is asked, since there is no room above it.
void draw_side_asked(Ui& ui, const State& state, const WalkedBody& preview, WalkDraft& draft,
                     Box body, bool walked_below) {
    const SideWalked& side = preview.sides.back();
    // Known before it is drawn, since rows that are broken anew beside a scroll bar would keep it.
    const float below = walked_below ? ui.mm(gap_mm + walked_mm_below) : 0;
    const float alone = asked_height(ui, state, side, draft, body.w);
    const bool headed = body.h >= alone + ui.mm(heads_mm);
    const bool fits = alone + below <= body.h + 1;
    Box list = ui.begin_scroll(
        "walk words", body,
        fits ? body.h
             : asked_height(ui, state, side, draft, body.w - ui.mm(scroll_bar_mm)) + below);
    list.h = 2 * (body.h + alone + below);
    take_top(list, draw_length_fields(ui, draft.length,
                                      {list.x, list.y, list.w, length_fields_height(ui)},
                                      tapes_of(state)) +
                       ui.mm(gap_mm));
    take_top(list, draw_band(ui, draft.length.refused, list));
    const auto head = [&](const Text& words) {
        if (headed) {  // else the answers say what is asked
            take_top(list,
                     ui.paragraph(list.x, list.y, list.w, words, Size::bold, ui.colours().soft) +
                         ui.mm(0.5F));
        }
    };
    head(say("{1} is", side.id));
    if (const auto kind = draw_kinds(ui, side.kind, list)) {
        draft.kind = *kind;
    }
    head(say("then the corner"));
    if (const auto corner = draw_corners(ui, draft.corner, list)) {
        draft.corner = *corner;
        draft.asks = *corner == CornerAsked::other ? WalkAsks::degrees : WalkAsks::length;
    }
    if (draft.corner == CornerAsked::other) {
        take_top(list, ui.paragraph(list.x, list.y, list.w, angle_words(side)) + ui.mm(gap_mm));
    }
    if (walked_below) {
        draw_walked(ui, state, preview, take_top(list, ui.mm(walked_mm_below)));
    }
    ui.end_scroll();
}

/// The plan angle of a corner that is neither outside nor inside square.
Wished draw_degrees(Ui& ui, const State& state, WalkDraft& draft) {
    const std::optional<Angle> corner = corner_of(draft);
    const bool fits = corner && *corner >= degrees(20) && *corner <= degrees(340);
    const Frame frame =
        open_frame(ui, state, say("The corner, inside the building"),
                   {way_back({"leave corner", say("Back to the walk")}),
                    {"keep corner", say("Keep this corner"), fits ? Look::primary : Look::off}},
                   {digit_keys, above_degrees_mm});
    const char key = draw_digit_keys(ui, frame.keys, true);
    if (key == '\b') {
        draft.degrees.resize(draft.degrees.empty() ? 0 : draft.degrees.size() - 1);
    } else if (key != 0 && draft.degrees.size() < degrees_most) {
        draft.degrees += key;
    }
    ui.text(frame.body.x, frame.body.y, glued(draft.degrees.empty() ? "…" : draft.degrees, "°"),
            Size::title);
    if (frame.tapped == "leave corner") {
        draft.corner = CornerAsked::outside;
        draft.asks = WalkAsks::length;
    } else if (frame.tapped == "keep corner" && fits) {
        draft.asks = WalkAsks::length;
    }
    return frame.wish;
}

BodyWalked fact_of(const WalkedBody& walk) { return {walk.id, walk.sides, walk.closed, walk.host}; }

Wished draw_walk_pitch(Ui& ui, const State& state, const WalkedBody& closed, WalkDraft& draft) {
    const PitchAsked asked =
        draw_pitch_page(ui, state, draft.pitch,
                        say_count("The roof closes: {1} side", "The roof closes: {1} sides",
                                  static_cast<std::int64_t>(closed.sides.size())),
                        closed);
    if (asked.frame.tapped == "leave") {
        draft.asks = closed.host ? last_asked(draft.host) : WalkAsks::length;
    } else if (asked.frame.tapped == "keep pitch" && asked.pitch) {
        return KeepAll{facts_of_walk(state.job, closed, asked.pitch, state.catalogue),
                       Where{Screen::roof, {}}};
    }
    return asked.frame.wish;
}

/// The walk in the upper part of the page, or beside what is asked, or below it.
void draw_walk_and_side(Ui& ui, const State& state, const WalkedBody& preview, WalkDraft& draft,
                        Box body) {
    const bool wide = body.w > ui.mm(wide_mm);
    const float asked = asked_height(ui, state, preview.sides.back(), draft, body.w) + ui.mm(1);
    const bool below = !wide && body.h < asked + ui.mm(walked_mm_least);
    if (!below) {
        draw_walked(ui, state, preview,
                    wide ? take_left(body, body.w * 0.45F) : take_top(body, body.h - asked));
        wide ? take_left(body, ui.mm(gap_mm)) : take_top(body, ui.mm(1));
    }
    draw_side_asked(ui, state, preview, draft, body, below);
}

/// The pages after the last side: where the roof lies, and its pitch.
std::optional<Wished> draw_after_sides(Ui& ui, const State& state, const WalkedBody& preview,
                                       const std::optional<WalkedBody>& closed, WalkDraft& draft) {
    const std::optional<WalkedBody> whole =
        draft.host.runs_in ? run_in_walk(state.job, preview) : closed;
    if (!whole) {
        draft.asks = WalkAsks::length;
        return {};
    }
    switch (draft.asks) {
        case WalkAsks::host:
            return draw_host(ui, state, draft);
        case WalkAsks::along:
        case WalkAsks::up:
        case WalkAsks::rise:
            return draw_host_length(ui, state, draft);
        case WalkAsks::pitch:
            return draw_walk_pitch(ui, state, on_host(*whole, draft.host, is_metric(state)), draft);
        case WalkAsks::length:
        case WalkAsks::degrees:
            break;
    }
    return {};
}

std::vector<Action> walk_actions(const State& state, const WalkedBody& walk,
                                 const WalkedBody& preview,
                                 const std::optional<WalkedBody>& closed) {
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (walk.sides.empty()) {
        actions.push_back({"shape", say("Start from a shape")});
    } else {
        actions.push_back({"one back", say("Take side {1} back", walk.sides.back().id)});
    }
    if (run_in_walk(state.job, preview)) {
        actions.push_back({"runs in", say("It runs into a roof")});
    }
    const bool comes_back = closed && closed->sides.size() == preview.sides.size();
    if (closed) {
        actions.push_back(
            {"close", say("Close the roof"), comes_back ? Look::primary : Look::plain});
    }
    if (!comes_back) {
        const bool is_said = preview.sides.back().length.has_value();
        actions.push_back({"next", say("Next side"), is_said ? Look::primary : Look::off});
    }
    return actions;
}

}  // namespace

Wished draw_walk(Ui& ui, const State& state, Drafts& drafts) {
    WalkDraft& draft = drafts.walk;
    const bool metric = is_metric(state);
    const WalkedBody walk = walk_under_way(state.job);
    if (draft.asks == WalkAsks::length) {
        take_typed(ui, draft.length, metric);
    }
    const WalkedBody preview = with_side(state.job, walk, draft, metric);
    const std::optional<WalkedBody> closed = closed_walk(state.job, preview);
    if (draft.asks == WalkAsks::degrees) {
        return draw_degrees(ui, state, draft);
    }
    if (const auto drawn = draw_after_sides(ui, state, preview, closed, draft)) {
        return *drawn;
    }
    const std::vector<Action> actions = walk_actions(state, walk, preview, closed);
    const Frame frame =
        open_frame(ui, state, say("Walk the roof · side {1}", preview.sides.back().id), actions,
                   {metric ? digit_keys : sixteenth_keys, above_length_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    draw_walk_and_side(ui, state, preview, draft, frame.body);
    if (frame.tapped == "next" && preview.sides.back().length) {
        wish = Keep{fact_of(preview), Where{Screen::walk, {}}};
    } else if (frame.tapped == "close") {
        draft.host = {};
        draft.host.lies_under = has_transition(*closed);
        draft.asks = hosts_for(state.job, walk).empty() ? WalkAsks::pitch : WalkAsks::host;
    } else if (frame.tapped == "runs in") {
        draft.host = {};
        draft.host.runs_in = true;
        draft.asks = WalkAsks::host;
    } else if (frame.tapped == "one back") {
        WalkedBody shorter = walk;
        shorter.sides.pop_back();
        wish = Keep{fact_of(shorter), Where{Screen::walk, {}}};
    } else if (frame.tapped == "shape") {
        wish = Go{{Screen::shape, {}}};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
