// Status as a shape, a fill and a word: never as color alone.
#pragma once

#include <string_view>

#include "engine/work/procedure.h"
#include "field/touch/ui.h"

namespace hemline {

/// The edge's letter in a shape that shows the edge's status, even without colors.
///   circle with a broken rim: no reading · one rim: one reading · two rims: ready to cut ·
///   solid: finished
///   square: being worked
///   diamond: readings disagree, pitch missing, tablets disagree
void draw_status_mark(Ui& ui, float cx, float cy, float radius, EdgeStatus status,
                      std::string_view letter, Size size = Size::bold);

}  // namespace hemline
