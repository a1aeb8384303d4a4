#include "field/screens/edges/edge_page.h"

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "field/screens/edges/draw_edge_sketch.h"
#include "field/screens/edges/edge_question.h"
#include "field/screens/page/frame.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float row_mm = 11;
constexpr float apart_mm = 13;  // between the list and the button that takes the edge off

/// Everything said of it, in rows to touch.
void draw_all(Ui& ui, const State& state, const EdgeWork* work, EdgeDraft& draft, Box body) {
    take_top(body, draw_band(ui, draft.refused, body));
    if (has_run(draft.edge.kind) && body.h > ui.mm(edge_page_low_mm)) {
        draw_edge_sketch(ui, {draft.edge}, take_top(body, ui.mm(edge_sketch_mm)));
        take_top(body, ui.mm(gap_mm));
    }
    Box list = ui.begin_scroll("said of the edge", body);
    const float top = list.y;
    const std::vector<EdgeField> fields = fields_of(draft.edge, state.catalogue);
    const std::size_t wide = ui.portrait() ? 1 : 2;
    for (std::size_t i = 0; i < fields.size(); i += wide) {
        const auto places =
            columns(take_top(list, ui.mm(row_mm)), static_cast<int>(wide), ui.mm(gap_mm));
        for (std::size_t k = i; k < std::min(i + wide, fields.size()); ++k) {
            const Text name = name_of(fields[k], draft.edge);
            const Text words = glued(name, ": ", answer_of(fields[k], draft.edge, state.catalogue));
            if (!ui.button("ask " + name.english(), words, places[k - i], Look::plain,
                           Size::bold)) {
                continue;
            }
            if (work != nullptr && fields[k] == EdgeField::name) {
                draft.refused = say("An edge keeps its name: its readings and cuts are under it.");
            } else {
                draft.refused =
                    work == nullptr ? Text() : held_by_metal(*work, state.plan, fields[k]);
                draft.asked = draft.refused.empty() ? std::optional(fields[k]) : std::nullopt;
            }
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
}

/// The side fitted first is said against the wind, or against what was said so before: that is a
/// word of its own, since an edge's left stands for nothing said.
bool says_first(const State& state, const EdgeWork& work, const Edge& draft) {
    const Site& site = state.job.practice.site;
    return draft.first != work.edge.first && (site.wind_from || site.firsts.count(draft.id) > 0);
}

}  // namespace

Text edge_page_title(const State& state, const Edge& edge) {
    return state.where.edge.empty() ? say("New edge · {1}", title_of(edge))
                                    : say("Change · {1}", title_of(edge));
}

bool draw_edge_page(Ui& ui, const State& state, EdgeDraft& draft, Wished& wish) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (work != nullptr) {
        draft.edge.pitch = work->edge.pitch;  // have their own screens
        draft.edge.looks = work->edge.looks;
        const bool changed = !(draft.edge == work->edge);
        actions.push_back({"take off", say("Take it off"), Look::plain, true});
        actions.push_back({"keep edge", say("Keep it so"), changed ? Look::primary : Look::off});
    } else {
        actions.push_back({"before", say("Back")});
        actions.push_back(
            {"keep edge", say("Add this {1}", spoken(draft.edge.kind)), Look::primary});
    }
    const Frame frame = open_frame(ui, state, edge_page_title(state, draft.edge), actions);
    wish = frame.wish;
    Box body = frame.body;
    take_bottom(body, work == nullptr ? 0 : ui.mm(apart_mm - gap_mm));
    draw_all(ui, state, work, draft, body);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "take off" && has_metal(state.job, *work)) {
        draft.refused =
            say("Metal is cut or counted for it, so it stays on the job. What is wrong can be "
                "changed.");
    } else if (frame.tapped == "take off") {
        wish = Keep{EdgeTakenOff{draft.edge.id}, Where{Screen::roof, {}}};
    } else if (frame.tapped == "keep edge") {
        if (work != nullptr && says_first(state, *work, draft.edge)) {
            Edge rest = draft.edge;
            rest.first = work->edge.first;
            const bool is_all = rest == work->edge;
            wish = Keep{RuleSet{"first." + draft.edge.id, std::string(word_of(draft.edge.first))},
                        is_all ? Where{Screen::roof, {}} : state.where,
                        {},
                        !is_all};
            return false;
        }
        const Screen begins = has_run(draft.edge.kind) ? Screen::reading : Screen::steps;
        wish = Keep{EdgeAdded{work == nullptr ? draft.edge : said_anew(*work, draft.edge)},
                    work == nullptr ? Where{begins, draft.edge.id} : Where{Screen::roof, {}}};
    }
    return frame.tapped == "before";
}

}  // namespace hemline
