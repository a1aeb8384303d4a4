// Keys of a desk's keyboard: the next edge, the one before, and undo. A stray one loses nothing.
#include <algorithm>

#include "field/state/edge_view.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

bool is_begun(const LengthDraft& draft) { return !is_empty(draft) || !draft.typed.empty(); }

bool is_keyed_in(const Drafts& drafts) {
    const OnHandDraft& on_hand = drafts.on_hand;
    const bool length = is_begun(drafts.reading.length) || is_begun(drafts.step.length) ||
                        is_begun(drafts.real_cut.length) || is_begun(on_hand.length) ||
                        is_begun(drafts.stick.length) || is_begun(drafts.edge_lap.length) ||
                        is_begun(drafts.rule.length) || is_begun(drafts.section.length);
    const bool letters = !drafts.person.name.letters.empty() ||
                         !drafts.send_back.reason.letters.empty() ||
                         !drafts.edge.name.letters.empty();
    const bool number = !drafts.step.count.empty() || !drafts.pitch.number.empty() ||
                        !drafts.edge.number.number.empty();
    return length || letters || number || on_hand.sticks != 1 || drafts.person.way.has_value();
}

bool says_bend_or_hem(const SectionDraft& draft) {
    return !draft.degrees.empty() || draft.hem_kind.has_value();
}

bool has_tilt(const TiltDraft& draft) { return draft.taking || !draft.first.empty(); }

/// An edge that is being added has an answer, or one that is there would be another.
bool says_edge(const State& state, const Where& where, const EdgeDraft& draft) {
    if (where.screen != Screen::add_edge) {
        return false;
    }
    const EdgeWork* const there = edge_of(state, where.edge);
    if (there == nullptr) {
        return draft.asked != EdgeField::kind;
    }
    Edge said = draft.edge;
    said.pitch = there->edge.pitch;  // said on screens of their own
    said.looks = there->edge.looks;
    return !(said == there->edge);
}

}  // namespace

bool has_draft(const Session& session) {
    const State& state = session.state;
    const Drafts& drafts = session.drafts;
    const bool choosing_folder = state.where.screen == Screen::folder && session.choosing;
    const Where& keyed_at = choosing_folder ? session.choosing->where : state.where;
    const bool unsaid = state.where.screen == Screen::person && session.unsigned_;
    const float measured = drafts.calibrate.px_per_mm;
    const bool scaled = measured != 0 && measured != session.px_per_mm;
    return unsaid || scaled || is_keyed_in(drafts) || says_bend_or_hem(drafts.section) ||
           has_tilt(drafts.tilt) || says_edge(state, keyed_at, drafts.edge);
}

void on(Turn turn, const news::KeyPressed& pressed) {
    const Key key = pressed.key;
    if (has_draft(turn.session)) {
        tell(turn, say("Keep what is keyed in, or clear it, first."));
        return;
    }
    if (key == Key::undo) {
        if (turn.state.by.empty()) {
            ask_who(turn);
        } else {
            on(turn, UndoLast{});
        }
        return;
    }
    const std::vector<EdgeWork>& edges = turn.state.job.edges;
    if (edges.empty()) {
        return;
    }
    const auto here = std::find_if(edges.begin(), edges.end(), [&](const EdgeWork& work) {
        return work.edge.id == turn.state.where.edge;
    });
    auto to = here;
    if (here == edges.end()) {
        to = key == Key::next_edge ? edges.begin() : std::prev(edges.end());
    } else if (key == Key::next_edge) {
        to = std::next(here) == edges.end() ? here : std::next(here);
    } else if (here != edges.begin()) {
        to = std::prev(here);
    }
    go(turn, next_work_on(turn.state, *to).where);
}

}  // namespace hemline
