// The pieces file of `cut`: how many pieces of each length.
//
//   length,count
//   46 1/4 in,3
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "engine/cutting/cutting.h"
#include "engine/measure/length_text.h"
#include "engine/words/csv.h"

namespace hemline {

/// Reads and checks every row, columns in any order. Problem: a column missing or unknown, a length
/// not above 0 or past longest_readable(), a count that is not a whole number from 1 on, or more
/// than cut_pieces_most pieces; with its line, its column and what to do.
std::variant<std::vector<CutDemand>, TableProblem> read_pieces(const std::string& text,
                                                               std::optional<BareUnit> bare);

/// A length above 0 that a stick or a piece may have.
Result<Length> read_metal(std::string_view text, std::optional<BareUnit> bare);

/// A whole number from 1 to a million; none for anything else.
std::optional<std::int64_t> read_count(std::string_view text);

/// The text without the spaces around it.
std::string_view without_spaces(std::string_view text);

}  // namespace hemline
