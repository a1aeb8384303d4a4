// Everything said of an edge being added or changed: a touch changes each thing, then the whole is
// saved, or the edge is taken off the job.
#pragma once

#include <string>

#include "field/state/edges_draft.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

constexpr float edge_page_low_mm = 60;  ///< in a body as low as this there is no sketch of the edge

/// "New edge · Eave C".
Text edge_page_title(const State& state, const Edge& edge);

/// True when the last of a new edge's questions is to be asked again.
bool draw_edge_page(Ui& ui, const State& state, EdgeDraft& draft, Wished& wish);

}  // namespace hemline
