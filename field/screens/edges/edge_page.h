// All that is said of an edge that is added or changed: each thing is touched and said anew, and
// the whole is kept, or the edge taken off the job.
#pragma once

#include <string>

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

constexpr float edge_page_low_mm = 60;  ///< a body as low has no sketch of the edge

/// "New edge · Eave C".
Text edge_page_title(const State& state, const Edge& edge);

void draw_edge_page(Ui& ui, const State& state, Drafts& drafts, Wish& wish);

}  // namespace hemline
