// Whether something is half keyed in that a person would have to key in again.
#pragma once

#include "field/state/drafts.h"
#include "field/state/state.h"

namespace hemline {

/// `where`: the screen that the drafts are of. What is only looked at (a page, a leg that was
/// touched) is not keyed in.
bool is_keyed_in(const State& state, const Where& where, const Drafts& drafts);

}  // namespace hemline
