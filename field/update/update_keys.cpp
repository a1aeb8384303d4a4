// Keys of a desk's keyboard: the next edge, the edge before, and undo. A stray key loses nothing.
#include <algorithm>

#include "field/state/edge_view.h"
#include "field/state/keyed_in.h"
#include "field/update/turn.h"

namespace hemline {

bool has_draft(const Session& session) {
    const State& state = session.state;
    const bool choosing_folder = state.where.screen == Screen::folder && session.choosing;
    const Where& keyed_at = choosing_folder ? session.choosing->where : state.where;
    const bool unsaid = state.where.screen == Screen::person && session.unsigned_;
    const float measured = session.drafts.calibrate.px_per_mm;
    const bool scaled = measured != 0 && measured != session.px_per_mm;
    return unsaid || scaled || is_keyed_in(state, keyed_at, session.drafts);
}

void on(Turn turn, const news::KeyPressed& pressed) {
    const Key key = pressed.key;
    if (has_draft(turn.session)) {
        refuse(turn, say("Keep what is keyed in, or clear it, first."));
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
