// Turns a row of the readings file, its cells found by their columns, into an edge and its length.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "engine/handover/readings_file.h"
#include "engine/measure/length_text.h"
#include "engine/trim/catalogue.h"
#include "engine/words/csv.h"

namespace hemline {

/// Reads and checks a row of a table whose columns are all known. Problem: the first cell that
/// cannot be right, with its column and the text found.
std::variant<EdgeReading, TableProblem> read_row(const Table& table, const std::vector<Cell>& cells,
                                                 const Catalogue& catalogue,
                                                 std::optional<BareUnit> bare, RowsFor rows_for);

}  // namespace hemline
