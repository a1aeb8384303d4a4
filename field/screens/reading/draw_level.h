// How a pitch is taken, for each way to say it.
//
//   in 12, percent         degrees
//        ____level          ___▭___ level on the deck
//       │  ╱ rise          ╱
//      ╱___                ╱ ° ____
#pragma once

#include "engine/measure/slope.h"
#include "field/touch/ui.h"

namespace hemline {

constexpr float level_picture_mm = 26;

/// In the lower part of the box; nothing where it has no room.
void draw_level(Ui& ui, SlopeNotation notation, Box box);

}  // namespace hemline
