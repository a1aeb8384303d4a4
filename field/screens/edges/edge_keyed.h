// What is keyed in about an edge: an angle, the other roof's pitch, or its name.
#pragma once

#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

KeysWanted keys_for(EdgeField field);

/// The edge with what is keyed in. Problem: it cannot be so, or nothing is keyed in.
Result<Edge> edge_keyed(EdgeField field, const State& state, const Drafts& drafts);

/// The keys and what they say so far, with answers that need none; the edge with one of those when
/// it was touched.
std::optional<Edge> draw_edge_keyed(Ui& ui, EdgeField field, const State& state, Drafts& drafts,
                                    const Frame& frame, Box body);

}  // namespace hemline
