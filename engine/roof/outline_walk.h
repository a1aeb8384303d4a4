// The walk round a roof's edge: rows in walking order, the building on the left, become sides in
// plan with the corner that follows each.
//
//        C  <--           eave and high eave: walked from left to right
//      +--------+         gable: up from its foot, or down to it where the edge before it went up
//    D |        | B       or was a high eave; in plan it is its slope length × cosθ
//      +--------+
//        --> A            corner after a side: its finishing end with the next side's starting end
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge.h"

namespace hemline {

/// One edge as it is met on the walk; no length: not read yet.
struct WalkedEdge {
    Edge edge;
    std::optional<Length> length;
};

/// Which way a side is walked: from its left end (a gable's foot), or from its right end.
enum class WalkedFrom : std::uint8_t { left, right };

/// Whose words a corner's angle was taken from.
struct CornerClaim {
    enum class Row : std::uint8_t { before, after } row = Row::before;  ///< of the corner
    enum class By : std::uint8_t { end_word, angle } by = By::end_word;
};

struct WalkCorner {
    std::optional<Angle> inside;        ///< plan angle inside the building; none: not known
    Angle within;                       ///< how far the stated figure may be off
    std::optional<CornerClaim> claim;   ///< none: nobody said it, the kinds of edge did
    std::optional<CornerClaim> second;  ///< the row on the other side claims it too
    /// Another angle that is claimed too: the rows contradict one another.
    std::optional<Angle> against;
    CornerClaim against_claim;
};

struct WalkSide {
    std::optional<std::size_t> edge;  ///< index of the walked edge; none: a gable end without rows
    WalkedFrom from = WalkedFrom::left;
    std::optional<Length> length;  ///< as read, along the edge
    double plan_of_one = 1;        ///< plan length for one of the edge's own: cosθ of a gable
    double tape_nm = 0;            ///< what the tape allows, in plan: its error and half a mark
    double pitch_nm = 0;           ///< what the pitch reading's own error shifts it by, in plan
    WalkCorner after;
};

struct Walk {
    std::vector<WalkSide> sides;
    std::vector<WalkedEdge> edges;
};

/// Lays the edges that stand around the house out in their order; the others are passed over. A
/// stated corner wins over the words of the ends: corner_out and hip 90, corner_in and valley 270;
/// where neither is said, an eave and a gable meet at 90, two gables at the peak (or in the valley
/// between them) at 180, two open ends at 180. Two eaves that both end at a gable without a row
/// between them get a side of unread length. A stated figure that is a builder's angle (a multiple
/// of 15 or 22.5) counts as exact, another as good to half its last decimal.
Walk lay_walk(std::span<const WalkedEdge> edges, Tape tape);

/// The end of the side that the walk comes to last, and the one it starts from.
Side finish_of(const WalkSide& side);
Side start_of(const WalkSide& side);

}  // namespace hemline
