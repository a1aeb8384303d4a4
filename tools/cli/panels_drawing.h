// Planes with their panels, drawn true to shape.
#pragma once

#include <string>

#include "tools/cli/panels_print.h"

namespace hemline {

/// An SVG of all planes, one above the other, 1 : 20: bounds of the deck as CUT, seams as BEND,
/// pipes and curbs as MARK, in each pan its length to order.
std::string panels_svg(const PanelsPrinted& printed);

}  // namespace hemline
