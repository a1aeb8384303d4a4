// What screens ask of the record: how an entry is taken back, and how that is taken back.
#pragma once

#include "field/state/state.h"
#include "field/state/wish.h"

namespace hemline {

/// How an entry is crossed out, or put back by crossing out what crossed it out.
struct Undoing {
    std::optional<EventId> strike;  ///< what to cross out; none: it cannot be undone here
    bool puts_back = false;
    Text words;  ///< the entry and what would be done, or why it cannot be
};
Undoing undoing_of(const State& state, const Event& event);

/// Then the screen is shown again.
Wished undo_of(const Undoing& undoing, const Where& then);

/// The entries as they are shown: those that stand outside practice, then the others; of both the
/// latest first.
struct RecordShown {
    std::vector<const Event*> entries;
    std::size_t outside = 0;  ///< so many of them at the beginning
};
RecordShown record_shown(const State& state);

/// The tick that finished the edge, if it stands.
const Event* tick_on(const State& state, std::string_view edge);

}  // namespace hemline
