// Divides an edge so that its pieces fit what the other edges leave of their sticks.
//
//   left:   |..........|  |......|  |----|        the edge:  |----------|·lap·|------|·lap·|----|
#pragma once

#include <optional>

#include "engine/joint/joint.h"

namespace hemline {

/// Divides an edge of a plan again into so many pieces that each fit what the others leave of a
/// stick, or a new stick, with one new stick less than the plan has. None where that cannot be.
std::optional<EdgeOption> divide_by_gaps(const JointJob& job, const JointPlan& plan,
                                         std::size_t edge, std::int64_t pieces);

}  // namespace hemline
