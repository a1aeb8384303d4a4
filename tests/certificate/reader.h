// An independent reader of `cut --certificate FILE`: checks in whole numbers that every piece lies
// once on one stick and that no plan uses fewer. Shares no code with Hemline, and links none.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

namespace certificate {

using Int = std::int64_t;

/// Length in nanometers and how many of them.
using Pieces = std::vector<std::pair<Int, Int>>;

/// Reads the columns `length,count` of plain whole numbers in units of `unit_nm`. Throws
/// std::runtime_error where there are none.
Pieces read_pieces(const std::string& csv, Int unit_nm);

/// Everything wrong with the layouts, the counts and the bound, in words; empty when all is shown.
/// `plan`: what `cut --json` printed for the same pieces.
std::vector<std::string> wrong_with(const Pieces& pieces, const nlohmann::json& certificate,
                                    const nlohmann::json& plan);

}  // namespace certificate
