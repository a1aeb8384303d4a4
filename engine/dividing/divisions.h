// The ways to divide an edge into pieces that are worth choosing from.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/dividing/run.h"

namespace hemline {

/// An edge is unbalanced only where its number of pieces could be balanced.
enum class Balance : std::uint8_t { balanced = 0, cannot = 1, unbalanced = 2 };

/// A way to divide an edge that keeps the rules.
struct EdgeOption {
    std::vector<Division> pieces;  ///< in fitting order
    std::int64_t extra_laps = 0;   ///< beyond the fewest pieces
    Balance balance = Balance::balanced;
};

/// The divisions worth a choice, fewest laps first and balanced before unbalanced: balanced (in
/// both directions where an odd 1/16 in is left), or as near as that number of pieces allows; full
/// sticks and the rest at one side; the same with one more lap and small equal ends. Empty where no
/// piece can be long enough.
std::vector<EdgeOption> divisions_menu(const RunRule& rule);

/// Every balanced division into so many pieces whose first cut is on the grid or is a whole stick.
std::vector<EdgeOption> balanced_ways(const RunRule& rule, std::int64_t pieces);

/// True when some division of the edge into so many pieces is balanced and keeps the limits.
bool can_balance(const RunRule& rule, std::int64_t pieces);

}  // namespace hemline
