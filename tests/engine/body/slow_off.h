// How far lengths may be off, the plain way: every reading changed both ways, and the roof worked
// out anew each time.
#pragma once

#include <span>
#include <vector>

#include "engine/body/roof.h"

namespace hemline::test {

/// As off_of_edges().
std::vector<double> slow_off_of_edges(const std::vector<RoofBody>& bodies, Tape tape,
                                      std::span<const BodyEdge> expected);

}  // namespace hemline::test
