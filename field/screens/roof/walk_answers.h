// What is answered of a side by a touch: its kind, and the corner after it.
#pragma once

#include <optional>

#include "field/state/roof_draft.h"
#include "field/touch/ui.h"

namespace hemline {

/// Each draws its answers at the top of `list`, cuts them off it, and returns the one touched.
std::optional<SideKind> draw_kinds(Ui& ui, SideKind chosen, Box& list);
std::optional<CornerAsked> draw_corners(Ui& ui, CornerAsked chosen, Box& list);

/// How high both are at that width, with the gap between them.
float answers_height(const Ui& ui, float w);

}  // namespace hemline
