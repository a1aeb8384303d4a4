// The roof: drawn and listed with where each edge stands, what comes next, and how the sticks do.
#include <imgui.h>

#include <algorithm>

#include "engine/work/hook_doubt.h"
#include "field/screens/page/frame.h"
#include "field/screens/roof/draw_roof_plan.h"
#include "field/screens/roof/roof_people.h"
#include "field/screens/roof/roof_rows.h"
#include "field/screens/roof/roof_ways.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/pool_view.h"
#include "field/state/told.h"

namespace hemline {

namespace {

constexpr float low_mm = 75;         // a body as low scrolls whole
constexpr float people_low_mm = 60;  // in one as low people lie below the edges
constexpr float words_part = 0.24F, words_part_missed = 0.42F;
constexpr float plan_part = 0.6F;  // of the list's height that the roof drawn takes, upright

std::int64_t pieces_to_cut(const Plan& plan) {
    std::int64_t left = 0;
    for (const Run& run : plan.runs) {
        for (const PlannedPiece& piece : run.pieces) {
            left += piece.is_cut ? 0 : 1;
        }
    }
    return left;
}

std::int64_t offcuts_kept(const Job& job) {
    return std::count_if(job.offcuts.begin(), job.offcuts.end(), [&](const Offcut& offcut) {
        return offcut.length >= job.practice.offcut_kept;
    });
}

/// Returns the height used.
float draw_sticks(Ui& ui, const State& state, Box box) {
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, say("Sticks still to open"), Size::bold, ui.colours().soft);
    for (const Proof& proof : state.plan.proofs) {
        const Text proved =
            proof.proved ? say("proved fewest") : say("at least {1}", proof.lower_bound);
        y += ui.paragraph(box.x, y, box.w,
                          glued(proof.sticks, "  ", trim_name(state, proof.trim), ", ", proved),
                          Size::small);
        y += ui.mm(1);
    }
    y += ui.mm(1);
    y += ui.paragraph(
        box.x, y, box.w,
        say("{1} pieces to cut, {2} sticks opened, {3} drops kept", pieces_to_cut(state.plan),
            state.job.sticks_opened, offcuts_kept(state.job)),
        Size::small, ui.colours().soft);
    return y - box.y;
}

/// Something read cannot be right.
bool is_missed(const State& state) { return state.outline->outline.state == OutlineState::misses; }

void draw_plan(Ui& ui, const State& state, Box box, Wished& wish) {
    const std::string touched = draw_roof_plan(ui, state, box);
    if (const EdgeWork* const work = edge_of(state, touched)) {
        wish = Go{opened(state, *work)};
    }
}

void draw_next(Ui& ui, const State& state, const std::optional<NextWork>& next, Box& side) {
    const float top = side.y;
    float y = side.y;
    if (state.way != Way::tick_off) {
        y += ui.paragraph(side.x, y, side.w, say("Next"), Size::bold, ui.colours().soft);
    }
    y += ui.paragraph(side.x, y, side.w,
                      next ? next->what
                           : (state.job.edges.empty() ? say("Add the first edge")
                                                      : say("Every edge is finished")),
                      Size::title);
    if (state.way == Way::tick_off) {
        y += ui.paragraph(side.x, y, side.w, glance_words(state)) + ui.mm(1);
    }
    y += ui.mm(3);
    take_top(side, y - top);
}

/// What comes next and the way to the sticks; then, in a list, all edges and how the sticks do.
void draw_list(Ui& ui, const State& state, const std::optional<NextWork>& next, Box body,
               bool plan_in_it, Wished& wish) {
    const bool low = body.h < ui.mm(low_mm), people_below = body.h < ui.mm(people_low_mm);
    if (!low) {
        draw_next(ui, state, next, body);
        draw_ways(ui, state, body, wish);
    }
    Box list = ui.begin_scroll("edges", body);
    const float top = list.y;
    if (low) {
        draw_next(ui, state, next, list);
        draw_ways(ui, state, list, wish);
    }
    if (plan_in_it) {
        const float h = std::max(ui.mm(roof_plan_mm_least), body.h * plan_part);
        draw_plan(ui, state, take_top(list, h), wish);
        take_top(list, draw_roof_words(ui, state, list) + ui.mm(2));
    }
    take_top(list, draw_band(ui, clocks_told(state), list));
    take_top(list, draw_band(ui, hook_doubt(state.job), list));
    for (const Problem& problem : state.job.left_out.all()) {
        take_top(list, draw_band(ui, said(problem), list));
    }
    draw_edge_rows(ui, state, list, wish);
    take_top(list, ui.mm(5));
    if (people_below && !plan_in_it && state.outline) {
        draw_people(ui, state, list, wish);
    }
    if (low && !plan_in_it && state.outline && !is_missed(state)) {
        take_top(list, draw_roof_words(ui, state, list) + ui.mm(5));
    }
    take_top(list, draw_sticks(ui, state, list));
    ui.end_scroll(list.y - top);
}

void draw_body(Ui& ui, const State& state, const std::optional<NextWork>& next, Box body,
               Wished& wish) {
    if (ui.portrait() || !state.outline) {
        draw_people(ui, state, body, wish);
        draw_list(ui, state, next, body, state.outline.has_value(), wish);
        return;
    }
    Box left = take_left(body, body.w * 0.5F);
    take_left(body, ui.mm(6));
    if (body.h >= ui.mm(people_low_mm)) {
        draw_people(ui, state, left, wish);
    }
    const bool missed = is_missed(state);
    if (missed || body.h >= ui.mm(low_mm)) {  // else the roof takes the room
        const Box words = take_bottom(left, left.h * (missed ? words_part_missed : words_part));
        take_bottom(left, ui.mm(1));
        ui.end_scroll(draw_roof_words(ui, state, ui.begin_scroll("outline words", words)));
    }
    draw_plan(ui, state, left, wish);
    draw_list(ui, state, next, body, false, wish);
}

}  // namespace

Wished draw_roof(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const std::optional<NextWork> next = next_work(state);
    const Frame frame =
        open_frame(ui, state, Text(state.job.name),
                   {{"jobs", say("Jobs")},
                    {"add edge", say("Add, change an edge")},
                    {"history", say("Record, undo")},
                    {"by", say("Somebody else")},
                    other_language(state),
                    {"next", next ? next->label : say("Next"), next ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    draw_body(ui, state, next, frame.body, wish);
    if (frame.tapped == "next" && next) {
        wish = Go{next->where};
    } else if (frame.tapped == "jobs") {
        wish = Go{{Screen::jobs, {}}};
    } else if (frame.tapped == "add edge") {
        wish = Go{{Screen::add_edge, {}}};
    } else if (frame.tapped == "history") {
        wish = Go{{Screen::history, {}}};
    } else if (frame.tapped == "by") {
        wish = Go{{Screen::person, {}}};
    }
    return wish;
}

}  // namespace hemline
