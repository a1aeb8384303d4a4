// RFC 4180 tables in UTF-8: quotes, doubled quotes, LF or CRLF, a required header line.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

struct Cell {
    std::string text;
    int line = 0;    ///< 1…, of the file
    int column = 0;  ///< 1…, in bytes, of the line
};

struct Table {
    std::vector<Cell> header;
    std::vector<std::vector<Cell>> rows;  ///< each as long as the header

    /// Index of a header, or none.
    [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const;
};

/// What is wrong, and where. line and column are 1-based; 0 where the whole file is meant.
struct TableProblem {
    int line = 0, column = 0;
    std::string what, mend;
};

/// The same with its place first, "Line 3, column 5: …". In English, as the columns of files and
/// the words in them are.
Problem said_of(const TableProblem& problem);

/// Reads a table: at most 1 MiB and 20 000 rows, valid UTF-8 without NUL, a byte-order mark
/// allowed, blank lines skipped, every row as long as the header, no header twice. A cell that
/// csv_row made harmless is turned back into its text.
std::variant<Table, TableProblem> read_table(std::string_view text);

}  // namespace hemline
