// What pieces each edge needs, for each class of laps and balance: every permitted division.
#pragma once

#include <optional>

#include "engine/joint/ways.h"

namespace hemline {

/// The divisions of a class, alike in laps and balance: the ways listed, and where `pieces` > 0
/// every way to make up `metal` from so many pieces.
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
    /// For each number of pieces up to the most of any edge, in grid units: the least metal of
    /// interest that so many pieces make up (the rest of an edge that may run out).
    std::vector<std::int64_t> metal_least;
};

/// None where edges differ in grid or stick, or where there are more laps than the classes have
/// bits.
std::optional<JointNeeds> needs_of(const JointJob& job, const std::vector<EdgeWays>& ways,
                                   std::int64_t laps_most);

/// Every class that has a division.
DivisionSets all_divisions(const JointNeeds& needs);

/// True when the cuts, in rising order, lie in the set's ranges.
bool in_ranges(const DivisionSet& set, const std::vector<Length>& rising, Length grid);

/// True when the edge has a division in the set.
bool has_division(const JointNeeds& needs, std::size_t edge, const DivisionSet& set);

}  // namespace hemline
