// The pictures of a step beside one another, or below one another where it is narrow: before,
// during, done; and its piece alone.
#pragma once

#include "engine/work/step_pictures.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// As large as the width allows and `room`, the height that is left; where that is little they take
/// more, and scroll. Returns the height used.
float draw_step_pictures(Ui& ui, const State& state, const StepPictures& pictures, float room,
                         Box box);

/// The step's own piece, folded up; nothing where the step is of no piece.
void draw_finished_piece(Ui& ui, const State& state, const EdgeWork& work, const Step& step,
                         Box box);

}  // namespace hemline
