// From a relaxed plan to a permitted plan: where the rests on a stick joined by laps are split.
#pragma once

#include <optional>

#include "engine/joint/relax.h"

namespace hemline {

/// Chooses for each edge the division that the relaxed plan suggests; adds the divisions that split
/// a rest to the ways. None where a group cannot be split without a sliver.
std::optional<Chosen> realise(const Relaxed& relaxed, const JointJob& job,
                              std::vector<EdgeWays>& ways);

}  // namespace hemline
