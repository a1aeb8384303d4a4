// Where a roof that was walked lies on another: which one it runs into or stands on, and its place
// there. What is not keyed in is nothing: the ends lie together, it stands on the eave, as high.
//
//   host's eave A        up ┌────┐ front
//   ├───── along ──────┼────┘
#pragma once

#include <optional>

#include "field/screens/page/frame.h"
#include "field/state/roof_draft.h"

namespace hemline {

bool is_metric(const State& state);

/// Which roof: one of the job's, or none.
Wished draw_host(Ui& ui, const State& state, WalkDraft& draft);
/// How far along, up, and over its eave: what draft.asks says.
Wished draw_host_length(Ui& ui, const State& state, WalkDraft& draft);

/// Of the length pages the last one.
WalkAsks last_asked(const HostDraft& draft);
/// Whether an eave of another roof may lie on one of its sides.
bool has_transition(const WalkedBody& walk);
/// The walk with its place, where it has one.
WalkedBody on_host(WalkedBody walk, const HostDraft& draft, bool metric);

}  // namespace hemline
