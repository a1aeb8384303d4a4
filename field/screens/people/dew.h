// The dew point from the air's temperature and humidity: whoever has both knows whether metal is
// wet.
#pragma once

#include "field/state/people_draft.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

Wished draw_dew(Ui& ui, const State& state, GateDraft& draft);

}  // namespace hemline
