// A roof as a site drawing: its plan with lengths along the edges, pitches with the way water runs,
// names, and beside it the list of edges.
#pragma once

#include <span>
#include <string>

#include "engine/body/roof.h"
#include "engine/handover/page_words.h"

namespace hemline {

/// A whole SVG document in mm on a page as wide as Letter lying, taller where the list is long.
/// What has no room in the plan stands in the list alone. `roof` closes.
std::string roof_svg(const Roof& roof, std::span<const RoofBody> bodies, const PageWords& words);

}  // namespace hemline
