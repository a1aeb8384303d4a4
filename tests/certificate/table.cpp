#include "tests/certificate/table.h"

#include <algorithm>

namespace certificate {

namespace {

/// The cells of a line; passes its end over.
std::vector<Cell> read_line(const std::string& csv, std::size_t& at, int& line) {
    std::vector<Cell> cells(1);
    std::size_t begins = at;
    bool quoted = false;
    cells[0].line = line;
    cells[0].column = 1;
    for (; at < csv.size() && (quoted || csv[at] != '\n'); ++at) {
        if (csv[at] == '\n') {
            ++line;
            begins = at + 1;
        }
        if (csv[at] == '"') {
            if (!quoted && !cells.back().text.empty()) {
                refuse(cells.back(), "a quote inside a cell that is not in quotes");
            }
            const bool doubled = quoted && csv.compare(at, 2, "\"\"") == 0;
            at += doubled ? 1 : 0;
            cells.back().text += doubled ? "\"" : "";
            quoted = doubled ? quoted : !quoted;
        } else if (csv[at] == ',' && !quoted) {
            cells.push_back({"", line, static_cast<int>(at - begins) + 2});
        } else {
            cells.back().text += csv[at];
        }
    }
    if (quoted) {
        refuse(cells.back(), "the quote does not end");
    }
    ++at;
    ++line;
    for (Cell& cell : cells) {
        cell.text.erase(0, cell.text.find_first_not_of(" \t\r"));
        cell.text.erase(cell.text.find_last_not_of(" \t\r") + 1);
    }
    return cells;
}

bool is_blank(const std::vector<Cell>& cells) { return cells.size() == 1 && cells[0].text.empty(); }

}  // namespace

void refuse(const Cell& cell, const std::string& why) {
    throw Refused(std::to_string(cell.line) + ':' + std::to_string(cell.column) + ": " + cell.text +
                  ": " + why);
}

bool Table::has(const std::string& name) const {
    return std::any_of(header.begin(), header.end(),
                       [&](const Cell& own) { return own.text == name; });
}

std::size_t Table::column(const std::string& name) const {
    const auto at = std::find_if(header.begin(), header.end(),
                                 [&](const Cell& own) { return own.text == name; });
    if (at == header.end()) {
        throw std::runtime_error("there is no column " + name);
    }
    return static_cast<std::size_t>(at - header.begin());
}

Table read_table(const std::string& csv) {
    const std::string mark = "\xEF\xBB\xBF";  // of the byte order
    std::size_t at = csv.compare(0, mark.size(), mark) == 0 ? mark.size() : 0;
    int line = 1;
    Table table{read_line(csv, at, line), {}};
    while (at < csv.size()) {
        std::vector<Cell> cells = read_line(csv, at, line);
        if (is_blank(cells)) {
            continue;
        }
        if (cells.size() != table.header.size()) {
            refuse(cells.back(), "a line not as long as the header");
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

std::int64_t whole(const Cell& cell) {
    if (cell.text.empty() || cell.text.size() > 18 ||
        cell.text.find_first_not_of("0123456789", cell.text[0] == '-' ? 1 : 0) !=
            std::string::npos) {
        refuse(cell, "not a plain whole number");
    }
    return std::stoll(cell.text);
}

}  // namespace certificate
