// Divides an edge into the pieces that cover it, end to end.
//
//   fitted first                                     fitted last
//   |tab|---covers 1---|·lap·|
//                      |---covers 2---|·lap·|
//                                     |---covers 3---|tab|
//   cut = covers + its end allowance + lap (all but the last); Σ covers = the edge, exactly.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "engine/quantity/length.h"
#include "engine/words/result_declared.h"

namespace hemline {

enum class Style : std::uint8_t { balanced = 0, equal = 1, full = 2 };

/// What counts first when edges are divided together: looks: unbalanced edges, laps, sticks ·
/// laps: laps, unbalanced, sticks · sticks: sticks, laps, unbalanced.
enum class Prefer : std::uint8_t { looks = 0, laps = 1, sticks = 2 };

struct RunRule {
    Length edge;             ///< the length to cover, > 0
    Length allowance_first;  ///< what the end fitted first adds
    Length allowance_last;
    Length stock;
    Length lap;     ///< 0 for a butted run
    Length sliver;  ///< least cut length
    Length grid;    ///< cuts lie on this; the remainder goes to the last piece
};

struct Division {
    Length cut;
    Length covers;

    bool operator==(const Division&) const = default;
};

/// Fewest pieces that can cover the run: 1 when T ≤ stock, else ⌈(T − lap)/(stock − lap)⌉ with
/// T = edge + both allowances.
std::int64_t fewest_pieces(const RunRule& rule);

/// Divides the run in the style, in fitting order.
///  balanced: first and last visible lengths within 1/16 in and full sticks between; where the
///            fewest pieces cannot, the ends may differ by up to one lap before another lap is
///            added.
///  equal:    equal visible lengths, as near as the stock allows.
///  full:     full sticks from the side fitted first, the last not a sliver.
/// Problem: a lap not shorter than the stock, an edge not above 0, or a sliver that cannot be
/// avoided (stock under two slivers).
Result<std::vector<Division>> divide_run(const RunRule& rule, Style style);

/// Divides again around pieces already cut (`cut[i]`: the real cut length of piece i, in fitting
/// order; none: still to cut). Pieces that need not change keep their length. The difference goes
/// to the last uncut piece, then to those before it, and what they cannot take to one more piece.
/// The numbering of cut pieces never changes.
Result<std::vector<Division>> divide_again(const RunRule& rule, Style style,
                                           std::span<const std::optional<Length>> cut);

/// The same around a division planned before, which covered the edge or nearly so: pieces that need
/// not change keep its cuts.
Result<std::vector<Division>> divide_around(const RunRule& rule, std::span<const Division> planned,
                                            std::span<const std::optional<Length>> cut);

/// True when the first and last visible lengths are within 1/16 in of each other and all pieces
/// between are full sticks.
bool is_balanced(std::span<const Division> run, const RunRule& rule);

/// A butted cleat run whose joints stay `clear` outside every lap of the trim above it. `trim`: the
/// trim's division on the same edge, in fitting order, its first piece starting at 0. `cut`: as in
/// divide_again(). Problem: a stick too short to reach across the stretch that a lap bars.
Result<std::vector<Division>> divide_cleat(Length edge, Length stock, Length grid, Length clear,
                                           Length lap, std::span<const Division> trim,
                                           std::span<const std::optional<Length>> cut = {});

}  // namespace hemline
