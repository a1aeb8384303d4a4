// What two tablets made of one thing apart: its sides with value, person, tablet and time, what
// waits for it, and which is to stand.
#include <algorithm>
#include <string>

#include "field/screens/draw_side.h"
#include "field/screens/edge_view.h"
#include "field/screens/frame.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr float gap_mm = 3, columns_mm = 150;

/// Those to be shown: of the edge, or all; those that nobody can pick come last.
std::vector<const Conflict*> conflicts_shown(const State& state) {
    std::vector<const Conflict*> shown;
    const std::string& edge = state.where.edge;
    for (const bool number_twice : {false, true}) {
        for (const Conflict& conflict : state.job.conflicts) {
            const bool wanted = edge.empty() || is_on(conflict.thing, edge) ||
                                conflict.thing.subject == Subject::rule;
            if (wanted && conflict.number_twice == number_twice) {
                shown.push_back(&conflict);
            }
        }
    }
    return shown;
}

/// The events of all sides; a number used twice gives both.
std::vector<const Event*> sides_of(const State& state, const Conflict& conflict) {
    std::vector<const Event*> sides;
    for (const Event& event : state.events) {
        if (std::count(conflict.sides.begin(), conflict.sides.end(), event.id) > 0) {
            sides.push_back(&event);
        }
    }
    return sides;
}

Text waits_words(const Thing& thing) {
    switch (thing.subject) {
        case Subject::job:
            return say("The job's name is one of them until then.");
        case Subject::none:
            return say("Both count. Measure again what looks wrong.");
        case Subject::rule:
            return say("Every edge waits until then: nothing is cut.");
        case Subject::finish:
            return say("Edge {1} is not finished until then.", thing.name);
        case Subject::step:
            return say("The step is not done until then.");
        case Subject::piece:
            return say("Edge {1} waits until then. The other piece is spare metal: set it aside.",
                       thing.name);
        default:
            return say("Edge {1} waits until then: nothing is cut from it.", thing.name);
    }
}

bool can_measure_again(const Thing& thing) {
    return thing.subject == Subject::reading || thing.subject == Subject::remainder ||
           thing.subject == Subject::pitch;
}

Where where_measured(const Thing& thing) {
    Where where{thing.subject == Subject::pitch ? Place::pitch : Place::reading, thing.name};
    where.reading_of = thing.subject == Subject::remainder ? ReadingOf::remainder : ReadingOf::edge;
    return where;
}

/// Nothing is apart any more: on with the edge, or back to the roof.
Wish all_settled(const State& state) {
    Wish wish;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    wish.go = work == nullptr ? Where{Place::roof, {}} : next_work_on(state, *work).where;
    return wish;
}

/// The sides beside one another where there is room; a touch chooses one.
void draw_sides(Ui& ui, const State& state, const Conflict& conflict, Drafts& drafts, Box& list) {
    const std::vector<const Event*> sides = sides_of(state, conflict);
    const std::size_t wide = !ui.portrait() && list.w >= ui.mm(columns_mm) ? 2 : 1;
    for (std::size_t i = 0; i < sides.size(); i += wide) {
        std::vector<Box> places =
            columns({list.x, list.y, list.w, 0}, static_cast<int>(wide), ui.mm(gap_mm));
        const std::size_t count = std::min(wide, sides.size() - i);
        float h = 0;
        for (std::size_t j = 0; j < count; ++j) {
            h = std::max(h, side_height(ui, state, *sides[i + j], places[j].w));
        }
        for (std::size_t j = 0; j < count; ++j) {
            const Event& side = *sides[i + j];
            places[j].h = h;
            const std::string name = conflict.number_twice ? "" : "side " + print_event_id(side.id);
            if (draw_side(ui, state, side, name, drafts.chosen == side.id, places[j])) {
                drafts.chosen = side.id;
            }
        }
        take_top(list, h + ui.mm(gap_mm));
    }
}

/// What the primary action says.
Text stands_words(const State& state, const Conflict& conflict, const Event* chosen) {
    if (conflict.number_twice) {
        return say("Both are kept");
    }
    if (chosen == nullptr) {
        return say("Touch one first");
    }
    const std::optional<Length> length = length_of(chosen->fact);
    return length ? say("{1} stands", print_length(*length, state.marks))
                  : say("The marked one stands");
}

}  // namespace

Wish draw_apart(Ui& ui, const State& state, Drafts& drafts) {
    const std::vector<const Conflict*> all = conflicts_shown(state);
    if (all.empty()) {
        return all_settled(state);
    }
    Wish wish;
    const std::size_t at = static_cast<std::size_t>(state.where.stick) % all.size();
    const Conflict& conflict = *all[at];
    const Event* chosen = nullptr;
    for (const Event* side : sides_of(state, conflict)) {
        chosen = drafts.chosen == side->id && !conflict.number_twice ? side : chosen;
    }
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (all.size() > 1) {
        actions.push_back({"next apart", say("The next one")});
    }
    if (can_measure_again(conflict.thing)) {
        actions.push_back({"measure again", say("Measure again")});
    }
    actions.push_back({"stands", stands_words(state, conflict, chosen),
                       chosen == nullptr ? Look::off : Look::primary});
    const Text title =
        all.size() > 1 ? say("Made apart · {1} of {2}", at + 1, all.size()) : say("Made apart");
    const Frame frame = open_frame(ui, state, title, actions);
    Box list = ui.begin_scroll("apart " + std::to_string(at), frame.body);
    const float top = list.y;
    take_top(list, ui.paragraph(list.x, list.y, list.w, conflict.what(), Size::bold) + ui.mm(1));
    take_top(list,
             ui.paragraph(list.x, list.y, list.w, waits_words(conflict.thing)) + ui.mm(gap_mm));
    draw_sides(ui, state, conflict, drafts, list);
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish.go = Where{Place::roof, {}};
    } else if (frame.tapped == "next apart") {
        wish.go = state.where;
        wish.go->stick = static_cast<int>((at + 1) % all.size());
    } else if (frame.tapped == "measure again") {
        wish.go = where_measured(conflict.thing);
    } else if (frame.tapped == "stands" && chosen != nullptr) {
        wish.pick = chosen->id;
    }
    return wish;
}

}  // namespace hemline
