// The walk around a roof's edge: rows in walking order, the building on the left, become sides in
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

/// An edge as met on the walk; no length: not read yet.
struct WalkedEdge {
    Edge edge;
    std::optional<Length> length;
};

/// Which way a side is walked: from its left end (a gable's foot), or from its right end.
enum class WalkedFrom : std::uint8_t { left, right };

/// Which row a corner's angle was taken from.
struct CornerClaim {
    enum class Row : std::uint8_t { before, after } row = Row::before;  ///< of the corner
    enum class By : std::uint8_t { end_word, angle } by = By::end_word;
};

struct WalkCorner {
    std::optional<Angle> inside;        ///< plan angle inside the building; none: not known
    Angle within;                       ///< how far the stated figure may be off
    std::optional<CornerClaim> claim;   ///< none: it follows from the kinds of edge
    std::optional<CornerClaim> second;  ///< the row on the other side claims the same
    /// Another angle that is also claimed: the rows contradict each other.
    std::optional<Angle> against;
    CornerClaim against_claim;
};

struct WalkSide {
    std::optional<std::size_t> edge;  ///< index of the walked edge; none: a gable end without rows
    WalkedFrom from = WalkedFrom::left;
    std::optional<Length> length;  ///< as read, along the edge
    double plan_of_one = 1;        ///< plan length by slope length: cosθ of a gable, else 1
    double tape_nm = 0;            ///< what the tape allows, in plan: its error and half a mark
    double pitch_nm = 0;           ///< how far the error of the pitch reading shifts it, in plan
    WalkCorner after;
};

struct Walk {
    std::vector<WalkSide> sides;
    std::vector<WalkedEdge> edges;
};

/// Lays out the edges around the house in their order; other edges are skipped. A stated corner
/// wins over the words of the ends: corner_out and hip 90, corner_in and valley 270; where neither
/// is given, an eave and a gable meet at 90, two gables at the peak (or in the valley between them)
/// at 180, two open ends at 180. Two eaves that both end at a gable without a row between them get
/// a side of unread length. A stated figure that is a builder's angle (a multiple of 15 or 22.5)
/// counts as exact; any other figure is good to half its last decimal.
Walk lay_walk(std::span<const WalkedEdge> edges, Tape tape);

/// How far a stated corner may be off: half its last decimal; 0 for a builder's angle.
Angle off_of_stated(Angle corner);

/// The end of the side that the walk comes to last, and the end it starts from.
Side finish_of(const WalkSide& side);
Side start_of(const WalkSide& side);

}  // namespace hemline
