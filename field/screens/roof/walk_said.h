// The walk as it is said: what a job has of it, and the side that is keyed in.
#pragma once

#include <optional>

#include "engine/work/roof_body.h"
#include "field/state/roof_draft.h"

namespace hemline {

/// The walk that is under way, or a new one.
WalkedBody walk_under_way(const Job& job);

/// None: of another corner no angle is keyed in.
std::optional<Angle> corner_of(const WalkDraft& draft);

/// The walk with the side that is keyed in.
WalkedBody with_side(const Job& job, WalkedBody walk, const WalkDraft& draft, bool metric);

}  // namespace hemline
