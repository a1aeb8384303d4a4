// Which screen draws which place.
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

Wish draw_place(Ui& ui, const State& state, Drafts& drafts);

}  // namespace hemline
