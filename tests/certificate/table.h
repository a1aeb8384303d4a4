// A CSV as RFC 4180 has it: cells in quotes where they hold a comma, a quote or a line end.
#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <vector>

namespace certificate {

struct Cell {
    std::string text;          ///< without the spaces around it
    int line = 0, column = 0;  ///< 1…, in bytes; where the cell begins
};

/// What is in a cell and cannot be read: "2:9: 9,65 m: " and why.
struct Refused : std::runtime_error {
    using std::runtime_error::runtime_error;
};
[[noreturn]] void refuse(const Cell& cell, const std::string& why);

struct Table {
    std::vector<Cell> header;
    std::vector<std::vector<Cell>> rows;  ///< each as wide as the header

    [[nodiscard]] bool has(const std::string& name) const;
    /// Throws std::runtime_error where there is none.
    [[nodiscard]] std::size_t column(const std::string& name) const;
};

/// Passes blank lines over. Throws Refused where a line is not as long as the header.
Table read_table(const std::string& csv);

/// Throws Refused where the text is not a whole number and nothing else.
std::int64_t whole(const Cell& cell);

}  // namespace certificate
