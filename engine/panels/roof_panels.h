// The panels of a whole roof: each plane's, with the seams of both planes of a ridge in line where
// that is possible.
#pragma once

#include <span>
#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

/// Ridges longer than a module that two of the planes share, the longest first.
std::vector<SharedRidge> shared_ridges(std::span<const PlaneAsked> planes);

/// As the planes; meeting_seams() says how they are shifted. Where seams do not meet at a ridge, or
/// cannot lie as chosen, a doubt of the planes says so. Problem: as lay_panels().
Result<std::vector<PanelLayout>> lay_roof(std::span<const PlaneAsked> planes);

}  // namespace hemline
