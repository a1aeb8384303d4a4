// A bend on the brake: does a leg bent before run into the brake, or into the clamped side?
#pragma once

#include <string>
#include <vector>

#include "engine/trim/brake.h"

namespace hemline {

/// A strip on the brake: its straight stretches and which of its bends are made already.
struct StripOnBrake {
    std::vector<double> stretches;  ///< nm, between edge, marks and edge
    std::vector<double> bends;      ///< signed degrees
    std::vector<bool> made;         ///< by bend
    std::vector<LegName> names;     ///< of the stretches
};

/// Empty when bend `bend` can be made with that end clamped; else what is in the way, in words.
Text in_the_way_of(const StripOnBrake& strip, std::size_t bend, Clamped clamped,
                   const Brake& brake);

}  // namespace hemline
