// A CSV of plain cells: no quotes, whole numbers where a number is asked for.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace certificate {

struct Table {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;  ///< each as wide as the header

    [[nodiscard]] bool has(const std::string& name) const;
    /// Throws std::runtime_error where there is none.
    [[nodiscard]] std::size_t column(const std::string& name) const;
};

/// Throws std::runtime_error where a line is longer than the header.
Table read_table(const std::string& csv);

/// Throws where the text is not a whole number and nothing else.
std::int64_t whole(const std::string& text);

}  // namespace certificate
