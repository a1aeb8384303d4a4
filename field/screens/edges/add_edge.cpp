// Adding an edge, or changing an existing edge: one question after the other, then everything said
// of it, each of which a touch changes.
#include <algorithm>
#include <string>
#include <vector>

#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/plane_panels.h"
#include "field/screens/edges/draw_edge_sketch.h"
#include "field/screens/edges/edge_keyed.h"
#include "field/screens/edges/edge_page.h"
#include "field/screens/edges/edge_question.h"
#include "field/screens/edges/trim_choice.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/plane_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float kind_row_mm = 11;

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

/// What is asked of a new edge, one after the other: its kind and ends, and, for kinds where two
/// pitches meet, the second pitch. Everything else has its usual value until it is touched.
std::vector<EdgeField> first_questions(const Edge& edge) {
    std::vector<EdgeField> asked = {EdgeField::kind};
    if (has_run(edge.kind)) {
        asked.insert(asked.end(), {EdgeField::left, EdgeField::right});
        if (facts_of(edge.kind).fold == FoldFrom::change_of_pitch) {
            asked.push_back(EdgeField::other_pitch);
        }
    }
    return asked;
}

/// Its number among them; their count when all of it is shown.
std::size_t number_of(const EdgeDraft& draft, const std::vector<EdgeField>& asked) {
    const auto here =
        draft.asked ? std::find(asked.begin(), asked.end(), *draft.asked) : asked.end();
    return static_cast<std::size_t>(here - asked.begin());
}

void ask(EdgeDraft& draft, std::optional<EdgeField> field) {
    draft.asked = field;
    draft.one_by_one = draft.one_by_one && field.has_value();
    draft.refused = {};
}

/// What was keyed in for another field is no answer to this one.
void key_for(EdgeDraft& draft, std::optional<EdgeField> field) {
    if (draft.keyed != field) {
        draft.keyed = field;
        draft.number.number.clear();
        draft.name.letters.clear();
    }
}

void answer(EdgeDraft& draft, const Edge& answered) {
    const bool is_other_kind = answered.kind != draft.edge.kind;
    draft.edge = answered;
    key_for(draft, std::nullopt);
    if (!draft.one_by_one) {
        return ask(draft, std::nullopt);
    }
    const std::vector<EdgeField> asked = first_questions(draft.edge);
    const std::size_t next = number_of(draft, asked) + 1;
    const int so_far = is_other_kind ? 1 : std::max(draft.answered, static_cast<int>(next));
    draft.answered = so_far;
    ask(draft, next < asked.size() ? std::optional(asked[next]) : std::nullopt);
}

/// To the question before, or from the only one back to all that is said; every answer stands.
void go_back(EdgeDraft& draft) {
    if (!draft.one_by_one && draft.asked) {
        return ask(draft, std::nullopt);
    }
    const std::vector<EdgeField> asked = first_questions(draft.edge);
    const std::size_t here = number_of(draft, asked);
    draft.one_by_one = true;
    ask(draft, asked[here == 0 ? 0 : here - 1]);
}

/// The answer that is shown as given: none before a touch gave it, where the kind has no usual end.
Text stands_for(const EdgeDraft& draft, const Catalogue& catalogue) {
    const std::vector<EdgeField> asked = first_questions(draft.edge);
    const bool is_given =
        !draft.one_by_one || static_cast<int>(number_of(draft, asked)) < draft.answered;
    const bool is_usual = draft.asked == EdgeField::left    ? draft.edge.left != End::open
                          : draft.asked == EdgeField::right ? draft.edge.right != End::open
                                                            : false;
    return is_given || is_usual ? answer_of(*draft.asked, draft.edge, catalogue) : Text();
}

std::vector<Action> actions_for(const State& state, const EdgeDraft& draft, bool can_keep) {
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (draft.one_by_one && draft.asked == EdgeField::kind) {
        if (state.job.edges.empty()) {
            actions.push_back({"walk", say("Walk the roof")});
        } else {
            actions.push_back({"change one", say("Change one that is there")});
            if (!state.job.bodies.empty()) {
                actions.push_back({"walk", say("Walk another roof")});
            }
        }
    } else {
        actions.push_back({"before", say("Back")});
    }
    if (is_keyed(*draft.asked)) {
        actions.push_back({"keep number", say("Keep it"), can_keep ? Look::primary : Look::off});
    }
    return actions;
}

/// Draws the edge with the end being asked about, where there is room.
void draw_end_asked(Ui& ui, const EdgeDraft& draft, Box& body) {
    const bool left = draft.asked == EdgeField::left;
    if ((left || draft.asked == EdgeField::right) && body.h > ui.mm(edge_page_low_mm)) {
        const EdgeSketch sketch{draft.edge, left ? Side::left : Side::right, !left,
                                left && !draft.one_by_one};
        draw_edge_sketch(ui, sketch, take_top(body, ui.mm(edge_sketch_mm)));
        take_top(body, ui.mm(gap_mm));
    }
}

bool is_panels(const EdgeAnswer& answer) { return answer.edge.kind == EdgeKind::panels; }

void draw_question(Ui& ui, const State& state, EdgeDraft& draft, Wished& wish) {
    const EdgeField field = *draft.asked;
    const Catalogue& catalogue = state.catalogue;
    const Text stands = stands_for(draft, catalogue);
    const bool keyed = is_keyed(field);
    if (keyed) {
        key_for(draft, field);
    }
    const Result<Edge> as_keyed =
        keyed ? edge_keyed(field, state, draft) : Result<Edge>(draft.edge);
    const Frame frame = open_frame(ui, state, edge_page_title(state, draft.edge),
                                   actions_for(state, draft, as_keyed.ok()), keys_for(field));
    wish = frame.wish;
    Box body = frame.body;
    const Size size = keyed ? Size::bold : Size::title;
    take_top(body, ui.paragraph(body.x, body.y, body.w, question_of(field, draft.edge), size) +
                       ui.mm(gap_mm));
    const Text more = field == EdgeField::trim ? under_or_over(draft.edge, catalogue) : Text();
    if (!more.empty()) {
        take_top(body, ui.paragraph(body.x, body.y, body.w, more) + ui.mm(gap_mm));
    }
    draw_end_asked(ui, draft, body);
    std::optional<Edge> answered;
    if (keyed) {
        answered = draw_edge_keyed(ui, field, state, draft, frame, body);
    } else {
        std::vector<EdgeAnswer> answers = answers_to(field, draft.edge, catalogue);
        if (!may_lay_panels(state) || !state.where.edge.empty()) {
            answers.erase(std::remove_if(answers.begin(), answers.end(), is_panels), answers.end());
        }
        const bool long_words = field == EdgeField::trim || field == EdgeField::seam;
        if (const auto* touched = draw_edge_answers(ui, answers, stands, long_words, body)) {
            answered = touched->edge;
        }
    }
    if (frame.tapped == "keep number" && as_keyed) {
        answered = *as_keyed;
    }
    if (answered && answered->kind == EdgeKind::panels) {  // of every plane at once
        wish = KeepAll{lacking_panels(state.job, state.bodies), Where{Screen::roof, {}}};
    } else if (answered) {
        answer(draft, *answered);
    } else if (frame.tapped == "before") {
        go_back(draft);
    } else if (frame.tapped == "change one") {
        draft.choosing = true;
    } else if (frame.tapped == "walk") {
        wish = Go{{Screen::walk, {}}};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
}

/// Which of the existing edges.
void draw_which(Ui& ui, const State& state, EdgeDraft& draft, Wished& wish) {
    const Frame frame =
        open_frame(ui, state, say("Change · which edge?"),
                   {{"leave", say("Roof")}, {"before", say("Back"), Look::primary}});
    wish = frame.wish;
    Box list = ui.begin_scroll("which edge", frame.body);
    const float top = list.y;
    const int wide = ui.portrait() ? 2 : 3;
    const auto& edges = state.job.edges;
    for (std::size_t i = 0; i < edges.size();) {
        for (const Box& place : columns(take_top(list, ui.mm(kind_row_mm)), wide, ui.mm(gap_mm))) {
            if (i < edges.size() &&
                ui.button("change " + edges[i].edge.id, title_of(edges[i].edge), place)) {
                draft.choosing = false;
                wish = Go{{Screen::add_edge, edges[i].edge.id}};
            }
            ++i;
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (!frame.tapped.empty()) {
        draft.choosing = false;
    }
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
        draft.edge.id = free_id(state.job);  // another tablet may have used the name
    }
    if (draft.choosing) {
        draw_which(ui, state, draft, wish);
    } else if (draft.asked) {
        draw_question(ui, state, draft, wish);
    } else if (draw_edge_page(ui, state, draft, wish)) {
        go_back(draft);
    }
    return wish;
}

}  // namespace hemline
