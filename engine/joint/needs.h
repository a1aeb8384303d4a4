// What each edge needs in pieces, class by class of laps and balance: every lawful division.
#pragma once

#include <optional>

#include "engine/joint/ways.h"

namespace hemline {

/// Divisions alike in laps and balance: the ways listed, and where `pieces` > 0 every way to make
/// up `metal` from so many pieces.
struct NeedClass {
    std::int64_t laps = 0;
    bool is_unbalanced = false;
    std::vector<std::vector<Length>> ways;  ///< cuts, rising
    std::int64_t pieces = 0;
    Length metal;
};

/// Classes by 2·laps + 1 where unbalanced; a class without ways and pieces is empty.
using EdgeNeeds = std::vector<NeedClass>;

struct JointNeeds {
    std::vector<EdgeNeeds> edges;
    Length grid, stick, sliver;  ///< of every edge; the least sliver
    /// By number of pieces, in grid units: the least metal of interest that so many make up, a rest
    /// of an edge that may run out. One for each number up to the most of any edge.
    std::vector<std::int64_t> metal_least;
};

/// None where edges differ in grid or stick, or more laps are asked about than classes have bits.
std::optional<JointNeeds> needs_of(const JointJob& job, const std::vector<EdgeWays>& ways,
                                   std::int64_t laps_most);

/// Every class that is not empty.
DivisionSets all_divisions(const JointNeeds& needs);

/// True when the cuts, in rising order, lie in the set's ranges.
bool in_ranges(const DivisionSet& set, const std::vector<Length>& rising, Length grid);

/// True when the edge has a division in the set.
bool has_division(const JointNeeds& needs, std::size_t edge, const DivisionSet& set);

}  // namespace hemline
