// The card of other metal than the run's pieces that a step is about: its strip, an end cap, a pan
// or its whole plane.
#pragma once

#include <optional>
#include <string>

#include "engine/work/procedure.h"
#include "field/state/where.h"

namespace hemline {

struct OtherCard {
    std::string target;
    Text words;
    Screen screen;
    int piece = 0;  ///< of panels a pan
};

/// None where the step is about the run's own metal.
std::optional<OtherCard> other_card(const Edge& edge, const Step& step);

}  // namespace hemline
