// The lines of a roof's drawing: eaves heavy, each kind its own line, what is done heavier than
// what is not.
//
//   ━━━━━ eave    ───── ridge    ───── hip, finer    ═════ valley, two lines    ─ ─ ─ not read
//   ╱╱╱╱╱ wall, hatched outside
#pragma once

#include "field/screens/roof/roof_sheet.h"

namespace hemline {

void draw_planes(const Ui& ui, const RoofSheet& sheet);
void draw_roof_lines(const Ui& ui, const RoofSheet& sheet);
/// Half of what a line covers across, in pixels.
float half_across(const Ui& ui, const SheetLine& line);

}  // namespace hemline
