// The tape along an edge: which end it is hooked on, and where it is read.
//
//      ┏━━━━━━━━━━━━━━━━━━━━━━━━━┓
//      ╚╤══╤══╤══╤══╤══╤══╤══╤══╪▣
//   Hook the tape here     Read here
//   outside corner           gable
#pragma once

#include "engine/roof/edge.h"
#include "field/touch/ui.h"

namespace hemline {

struct TapeLaid {
    const Edge& edge;
    double fixed = 0;  ///< share of the edge that metal covers, from the side fitted first
};

/// The end the tape is hooked on; a wall or an inside corner has nothing to hook on, so that end is
/// where it is read if the other one has.
Side hooked_end(const TapeLaid& laid);

/// The least height it needs.
float tape_laid_height(const Ui& ui, const TapeLaid& laid);
/// In the lower part of the box; nothing where it has no room.
void draw_tape_laid(Ui& ui, const TapeLaid& laid, Box box);

}  // namespace hemline
