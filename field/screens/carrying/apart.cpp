// Where two tablets disagree: the sides with value, person, tablet and time, what waits for a
// decision, and which side is to stand.
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "field/screens/carrying/draw_side.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/told.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float columns_mm = 150;

/// The disagreements to show: those of the edge, or all; those that nobody can settle come last.
std::vector<const Conflict*> conflicts_shown(const State& state) {
    std::vector<const Conflict*> shown;
    const std::string& edge = state.where.edge;
    for (const bool last : {false, true}) {
        for (const Conflict& conflict : state.job.conflicts) {
            if ((edge.empty() || conflict.holds(edge)) &&
                last == (conflict.apart == Apart::number_twice)) {
                shown.push_back(&conflict);
            }
        }
    }
    return shown;
}

constexpr std::size_t sides_most = 24;  ///< sides drawn; if there are too many, the first

/// A side on the screen.
struct Shown {
    std::optional<EventId> id;  ///< what a touch picks; none: it cannot be picked
    SideView view;
};

/// All sides; for a number used twice, each of its events.
std::vector<Shown> sides_of(const State& state, const Conflict& conflict) {
    const std::size_t count = std::min(conflict.sides.size(), sides_most);
    std::map<EventId, std::vector<const Event*>> events;
    for (std::size_t i = 0; i < count; ++i) {
        events[conflict.sides[i].id];
        events[conflict.sides[i].says];
    }
    for (const Event& event : state.events) {
        if (const auto found = events.find(event.id); found != events.end()) {
            found->second.push_back(&event);
        }
    }
    std::vector<Shown> sides;
    std::set<std::pair<EventId, EventId>> told;
    for (std::size_t i = 0; i < count; ++i) {
        const Tip& side = conflict.sides[i];
        if (!told.emplace(side.id, side.says).second) {
            continue;  // its events are there already
        }
        const std::vector<const Event*>& values = events[side.says];
        const bool can_be_picked = conflict.apart == Apart::values && values.size() == 1;
        for (const Event* const value : values) {
            if (sides.size() == sides_most) {
                return sides;
            }
            Shown shown;
            shown.id = can_be_picked ? std::optional(side.id) : std::nullopt;
            shown.view.value = value;
            if (side.id != side.says && !events[side.id].empty()) {
                shown.view.picked = events[side.id].front();
            }
            sides.push_back(shown);
        }
    }
    return sides;
}

Text waits_words(const Conflict& conflict) {
    const Thing& thing = conflict.thing;
    switch (thing.subject) {
        case Subject::job:
            return say("The job's name is one of them until then.");
        case Subject::none:
            return say("Measure again what looks wrong. Then put this away.");
        case Subject::rule:
            return say("Every edge waits until then: nothing is cut.");
        case Subject::plan:
            return say("Edges {1} wait until then: nothing is cut from them.",
                       joined({conflict.edges.begin(), conflict.edges.end()}, ", "));
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
    Where where{thing.subject == Subject::pitch ? Screen::pitch : Screen::reading, thing.name};
    where.reading_of = thing.subject == Subject::remainder ? ReadingOf::remainder : ReadingOf::edge;
    return where;
}

/// No disagreement is left: on with the edge, or back to the roof.
Wished all_settled(const State& state) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    return Go{work == nullptr ? Where{Screen::roof, {}} : next_work_on(state, *work).where};
}

/// The sides next to each other where there is room; a touch chooses one.
void draw_sides(Ui& ui, const State& state, const std::vector<Shown>& sides, ApartDraft& draft,
                Box& list) {
    const std::size_t wide = !ui.portrait() && list.w >= ui.mm(columns_mm) ? 2 : 1;
    for (std::size_t i = 0; i < sides.size(); i += wide) {
        std::vector<Box> places =
            columns({list.x, list.y, list.w, 0}, static_cast<int>(wide), ui.mm(gap_mm));
        const std::size_t count = std::min(wide, sides.size() - i);
        float h = 0;
        for (std::size_t j = 0; j < count; ++j) {
            h = std::max(h, side_height(ui, state, sides[i + j].view, places[j].w));
        }
        for (std::size_t j = 0; j < count; ++j) {
            const Shown& side = sides[i + j];
            places[j].h = h;
            const std::string name = side.id ? "side " + print_event_id(*side.id) : "";
            const bool chosen = side.id && draft.chosen == side.id;
            if (draw_side(ui, state, side.view, name, chosen, places[j])) {
                draft.chosen = side.id;
            }
        }
        take_top(list, h + ui.mm(gap_mm));
    }
}

/// What the primary action says, and whether it can be done.
Action stands_action(const Conflict& conflict, const Event* chosen) {
    switch (conflict.apart) {
        case Apart::values:
            break;
        case Apart::edge_back:
            return {"stands", say("It stays on the job"), Look::primary};
        case Apart::number_twice:
            return {"stands", say("Put it away"), Look::primary};
    }
    if (chosen == nullptr) {
        return {"stands", say("Touch one first"), Look::off};
    }
    const std::optional<Length> length = length_of(chosen->fact);
    if (!length) {
        return {"stands", say("The marked one stands"), Look::primary};
    }
    return {"stands",
            conflict.thing.subject == Subject::piece ? say("{1} is fitted", *length)
                                                     : say("{1} stands", *length),
            Look::primary};
}

/// What the primary action asks for.
void settle(const State& state, const Conflict& conflict, const ApartDraft& draft, Wished& wish) {
    switch (conflict.apart) {
        case Apart::values:
            wish = PickSide{*draft.chosen};
            break;
        case Apart::edge_back:
            wish = PickSide{conflict.sides.back().id};
            break;
        case Apart::number_twice:
            wish = Keep{CopyNoted{conflict.sides.front().id,
                                  static_cast<std::int64_t>(conflict.sides.size())},
                        state.where};
            break;
    }
}

}  // namespace

Wished draw_apart(Ui& ui, const State& state, Drafts& drafts) {
    ApartDraft& draft = drafts.apart;
    const std::vector<const Conflict*> all = conflicts_shown(state);
    if (all.empty()) {
        return all_settled(state);
    }
    const std::size_t at = static_cast<std::size_t>(state.where.stick) % all.size();
    const Conflict& conflict = *all[at];
    const std::vector<Shown> sides = sides_of(state, conflict);
    const auto chosen = std::find_if(sides.begin(), sides.end(), [&](const Shown& side) {
        return side.id && side.id == draft.chosen;
    });
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (all.size() > 1) {
        actions.push_back({"next apart", say("The next one")});
    }
    if (can_measure_again(conflict.thing)) {
        actions.push_back({"measure again", say("Measure again")});
    }
    actions.push_back(
        stands_action(conflict, chosen == sides.end() ? nullptr : chosen->view.value));
    const Text title = all.size() > 1 ? say("Two tablets disagree · {1} of {2}", at + 1, all.size())
                                      : say("Two tablets disagree");
    const Frame frame = open_frame(ui, state, title, actions);
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("apart " + std::to_string(at), frame.body);
    const float top = list.y;
    take_top(list, ui.paragraph(list.x, list.y, list.w,
                                what_of(conflict, thing_names(names_on(state))), Size::bold) +
                       ui.mm(1));
    take_top(list, ui.paragraph(list.x, list.y, list.w, waits_words(conflict)) + ui.mm(gap_mm));
    draw_sides(ui, state, sides, draft, list);
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "next apart") {
        Where next = state.where;
        next.stick = static_cast<int>((at + 1) % all.size());
        wish = Go{next};
    } else if (frame.tapped == "measure again") {
        wish = Go{where_measured(conflict.thing)};
    } else if (frame.tapped == "stands" &&
               (chosen != sides.end() || conflict.apart != Apart::values)) {
        settle(state, conflict, draft, wish);
    }
    return wish;
}

}  // namespace hemline
