// The outline of a roof: does the walk round its edges close, what is wrong when it does not, and
// how it looks from above, to scale, as readings come in.
//
//        y                  closes within what the tapes allow?
//        ^  +------+        else by how much it fails, in which direction,
//        |  |      +---+    and which single correction closes it
//        |  +----------+
//        +----> x   the first edge, as it is walked
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/roof/outline_suspects.h"
#include "engine/roof/outline_walk.h"
#include "engine/words/result_declared.h"

namespace hemline {

enum class OutlineState : std::uint8_t {
    closes,  ///< every side read, every corner known, and it closes
    misses,  ///< it cannot come back, whatever is still unread, or it crosses itself
    open,    ///< something is still to be read, and no reading is wrong so far
};

/// How a side's length in a drawing is known.
enum class LengthIs : std::uint8_t {
    read,
    implied,  ///< not read: what closes the outline
    guessed,  ///< not read, and nothing settles it: drawn as the mean of the sides read
};

struct PlanPoint {
    Length x, y;

    bool operator==(const PlanPoint&) const = default;
};

/// One edge seen from above.
struct OutlineLine {
    std::string edge;  ///< id; empty: a gable end that no row lists
    EdgeKind kind = EdgeKind::eave;
    PlanPoint from, to;  ///< as walked, the building on the left
    Length plan;         ///< in plan, as read or implied; a guess where nothing settles it
    LengthIs length = LengthIs::read;
    std::optional<Angle> inside;  ///< plan angle inside at `to`; none: not known
};

/// Something that a person should know about a row.
struct OutlineNote {
    std::string edge;  ///< id
    std::string field;
    Text what, mend;
};

struct Outline {
    OutlineState state = OutlineState::open;
    Length miss;  ///< from the walk's beginning to its end: what unread lengths cannot explain
    Length miss_ahead, miss_left;  ///< its parts along the first edge and across it
    Length allowed;                ///< what the readings allow in the direction of the miss
    /// 360° less all turns: not 0 when a turn is missing or there is one too many.
    std::optional<Angle> turn_left;
    /// Two sides of a walk that comes back, as `lines` has them, that cross: no roof's do.
    std::optional<std::pair<std::size_t, std::size_t>> crossing;
    std::vector<Suspect> suspects;  ///< most likely first
    std::vector<OutlineNote> notes;
    /// For drawing only, never for cutting: adjusted by least squares where the walk is complete
    /// and its turns close, else as walked.
    std::vector<OutlineLine> lines;
};

/// Most edges that an outline may have.
constexpr std::size_t outline_edges_most = 400;

/// Walks the eaves, gables and high eaves among the edges, in their order, the building on the
/// left. O(n²) for n edges, O(n³) where it does not close. Lengths to the nearest nanometer.
/// Problem: none of those kinds, or more than outline_edges_most of them.
Result<Outline> trace_outline(std::span<const WalkedEdge> edges, Tape tape);

/// "closes", "misses", "open".
std::string_view word_of(OutlineState);

}  // namespace hemline
