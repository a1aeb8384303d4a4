// The roof: drawn and listed with the status of each edge, what comes next, and whether the sticks
// suffice.
#include <imgui.h>

#include <algorithm>

#include "engine/words/result.h"
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

constexpr float low_mm = 75;         // a body lower than this scrolls as a whole
constexpr float people_low_mm = 60;  // in a lower body people are below the edges
constexpr float lesson_bar_mm = 1.5F, lesson_gap_mm = 2.5F;
constexpr float closer_plan_mm_least = 58;  // with the way back below it
constexpr float ways_part_most = 0.35F;     // higher ones scroll with the list
constexpr float words_part_missed = 0.36F;
constexpr float plan_part =
    0.62F;  // of the width that the roof drawn takes, or upright of the height

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

/// Whether something read cannot be right.
bool is_missed(const State& state) {
    const auto fails = [](const BodyOnJob& body) { return body.problem.has_value(); };
    return state.outline && state.outline->outline.state == OutlineState::misses &&
           (state.bodies.empty() || std::any_of(state.bodies.begin(), state.bodies.end(), fails));
}

/// What keeps a roof from being worked out, or what it lacks; else whether the rows close.
float draw_state(Ui& ui, const State& state, Box box) {
    const float top = box.y;
    for (const BodyOnJob& body : state.bodies) {
        if (body.problem && !is_missed(state)) {  // the rows say it, with what would close them
            take_top(box, draw_band(ui, said(*body.problem), box));
        }
        if (!body.without_place.empty()) {
            std::vector<Text> names;
            for (const std::string& edge : body.without_place) {
                names.emplace_back(edge);
            }
            take_top(box, ui.paragraph(box.x, box.y, box.w,
                                       say("The roof has no such edge: {1}.", joined(names, ", ")),
                                       Size::small));
        }
    }
    if (state.outline && (state.bodies.empty() || is_missed(state))) {
        take_top(box, draw_roof_words(ui, state, box));
    }
    return box.y - top;
}

/// What the readings of inner edges teach of the roofs: a doubt, so not in the color of danger.
float draw_lessons(Ui& ui, const State& state, Box box) {
    const float top = box.y;
    for (const BodyOnJob& body : state.bodies) {
        if (body.lesson.empty()) {
            continue;
        }
        const float bar = ui.mm(lesson_bar_mm), beside = ui.mm(lesson_gap_mm);
        const float h =
            ui.paragraph(box.x + bar + beside, box.y, box.w - bar - beside, body.lesson);
        ui.ink()->AddRectFilled({box.x, box.y}, {box.x + bar, box.y + h}, ui.colours().chalk);
        take_top(box, h + ui.mm(gap_mm));
    }
    return box.y - top;
}

float lessons_height(const Ui& ui, const State& state, float w) {
    float h = 0;
    for (const BodyOnJob& body : state.bodies) {
        if (!body.lesson.empty()) {
            h += ui.mm(gap_mm) + ui.paragraph_height(w - ui.mm(lesson_bar_mm + lesson_gap_mm),
                                                     body.lesson, Size::body);
        }
    }
    return h;
}

bool is_drawn(const State& state) { return state.outline || !state.bodies.empty(); }

void draw_plan(Ui& ui, const State& state, RoofDraft& draft, const std::optional<NextWork>& next,
               Box box, Wished& wish) {
    const std::string touched =
        draw_roof_plan(ui, state, draft, next ? next->where.edge : std::string(), box);
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
    y += ui.paragraph(side.x, y, side.w, next ? next->what : say("Every edge is finished"),
                      Size::title);
    if (state.way == Way::tick_off) {
        y += ui.paragraph(side.x, y, side.w, glance_words(state)) + ui.mm(1);
    }
    y += ui.mm(3);
    take_top(side, y - top);
}

/// A walk under way goes first, and a roof without edges is walked.
std::optional<NextWork> next_on_roof(const State& state) {
    const Where walk{Screen::walk, {}};
    for (const BodyOnJob& body : state.bodies) {
        if (!body.closed) {
            return NextWork{walk, say("Next side"), say("Walk the roof")};
        }
    }
    if (state.job.edges.empty()) {
        return NextWork{walk, say("Walk the roof"), say("Walk the roof, or add an edge")};
    }
    return next_work(state);
}

/// How far down the list its next edge is, so that it opens there.
OpensAt next_in_list(const Ui& ui, const State& state, const std::optional<NextWork>& next) {
    const auto& edges = state.job.edges;
    const auto found = std::find_if(edges.begin(), edges.end(), [&](const EdgeWork& work) {
        return next && work.edge.id == next->where.edge;
    });
    const bool in_order = state.way != Way::tick_off && found != edges.end();
    return {in_order ? ui.mm(edge_row_mm) * static_cast<float>(found - edges.begin()) : 0};
}

/// What comes next and the way to the sticks; then, in a list, all edges and whether the sticks
/// suffice. On a low page all of it is the list, the drawing first.
void draw_list(Ui& ui, const State& state, Drafts& drafts, const std::optional<NextWork>& next,
               Box body, bool plan_in_it, Wished& wish) {
    const bool low =
        body.h < ui.mm(low_mm) || ways_height(ui, state, body.w) > body.h * ways_part_most;
    const bool people_below = body.h < ui.mm(people_low_mm);
    if (!low) {
        draw_next(ui, state, next, body);
        draw_ways(ui, state, body, wish);
    }
    // Another job's list is another list.
    const OpensAt opens_at = low || plan_in_it ? OpensAt() : next_in_list(ui, state, next);
    Box list = ui.begin_scroll("edges of " + state.job.name, body, opens_at);
    const float top = list.y;
    if (plan_in_it) {
        const float h = std::max(ui.mm(roof_plan_mm_least), body.h * plan_part);
        draw_plan(ui, state, drafts.roof, next, take_top(list, h), wish);
        take_top(list, draw_lessons(ui, state, list));
        take_top(list, draw_state(ui, state, list) + ui.mm(gap_mm));
    }
    if (!plan_in_it && body.h < ui.mm(low_mm)) {
        take_top(list, draw_lessons(ui, state, list));
    }
    if (low) {
        draw_next(ui, state, next, list);
        draw_ways(ui, state, list, wish);
    }
    take_top(list, draw_band(ui, clocks_told(state), list));
    take_top(list, draw_band(ui, hook_doubt(state.job), list));
    for (const Problem& problem : state.job.left_out.all()) {
        take_top(list, draw_band(ui, said(problem), list));
    }
    draw_edge_rows(ui, state, list, wish);
    take_top(list, ui.mm(5));
    if (people_below && !plan_in_it && is_drawn(state)) {
        draw_people(ui, state, list, wish);
    }
    if (!plan_in_it && is_drawn(state) && !is_missed(state)) {
        take_top(list, draw_state(ui, state, list) + ui.mm(5));
    }
    take_top(list, draw_sticks(ui, state, list));
    ui.end_scroll(list.y - top);
}

void draw_body(Ui& ui, const State& state, Drafts& drafts, const std::optional<NextWork>& next,
               Box body, Wished& wish) {
    if (ui.portrait() || !is_drawn(state)) {
        draw_people(ui, state, body, wish);
        // A finger that moves the list does not move what is looked at closer too.
        const bool plan_above = is_drawn(state) && drafts.roof.closer.times > 0;
        if (plan_above) {
            const float h = std::max(ui.mm(closer_plan_mm_least), body.h * plan_part);
            draw_plan(ui, state, drafts.roof, next, take_top(body, h), wish);
            take_top(body, ui.mm(gap_mm));
        }
        draw_list(ui, state, drafts, next, body, is_drawn(state) && !plan_above, wish);
        return;
    }
    Box left = take_left(body, body.w * plan_part);
    take_left(body, ui.mm(6));
    if (body.h >= ui.mm(people_low_mm)) {
        draw_people(ui, state, left, wish);
    }
    if (is_missed(state)) {
        const Box words = take_bottom(left, left.h * words_part_missed);
        take_bottom(left, ui.mm(1));
        ui.end_scroll(draw_state(ui, state, ui.begin_scroll("outline words", words)));
    }
    if (const float h = lessons_height(ui, state, left.w); body.h >= ui.mm(low_mm) && h > 0) {
        draw_lessons(ui, state, take_bottom(left, h));
    }
    draw_plan(ui, state, drafts.roof, next, left, wish);
    draw_list(ui, state, drafts, next, body, false, wish);
}

}  // namespace

Wished draw_roof(Ui& ui, const State& state, Drafts& drafts) {
    const std::optional<NextWork> next = next_on_roof(state);
    const Frame frame =
        open_frame(ui, state, Text(state.job.name),
                   {way_back({"jobs", say("Jobs")}),
                    {"add edge", say("Add, change an edge")},
                    {"history", say("Record, undo")},
                    {"by", say("Somebody else")},
                    other_language(state),
                    {"next", next ? next->label : say("Next"), next ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    draw_body(ui, state, drafts, next, frame.body, wish);
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
