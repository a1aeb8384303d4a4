// Divides every edge of a pool and cuts all of the pieces as a single problem: what fewer sticks
// cost in laps and in balance.
//
//   balanced   |--===--|   run out   |===-|   one lap more   |-===-|
//              equal ends            a rest at one side      small equal ends
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/cutting/cutting.h"
#include "engine/dividing/divisions.h"
#include "engine/roof/edge.h"

namespace hemline {

/// An edge of the pool. `looks`: free may end with the rest at one side, anything else is balanced
/// or as near as it can be.
struct JointEdge {
    RunRule rule;
    Looks looks = Looks::by_preference;
    std::vector<Division> keeps;  ///< the division of an edge under way; empty: still to choose
    std::vector<std::optional<Length>> cut = {};  ///< and its pieces that are cut, in fitting order
};

/// A pool: edges of the same metal and profile share sticks. No edge's rule.stock is longer than
/// the longest stick.
struct JointJob {
    std::vector<JointEdge> edges;
    std::vector<StockLength> stock;
    Length kerf;
};

/// A cutting job that bounds the joint job from below: what any plan that keeps the rules needs,
/// when so many laps are shared out over its groups of edges; some sticks of it are counted in
/// `paid`. docs/cutting.md has the proof.
struct JointBound {
    CuttingJob relaxed;
    Certificate certificate;
    std::int64_t paid = 0;    ///< sticks of groups that share laps
    std::int64_t sticks = 0;  ///< paid + what the certificate bounds
};

/// Why no plan within so many laps and unbalanced edges takes fewer new sticks: each piece has a
/// worth that rises with its length, no stick of stock[k] holds more than stick_worth[k], and each
/// edge takes at least the worth of its cheapest permitted division, plus `lap` for each extra lap
/// and `unbalanced` if it is unbalanced. As in Certificate, limited stock may hold more than its
/// share. docs/cutting.md has the proof.
struct JointWorths {
    std::vector<Length> from;               ///< rising
    std::vector<std::int64_t> worth;        ///< of a piece of that length or longer; shorter: 0
    std::vector<std::int64_t> stick_worth;  ///< one for each stock
    std::int64_t lap = 0, unbalanced = 0;
    std::int64_t share = 1;
    std::int64_t bound = 0;
};

/// The least and the most length, each rounded down to the grid.
struct LengthRange {
    Length least, most;
};

/// Some divisions of an edge: those of some classes; class 2·laps (+ 1 where unbalanced) is a bit
/// each. Where there are ranges, all classes have as many pieces as there are ranges, and each
/// piece, in rising order, lies in its range; neither end of a range is below that of the range
/// before.
struct DivisionSet {
    std::uint32_t classes = 0;
    std::vector<LengthRange> ranges;
};

/// One for each edge.
using DivisionSets = std::vector<DivisionSet>;

/// A part of all ways to choose, and what bounds its plans.
struct JointPart {
    DivisionSets edges;
    JointWorths worths;
};

struct JointPlan {
    std::vector<EdgeOption> divisions;  ///< one for each edge
    CuttingJob job;                     ///< every uncut piece, edge by edge
    CuttingPlan cutting;                ///< of `job`
    std::int64_t extra_laps = 0;
    std::int64_t unbalanced = 0;
    std::int64_t sticks = 0;         ///< new sticks
    std::int64_t lower_bound = 0;    ///< for no more laps and unbalanced edges than these
    bool proved = false;             ///< sticks == lower_bound and every piece is cut
    std::string bound_from;          ///< how the bound was reached, for people
    std::vector<JointBound> bounds;  ///< lower_bound is the least of these; both empty: total metal
    std::vector<JointPart> parts;    ///< or of these, and they leave nothing out
    bool is_too_large = false;       ///< not proved: no room for the tables of a better bound
};

/// The plan that comes first in the order of preference. Deterministic: counted steps, no clock.
JointPlan plan_joint(const JointJob& job, Prefer prefer, const CuttingEffort& effort = {});

/// The plans that no other plan found equals in laps, unbalanced edges and sticks together; ordered
/// by laps, then unbalanced edges. The plan that comes first by preference is looked for first.
std::vector<JointPlan> choices(const JointJob& job, Prefer prefer,
                               const CuttingEffort& effort = {});

/// Parts that prove the plan's lower_bound by themselves, however it was found; none where the
/// steps are too few, or edges differ in grid or stick.
std::vector<JointPart> parts_of_bound(const JointJob& job, const JointPlan& plan,
                                      const CuttingEffort& effort);

/// The choice that comes first by preference; nullptr when there is none.
const JointPlan* first_choice(const std::vector<JointPlan>& among, Prefer prefer);

}  // namespace hemline
