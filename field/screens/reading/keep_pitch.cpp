#include "field/screens/reading/keep_pitch.h"

#include "field/state/edge_view.h"

namespace hemline {

namespace {

/// In the order of the job, and then from its beginning.
const EdgeWork* unread_after(const State& state, const EdgeWork& here) {
    const auto& edges = state.job.edges;
    const auto at = static_cast<std::size_t>(&here - edges.data());
    for (std::size_t i = 1; i < edges.size(); ++i) {
        const EdgeWork& next = edges[(at + i) % edges.size()];
        if (status_on(state, next) == EdgeStatus::no_reading) {
            return &next;
        }
    }
    return nullptr;
}

}  // namespace

std::optional<Slope> pitch_before(const State& state, const EdgeWork& here) {
    for (auto event = state.events.rbegin(); event != state.events.rend(); ++event) {
        const auto* const taken = std::get_if<PitchTaken>(&event->fact);
        if (taken != nullptr && taken->edge != here.edge.id &&
            state.job.struck.count(event->id) == 0) {
            return taken->pitch;
        }
    }
    for (const EdgeWork& work : state.job.edges) {
        if (work.edge.pitch && work.edge.id != here.edge.id) {
            return work.edge.pitch;
        }
    }
    return {};
}

void add_keep_pitch(std::vector<Action>& actions, const State& state, const EdgeWork& here,
                    bool ready) {
    const EdgeWork* const next = unread_after(state, here);
    const Look black = ready ? Look::primary : Look::off;
    if (next == nullptr) {
        actions.push_back({"keep", say("Keep this pitch"), black});
        return;
    }
    actions.push_back({"keep", say("Keep, work on this edge"), ready ? Look::plain : Look::off});
    actions.push_back({"keep next", say("Keep · next edge: {1}", title_of(next->edge)), black});
}

Wished keep_pitch(const std::string& tapped, const State& state, const EdgeWork& here,
                  Slope pitch) {
    Wished wish;
    if (tapped == "keep") {
        wish = Keep{PitchTaken{here.edge.id, pitch}};
    } else if (const EdgeWork* const next = unread_after(state, here);
               tapped == "keep next" && next != nullptr) {
        wish = Keep{PitchTaken{here.edge.id, pitch}, Where{Screen::reading, next->edge.id}};
    }
    return wish;
}

}  // namespace hemline
