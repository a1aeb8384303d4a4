// A plane with holes, as facets to draw: where another roof stands on it.
//
//   +-----------+      each hole is joined to what is round it by a cut, which is not drawn
//   |   +--+    |
//   |~~~|  |    |
//   |   +--+    |
//   +-----------+
#pragma once

#include <vector>

#include "engine/trim/solid.h"

namespace hemline {

/// Corners one after another; holes lie inside, clear of one another. None of them is upright.
std::vector<Facet> plane_facets(const std::vector<Space>& corners,
                                const std::vector<std::vector<Space>>& holes, std::size_t leg);

}  // namespace hemline
