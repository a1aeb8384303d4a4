// The pictures of a step next to each other, or below each other where it is narrow: before,
// during, done; and its piece alone.
#pragma once

#include "engine/work/step_pictures.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// As large as the width and `room` (the height left) allow; where there is little room they take
/// more and scroll. Returns the height used.
float draw_step_pictures(Ui& ui, const State& state, const StepPictures& pictures, float room,
                         Box box);

/// The piece of the step, folded up; nothing where the step is not about a piece.
void draw_finished_piece(Ui& ui, const State& state, const EdgeWork& work, const Step& step,
                         Box box);

}  // namespace hemline
