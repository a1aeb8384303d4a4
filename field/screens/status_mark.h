// Status as a shape, a fill and a word: never as colour alone.
#pragma once

#include <string_view>

#include "engine/work/procedure.h"
#include "field/touch/ui.h"

namespace hemline {

/// The edge's letter in a circle whose fill and rim say where the edge stands.
///   empty, broken rim: no reading · empty: one reading · half: read, not cut · chalk: being worked
///   · solid: finished · with a bar above: readings disagree, pitch missing
void draw_status_mark(Ui& ui, float cx, float cy, float radius, EdgeStatus status,
                      std::string_view letter);

}  // namespace hemline
