// The roof: drawn and listed with where each edge stands, what comes next, and how the sticks do.
#include <imgui.h>

#include <algorithm>

#include "engine/work/hook_doubt.h"
#include "field/screens/draw_roof_plan.h"
#include "field/screens/edge_view.h"
#include "field/screens/frame.h"
#include "field/screens/roof_ways.h"
#include "field/screens/screens.h"
#include "field/screens/status_mark.h"

namespace hemline {

namespace {

constexpr float row_mm = 17;
constexpr float low_mm = 75;  // a body as low scrolls whole
constexpr float words_part = 0.24F, words_part_missed = 0.42F;
constexpr float plan_part = 0.6F;  // of the list's height that the roof drawn takes, upright

/// Its readings, when they were made apart; empty: they were not.
std::string lengths_apart(const State& state, const EdgeWork& work) {
    std::string words;
    for (const Conflict& conflict : state.job.conflicts) {
        if (conflict.thing.subject != Subject::reading || conflict.thing.name != work.edge.id) {
            continue;
        }
        for (const RecordedReading& reading : work.readings) {
            if (std::count(conflict.sides.begin(), conflict.sides.end(), reading.id) > 0) {
                words += (words.empty() ? "" : " or ") + print_length(reading.length, state.marks);
            }
        }
    }
    return words;
}

std::string length_words(const State& state, const EdgeWork& work) {
    if (std::string apart = lengths_apart(state, work); !apart.empty()) {
        return apart;
    }
    const std::optional<Length> length = work.length(state.job.practice);
    if (length) {
        return print_length(*length, state.marks);
    }
    for (const RecordedReading& reading : work.readings) {
        if (reading.of == ReadingOf::edge && !reading.struck) {
            return print_length(reading.length, state.marks) + ", once";
        }
    }
    return "no reading";
}

/// What is wrong with an edge that is read and has its pitch; empty when nothing is.
std::string problem_on(const State& state, const std::string& edge) {
    for (const PlanProblem& problem : state.plan.problems) {
        if (problem.edge == edge && problem.severity == Severity::problem &&
            state.job.find(edge)->edge.pitch) {
            return problem.what;
        }
    }
    return "";
}

void draw_edge_row(Ui& ui, const State& state, const EdgeWork& work, Box row, Wish& wish) {
    const EdgeStatus status = status_on(state, work);
    if (ui.area("edge " + work.edge.id, row)) {
        wish.go = next_work_on(state, work).where;
    }
    const float radius = ui.mm(5.5F);
    const float cx = row.x + radius + ui.mm(1);
    draw_status_mark(ui, cx, row.mid_y(), radius, status, work.edge.id);
    const float x = row.x + 2 * radius + ui.mm(5);
    const float line = ui.line_height(Size::bold);
    const float top = row.mid_y() - line;
    const float w = row.right() - x;
    ui.text(x, top, ui.shortened(length_words(state, work), Size::bold, w), Size::bold);
    const std::string problem = problem_on(state, work.edge.id);
    const std::string under = std::string(spoken(status)) + " · " +
                              (problem.empty() ? std::string(spoken(work.edge.left)) + " to " +
                                                     std::string(spoken(work.edge.right))
                                               : "! " + problem);
    ui.text(x, top + line + ui.mm(0.5F), ui.shortened(under, Size::small, w), Size::small,
            Align::left, ui.colours().soft);
    ui.ink()->AddLine({row.x, row.bottom()}, {row.right(), row.bottom()}, ui.colours().hairline,
                      ui.mm(0.2F));
}

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

std::string trim_name(const State& state, const std::string& id) {
    const Trim* const trim = state.assets->catalogue.find(id);
    return trim == nullptr ? id : trim->name;
}

/// Returns the height used.
float draw_sticks(Ui& ui, const State& state, Box box) {
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, "Sticks still to open", Size::bold, ui.colours().soft);
    for (const Proof& proof : state.plan.proofs) {
        const std::string proved =
            proof.proved ? "proved fewest" : "at least " + std::to_string(proof.lower_bound);
        y += ui.paragraph(
            box.x, y, box.w,
            std::to_string(proof.sticks) + "  " + trim_name(state, proof.trim) + ", " + proved,
            Size::small);
        y += ui.mm(1);
    }
    y += ui.mm(1);
    y += ui.paragraph(box.x, y, box.w,
                      std::to_string(pieces_to_cut(state.plan)) + " pieces to cut, " +
                          std::to_string(state.job.sticks_opened) + " sticks opened, " +
                          std::to_string(offcuts_kept(state.job)) + " offcuts kept",
                      Size::small, ui.colours().soft);
    return y - box.y;
}

void draw_plan(Ui& ui, const State& state, Box box, Wish& wish) {
    const std::string touched = draw_roof_plan(ui, state, box);
    if (const EdgeWork* const work = edge_of(state, touched)) {
        wish.go = next_work_on(state, *work).where;
    }
}

void draw_next(Ui& ui, const State& state, const std::optional<NextWork>& next, Box& side) {
    const float top = side.y;
    float y = side.y;
    y += ui.paragraph(side.x, y, side.w, "Next", Size::bold, ui.colours().soft);
    y += ui.paragraph(
        side.x, y, side.w,
        next ? next->what
             : (state.job.edges.empty() ? "Add the first edge" : "Every edge is finished"),
        Size::title);
    y += ui.mm(5);
    take_top(side, y - top);
}

/// What comes next and the way to the sticks; then, in a list, all edges and how the sticks do.
void draw_list(Ui& ui, const State& state, const std::optional<NextWork>& next, Box body,
               bool plan_in_it, Wish& wish) {
    const bool low = body.h < ui.mm(low_mm);
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
    take_top(list, draw_band(ui, hook_doubt(state.job), list));
    for (const EdgeWork& work : state.job.edges) {
        draw_edge_row(ui, state, work, take_top(list, ui.mm(row_mm)), wish);
    }
    take_top(list, ui.mm(5));
    take_top(list, draw_sticks(ui, state, list));
    ui.end_scroll(list.y - top);
}

void draw_body(Ui& ui, const State& state, const std::optional<NextWork>& next, Box body,
               Wish& wish) {
    if (!ui.portrait() && state.outline) {
        Box left = take_left(body, body.w * 0.5F);
        take_left(body, ui.mm(6));
        const bool missed = state.outline->outline.state == OutlineState::misses;
        const Box words = take_bottom(left, left.h * (missed ? words_part_missed : words_part));
        take_bottom(left, ui.mm(1));
        draw_plan(ui, state, left, wish);
        ui.end_scroll(draw_roof_words(ui, state, ui.begin_scroll("outline words", words)));
    }
    draw_list(ui, state, next, body, ui.portrait() && state.outline, wish);
}

}  // namespace

Wish draw_roof(Ui& ui, const State& state) {
    Wish wish;
    const std::optional<NextWork> next = next_work(state);
    const Frame frame =
        open_frame(ui, state, state.job.name,
                   {{"jobs", "Jobs"},
                    {"add edge", "Add, change\nan edge"},
                    {"history", "Record,\nundo"},
                    {"by", "Held by\n" + state.by},
                    {"next", next ? next->label : "Next", next ? Look::primary : Look::off}});
    draw_body(ui, state, next, frame.body, wish);
    if (frame.tapped == "next" && next) {
        wish.go = next->where;
    } else if (frame.tapped == "jobs") {
        wish.go = Where{Place::jobs, {}};
    } else if (frame.tapped == "add edge") {
        wish.go = Where{Place::add_edge, {}};
    } else if (frame.tapped == "history") {
        wish.go = Where{Place::history, {}};
    } else if (frame.tapped == "by") {
        wish.go = Where{Place::person, {}};
    }
    return wish;
}

}  // namespace hemline
