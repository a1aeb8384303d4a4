// Status as a shape, a fill and a word: never as colour alone.
#pragma once

#include <string_view>

#include "engine/work/procedure.h"
#include "field/touch/ui.h"

namespace hemline {

/// The edge's letter in a shape that says where the edge stands, without colours too.
///   circle, broken rim: no reading · one rim: one reading · two rims: ready to cut · solid:
///   finished square: being worked · diamond: readings disagree, pitch missing, written apart
void draw_status_mark(Ui& ui, float cx, float cy, float radius, EdgeStatus status,
                      std::string_view letter);

}  // namespace hemline
