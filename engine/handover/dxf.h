// A drawing as DXF, for the shop's cutter: layers CUT, BEND and MARK, in millimetres.
#pragma once

#include <string>

#include "engine/handover/drawing.h"

namespace hemline {

/// A whole DXF file (R12, that every program reads): outlines as closed polylines, other lines as
/// lines, words on MARK. y is up, the metal's lower edge at 0; coordinates are exact to the
/// nanometre.
std::string dxf_of(const Drawing& drawing);

}  // namespace hemline
