// What is keyed in about an edge: an angle, the other roof's pitch, or its name.
#pragma once

#include "engine/words/result_declared.h"
#include "field/screens/page/frame.h"
#include "field/state/edges_draft.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

KeysWanted keys_for(EdgeField field);

/// The edge with what is keyed in. Problem: it cannot be so, or nothing is keyed in.
Result<Edge> edge_keyed(EdgeField field, const State& state, const EdgeDraft& draft);

/// Draws the keys and what is keyed in so far, and answers that need no keys; returns the edge with
/// such an answer when it was touched.
std::optional<Edge> draw_edge_keyed(Ui& ui, EdgeField field, const State& state, EdgeDraft& draft,
                                    const Frame& frame, Box body);

}  // namespace hemline
