// Dividing every edge of a pool and cutting all of their pieces, as one problem: what fewer sticks
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

/// One edge of the pool. `looks`: free may run out to one side, anything else is balanced or as
/// near as it can be.
struct JointEdge {
    RunRule rule;
    Looks looks = Looks::by_preference;
    std::vector<Division> keeps;  ///< the division of an edge under way; empty: still to choose
    std::vector<std::optional<Length>> cut = {};  ///< and its pieces that are cut, in fitting order
};

/// One pool: edges of one metal and profile share sticks. No edge's rule.stock is longer than the
/// longest stick.
struct JointJob {
    std::vector<JointEdge> edges;
    std::vector<StockLength> stock;
    Length kerf;
};

/// One cutting job that bounds the joint one from below: what any lawful plan with so many laps
/// shared out over its groups of edges needs, so many sticks of it paid already. docs/cutting.md
/// proves it.
struct JointBound {
    CuttingJob relaxed;
    Certificate certificate;
    std::int64_t paid = 0;    ///< sticks of groups that share laps
    std::int64_t sticks = 0;  ///< paid + what the certificate bounds
};

/// Why no plan within so many laps and unbalanced edges takes fewer new sticks: a piece is worth
/// the more the longer it is, no stick of stock[k] holds more than stick_worth[k], and each edge
/// takes at least the worth of its cheapest lawful division, with `lap` for each lap more and
/// `unbalanced` where it is. As in Certificate, limited stock may hold more than its share.
/// docs/cutting.md.
struct JointWorths {
    std::vector<Length> from;               ///< rising
    std::vector<std::int64_t> worth;        ///< of a piece from there on; a shorter one 0
    std::vector<std::int64_t> stick_worth;  ///< one for each stock
    std::int64_t lap = 0, unbalanced = 0;
    std::int64_t share = 1;
    std::int64_t bound = 0;
};

/// No shorter and no longer than this, each taken down to the grid.
struct LengthRange {
    Length least, most;
};

/// Some divisions of one edge: those of some classes, a bit 2·laps (+ 1 where unbalanced) each.
/// Where there are ranges, all classes are of so many pieces, and of the pieces in rising order
/// each lies in its own; neither end of a range is below that of the one before.
struct DivisionSet {
    std::uint32_t classes = 0;
    std::vector<LengthRange> ranges;
};

/// One for each edge.
using DivisionSets = std::vector<DivisionSet>;

/// One part of all ways to choose, and what bounds its plans.
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
    std::int64_t sticks = 0;       ///< new sticks
    std::int64_t lower_bound = 0;  ///< for no more laps and unbalanced edges than these
    bool proved = false;           ///< sticks == lower_bound and every piece is cut
    std::string bound_from;        ///< how the bound was reached, for people
    std::vector<JointBound>
        bounds;                    ///< lower_bound is the least of theirs; both empty: metal in all
    std::vector<JointPart> parts;  ///< or of theirs, and they leave nothing out
    bool is_too_large = false;     ///< not proved: a better bound has no room for its tables
};

/// The plan that comes first in the order of preference. Deterministic: counted steps, no clock.
JointPlan plan_joint(const JointJob& job, Prefer prefer, const CuttingEffort& effort = {});

/// The plans that no other found is as good as in laps, unbalanced edges and sticks; by laps, then
/// unbalanced edges. The one that comes first in the order of preference is looked for first.
std::vector<JointPlan> choices(const JointJob& job, Prefer prefer,
                               const CuttingEffort& effort = {});

/// Parts that show the plan's lower_bound by themselves, however it was found; none where the steps
/// do not suffice, or edges differ in grid or stick.
std::vector<JointPart> parts_of_bound(const JointJob& job, const JointPlan& plan,
                                      const CuttingEffort& effort);

/// The one of some choices that comes first; nullptr of none.
const JointPlan* first_choice(const std::vector<JointPlan>& among, Prefer prefer);

}  // namespace hemline
