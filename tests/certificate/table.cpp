#include "tests/certificate/table.h"

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace certificate {

namespace {

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream text(line);
    for (std::string cell; std::getline(text, cell, ',');) {
        while (!cell.empty() && (cell.back() == '\r' || cell.back() == ' ')) {
            cell.pop_back();
        }
        cells.push_back(cell);
    }
    return cells;
}

}  // namespace

bool Table::has(const std::string& name) const {
    return std::find(header.begin(), header.end(), name) != header.end();
}

std::size_t Table::column(const std::string& name) const {
    const auto at = std::find(header.begin(), header.end(), name);
    if (at == header.end()) {
        throw std::runtime_error("there is no column " + name);
    }
    return static_cast<std::size_t>(at - header.begin());
}

Table read_table(const std::string& csv) {
    std::istringstream text(csv);
    std::string line;
    std::getline(text, line);
    Table table{cells_of(line), {}};
    while (std::getline(text, line)) {
        std::vector<std::string> cells = cells_of(line);
        if (cells.size() > table.header.size()) {
            throw std::runtime_error("a line longer than the header: " + line);
        }
        cells.resize(table.header.size());  // empty cells at the end leave no trace
        table.rows.push_back(std::move(cells));
    }
    return table;
}

std::int64_t whole(const std::string& text) {
    std::size_t read = 0;
    const std::int64_t number = std::stoll(text, &read);
    if (read != text.size()) {
        throw std::runtime_error("not a plain whole number: " + text);
    }
    return number;
}

}  // namespace certificate
