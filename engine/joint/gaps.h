// An edge divided by what the other edges leave of their sticks.
//
//   left:   |..........|  |......|  |----|        the edge:  |----------|·lap·|------|·lap·|----|
#pragma once

#include <optional>

#include "engine/joint/joint.h"

namespace hemline {

/// Divides one edge of a plan anew into so many pieces that each lie in what the others leave of a
/// stick, or on a new one, with one new stick less than the plan has. None where they cannot.
std::optional<EdgeOption> divide_by_gaps(const JointJob& job, const JointPlan& plan,
                                         std::size_t edge, std::int64_t pieces);

}  // namespace hemline
