// Keys of a desk's keyboard: the next edge, the one before, and undo.
#include <algorithm>

#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "field/state/length_draft.h"

namespace hemline {

namespace {

bool keying_in(const Drafts& drafts) {
    return !drafts.typed.empty() || !drafts.name.empty() || !drafts.count.empty() ||
           !drafts.pitch_number.empty() || !is_empty(drafts.length) || drafts.sticks != 1 ||
           drafts.way.has_value();
}

bool says_bend_or_hem(const SectionDraft& draft) {
    return !draft.degrees.empty() || draft.hem_kind.has_value();
}

bool has_tilt(const TiltDraft& draft) { return draft.taking || !draft.first.empty(); }

/// An edge that is being added has an answer, or one that is there would be another.
bool says_edge(const State& state, const Where& where, const EdgeDraft& draft) {
    if (where.place != Place::add_edge) {
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

/// What another place would lose: keyed in here, or waiting until it is said who holds the tablet.
bool App::has_draft() const {
    const bool choosing_folder = state_.where.place == Place::folder && aside_;
    const Where& keyed_at = choosing_folder ? aside_->where : state_.where;
    const bool unsaid = state_.where.place == Place::person && unsigned_;
    const bool scaled = drafts_.px_per_mm != 0 && drafts_.px_per_mm != options_.px_per_mm;
    return unsaid || scaled || keying_in(drafts_) || says_bend_or_hem(drafts_.section) ||
           has_tilt(drafts_.tilt) || says_edge(state_, keyed_at, drafts_.edge);
}

void App::press(Key key) {
    if (has_draft()) {  // a stray key loses nothing
        state_.notice = say("Keep what is keyed in, or clear it, first.");
        return;
    }
    if (key == Key::undo) {
        Wish wish;
        wish.undo = true;
        act(wish);  // which asks who holds the tablet, where nobody has said so
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
