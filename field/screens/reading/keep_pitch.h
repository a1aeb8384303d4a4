// A pitch is kept: on to the next edge that nobody has read, or on with this one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "field/screens/page/actions.h"
#include "field/state/state.h"
#include "field/state/wish.h"

namespace hemline {

/// The pitch that was read last on another edge of this job, else one that such an edge has.
std::optional<Slope> pitch_before(const State& state, const EdgeWork& here);

/// Adds what keeps it, black where it is ready. While other edges are unread, the next of them is
/// what comes next; cutting this one is beside it.
void add_keep_pitch(std::vector<Action>& actions, const State& state, const EdgeWork& here,
                    bool ready);
/// What these actions ask for; nothing for others.
Wished keep_pitch(const std::string& tapped, const State& state, const EdgeWork& here, Slope pitch);

}  // namespace hemline
