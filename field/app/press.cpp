// Keys of a desk's keyboard: the next edge, the one before, and undo.
#include <algorithm>

#include "field/app/app.h"
#include "field/screens/edge_view.h"

namespace hemline {

namespace {

bool keying_in(const Drafts& drafts) {
    const LengthDraft& length = drafts.length;
    return !drafts.typed.empty() || !drafts.name.empty() || !drafts.count.empty() ||
           !drafts.pitch_number.empty() || !length.feet.empty() || length.inches ||
           length.sixteenths || !length.millimetres.empty();
}

}  // namespace

void App::press(Key key) {
    if (keying_in(drafts_)) {  // a stray key loses nothing
        state_.notice = say("Keep what is keyed in, or clear it, first.");
        return;
    }
    if (key == Key::undo) {
        undo();
        return;
    }
    const std::vector<EdgeWork>& edges = state_.job.edges;
    if (edges.empty()) {
        return;
    }
    const auto here = std::find_if(edges.begin(), edges.end(), [&](const EdgeWork& work) {
        return work.edge.id == state_.where.edge;
    });
    auto to = here;
    if (here == edges.end()) {
        to = key == Key::next_edge ? edges.begin() : std::prev(edges.end());
    } else if (key == Key::next_edge) {
        to = std::next(here) == edges.end() ? here : std::next(here);
    } else if (here != edges.begin()) {
        to = std::prev(here);
    }
    go(next_work_on(state_, *to).where);
}

}  // namespace hemline
