// A shape with inside corners, filled.
#pragma once

#include <imgui.h>

#include <vector>

#include "field/touch/ui.h"

namespace hemline {

/// Walked round either way, without crossing itself; without a rim, so that shapes beside one
/// another show no seam.
void fill_shape(const Ui& ui, const std::vector<ImVec2>& shape, Colour colour);

bool is_in_shape(const std::vector<ImVec2>& shape, ImVec2 at);

}  // namespace hemline
