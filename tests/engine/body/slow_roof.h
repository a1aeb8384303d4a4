// A second, slow roof: the walk moved by small steps of height, each from the one before, and cut
// again. It shares only the meaning of a side with the engine.
#pragma once

#include <optional>
#include <vector>

#include "tests/engine/body/chance_walks.h"

namespace hemline::test {

/// Area in plan swept by each side, in steps of `step` until nothing is left. For walks without
/// ties; none where it does not end in `steps_most` steps.
std::optional<std::vector<double>> swept_areas(const std::vector<MovingSide>& sides, double step,
                                               int steps_most);

}  // namespace hemline::test
