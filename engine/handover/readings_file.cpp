#include "engine/handover/readings_file.h"

#include <algorithm>
#include <array>
#include <map>

#include "engine/handover/readings_row.h"
#include "engine/words/quote.h"

namespace hemline {

namespace {

constexpr std::array<std::string_view, 7> required_columns = {"edge", "kind",  "trim", "length",
                                                              "left", "right", "pitch"};
constexpr std::array<std::string_view, 14> optional_columns = {
    "first", "looks",  "seam",   "metal",       "thickness",    "colour", "fascia",
    "face",  "flange", "pitch2", "corner_left", "corner_right", "lap",    "expected"};

template <class Names>
bool names(const Names& known, std::string_view word) {
    return std::find(known.begin(), known.end(), word) != known.end();
}

std::optional<TableProblem> check_columns(const Table& table) {
    for (const Cell& cell : table.header) {
        if (!names(required_columns, cell.text) && !names(optional_columns, cell.text)) {
            return TableProblem{cell.line, cell.column,
                                "The column " + quoted(cell.text) + " is not known.",
                                "Take the column out, or mend its name: edge, kind, trim, length, "
                                "left, right, pitch; and if needed first, looks, seam, metal, "
                                "thickness, colour, fascia, face, flange, pitch2, corner_left, "
                                "corner_right, lap, expected."};
        }
    }
    for (const std::string_view name : required_columns) {
        if (!table.column(name)) {
            return TableProblem{table.header.front().line, 1,
                                "The column " + quoted(name) + " is missing from the header.",
                                "Add the column to the header and to every row."};
        }
    }
    return {};
}

}  // namespace

std::variant<std::vector<EdgeReading>, TableProblem> read_readings(std::string_view csv,
                                                                   const Catalogue& catalogue,
                                                                   std::optional<BareUnit> bare,
                                                                   RowsFor rows_for) {
    auto read = read_table(csv);
    if (auto* problem = std::get_if<TableProblem>(&read)) {
        return *problem;
    }
    const Table& table = *std::get_if<Table>(&read);
    if (auto problem = check_columns(table)) {
        return *problem;
    }
    std::vector<EdgeReading> readings;
    std::map<std::string, int> lines;  // of the edges read so far
    for (const auto& cells : table.rows) {
        auto row = read_row(table, cells, catalogue, bare, rows_for);
        if (auto* problem = std::get_if<TableProblem>(&row)) {
            return *problem;
        }
        EdgeReading& reading = *std::get_if<EdgeReading>(&row);
        const auto [before, fresh] = lines.emplace(reading.edge.id, reading.line);
        if (!fresh) {
            const Cell& cell = cells[*table.column("edge")];
            return TableProblem{cell.line, cell.column,
                                "edge " + quoted(reading.edge.id) + " stands already in line " +
                                    std::to_string(before->second) + ".",
                                "Give every edge a name of its own."};
        }
        readings.push_back(std::move(reading));
    }
    return readings;
}

}  // namespace hemline
