// An edge that is added, or one that is there changed: one question after the other, then all that
// is said of it, each thing to be touched and said anew.
#include <algorithm>
#include <string>
#include <vector>

#include "engine/roof/edge_shape.h"
#include "field/screens/edges/draw_edge_sketch.h"
#include "field/screens/edges/edge_keyed.h"
#include "field/screens/edges/edge_page.h"
#include "field/screens/edges/edge_question.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float row_mm = 11, gap_mm = 3;

/// The first letter not yet used, I and O left out: A…Z, then A2, B2, …
std::string free_id(const Job& job) {
    for (int round = 1; round < 100; ++round) {
        for (const char letter : std::string("ABCDEFGHJKLMNPQRSTUVWXYZ")) {
            const std::string id =
                std::string(1, letter) + (round == 1 ? "" : std::to_string(round));
            if (job.find(id) == nullptr) {
                return id;
            }
        }
    }
    return "edge";
}

/// What is asked after it of an edge that is new: its kind and ends, and where two pitches meet by
/// their kind the second. All else is as usual until it is touched.
std::optional<EdgeField> asked_after(EdgeField field, const Edge& edge) {
    switch (field) {
        case EdgeField::kind:
            return has_run(edge.kind) ? std::optional(EdgeField::left) : std::nullopt;
        case EdgeField::left:
            return EdgeField::right;
        case EdgeField::right:
            if (facts_of(edge.kind).fold == FoldFrom::change_of_pitch) {
                return EdgeField::other_pitch;
            }
            break;
        default:
            break;
    }
    return {};
}

void go_on(EdgeDraft& draft) {
    draft.asked = draft.one_by_one ? asked_after(*draft.asked, draft.edge) : std::nullopt;
    draft.one_by_one = draft.one_by_one && draft.asked.has_value();
    draft.refused = {};
    draft.number.number.clear();
    draft.name.letters.clear();
}

/// The edge with the end that is asked after, where there is room.
void draw_end_asked(Ui& ui, const EdgeDraft& draft, Box& body) {
    const bool left = draft.asked == EdgeField::left;
    if ((left || draft.asked == EdgeField::right) && body.h > ui.mm(edge_page_low_mm)) {
        const EdgeSketch sketch{draft.edge, left ? Side::left : Side::right, !left,
                                left && !draft.one_by_one};
        draw_edge_sketch(ui, sketch, take_top(body, ui.mm(edge_sketch_mm)));
        take_top(body, ui.mm(gap_mm));
    }
}

void draw_question(Ui& ui, const State& state, EdgeDraft& draft, Wished& wish) {
    const EdgeField field = *draft.asked;
    const Catalogue& catalogue = state.catalogue;
    const Text stands = answer_of(field, draft.edge, catalogue);
    const bool keyed = is_keyed(field);
    const Result<Edge> as_keyed =
        keyed ? edge_keyed(field, state, draft) : Result<Edge>(draft.edge);
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (field == EdgeField::kind && draft.one_by_one && !state.job.edges.empty()) {
        actions.push_back({"change one", say("Change one that is there")});
    }
    if (keyed) {
        actions.push_back({"go on", say("Leave it: {1}", stands)});
        actions.push_back({"keep number", say("Keep it"), as_keyed ? Look::primary : Look::off});
    } else {
        actions.push_back({"go on", say("Go on: {1}", stands), Look::primary});
    }
    const Frame frame =
        open_frame(ui, state, edge_page_title(state, draft.edge), actions, keys_for(field));
    wish = frame.wish;
    Box body = frame.body;
    const Size size = keyed ? Size::bold : Size::title;
    take_top(body, ui.paragraph(body.x, body.y, body.w, question_of(field, draft.edge), size) +
                       ui.mm(gap_mm));
    draw_end_asked(ui, draft, body);
    std::optional<Edge> answered;
    if (keyed) {
        answered = draw_edge_keyed(ui, field, state, draft, frame, body);
    } else {
        const std::vector<EdgeAnswer> answers = answers_to(field, draft.edge, catalogue);
        const bool long_words = field == EdgeField::trim || field == EdgeField::seam;
        if (const auto* touched = draw_edge_answers(ui, answers, stands, long_words, body)) {
            answered = touched->edge;
        }
    }
    if (frame.tapped == "keep number" && as_keyed) {
        answered = *as_keyed;
    }
    if (answered || frame.tapped == "go on") {
        draft.edge = answered.value_or(draft.edge);
        go_on(draft);
    } else if (frame.tapped == "change one") {
        draft.choosing = true;
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
}

/// Which of the edges that are there.
void draw_which(Ui& ui, const State& state, Wished& wish) {
    const Frame frame =
        open_frame(ui, state, say("Change · which edge?"), {{"leave", say("Roof"), Look::primary}});
    wish = frame.wish;
    Box list = ui.begin_scroll("which edge", frame.body);
    const float top = list.y;
    const int wide = ui.portrait() ? 2 : 3;
    const auto& edges = state.job.edges;
    for (std::size_t i = 0; i < edges.size();) {
        for (const Box& place : columns(take_top(list, ui.mm(row_mm)), wide, ui.mm(gap_mm))) {
            if (i < edges.size() &&
                ui.button("change " + edges[i].edge.id, title_of(edges[i].edge), place)) {
                wish = Go{{Screen::add_edge, edges[i].edge.id}};
            }
            ++i;
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
}

}  // namespace

Wished draw_add_edge(Ui& ui, const State& state, Drafts& drafts) {
    EdgeDraft& draft = drafts.edge;
    Wished wish;
    const bool is_new = state.where.edge.empty();
    if (is_new && (draft.edge.id.empty() || edge_of(state, draft.edge.id) != nullptr)) {
        draft.edge.id = free_id(state.job);  // the first one, or another tablet took it meanwhile
    }
    if (draft.choosing) {
        draw_which(ui, state, wish);
    } else if (draft.asked) {
        draw_question(ui, state, draft, wish);
    } else {
        draw_edge_page(ui, state, draft, wish);
    }
    return wish;
}

}  // namespace hemline
