// Whether parts of all ways to divide leave any out.
#pragma once

#include "tests/certificate/joint_task.h"

namespace certificate {

/// True when some part holds every choice of one division for each edge. `all`: the classes of each
/// edge; `longest`: of its pieces, in grid units. Ranges must rise.
bool leaves_nothing_out(const std::vector<JointPart>& parts, const std::vector<Region>& all,
                        const std::vector<Int>& longest);

}  // namespace certificate
