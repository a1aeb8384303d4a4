#include "engine/words/csv.h"

#include "engine/words/csv_row.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/words/utf8.h"

namespace hemline {

namespace {

constexpr std::size_t bytes_most = 1U << 20;
constexpr std::size_t rows_most = 20'000;
constexpr std::size_t columns_most = 100;

/// Where the reading stands; lines and columns are counted in bytes from 1.
struct Place {
    std::string_view text;
    std::size_t next = 0;
    int line = 1;
    std::size_t line_from = 0;

    [[nodiscard]] bool ended() const { return next >= text.size(); }
    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return next + ahead < text.size() ? text[next + ahead] : '\0';
    }
    [[nodiscard]] int column() const { return static_cast<int>(next - line_from) + 1; }
    [[nodiscard]] TableProblem problem(std::string what, std::string mend) const {
        return {line, column(), std::move(what), std::move(mend)};
    }
    /// Bytes of the line end here: 2 for CR LF, 1 for LF, 0 for none.
    [[nodiscard]] std::size_t line_end() const {
        if (peek() == '\r' && peek(1) == '\n') {
            return 2;
        }
        return peek() == '\n' ? 1 : 0;
    }
    void pass_line_end() {
        next += line_end();
        ++line;
        line_from = next;
    }
};

/// UTF-8 throughout, without NUL and without a lone carriage return.
std::optional<TableProblem> check_bytes(Place place) {
    while (!place.ended()) {
        if (place.line_end() > 0) {
            place.pass_line_end();
            continue;
        }
        const CodePoint point = code_point_at(place.text, place.next);
        if (point.bytes == 0) {
            return place.problem("The file is not valid UTF-8 here.", "Save it as UTF-8 text.");
        }
        if (point.value == 0) {
            return place.problem("The file has a zero byte here.", "Save it as plain UTF-8 text.");
        }
        if (point.value == '\r') {
            return place.problem("A carriage return stands alone here.",
                                 "Save the file with LF or CR LF line ends.");
        }
        place.next += point.bytes;
    }
    return {};
}

/// A cell in quotes; `place` stands on the first quote.
std::optional<TableProblem> read_quoted(Place& place, Cell& cell) {
    const Place opening = place;
    ++place.next;
    for (;;) {
        if (place.ended()) {
            return opening.problem("A quoted cell begins here and never ends.",
                                   "Put a quote at the end of the cell.");
        }
        if (const std::size_t end = place.line_end(); end > 0) {
            cell.text += place.text.substr(place.next, end);
            place.pass_line_end();
            continue;
        }
        if (place.peek() == '"') {
            if (place.peek(1) != '"') {
                break;
            }
            ++place.next;  // a doubled quote means a quote
        }
        cell.text += place.peek();
        ++place.next;
    }
    ++place.next;
    if (!place.ended() && place.peek() != ',' && place.line_end() == 0) {
        return place.problem("Text goes on after the closing quote of a cell.",
                             "Put the whole cell in quotes, and double each quote inside it.");
    }
    return {};
}

std::optional<TableProblem> read_plain(Place& place, Cell& cell) {
    while (!place.ended() && place.peek() != ',' && place.line_end() == 0) {
        if (place.peek() == '"') {
            return place.problem("A quote stands inside a cell that is not in quotes.",
                                 "Write in instead of the inch mark, or put the cell in quotes and "
                                 "double each quote inside it.");
        }
        cell.text += place.peek();
        ++place.next;
    }
    return {};
}

/// A line of cells; stands behind the line end after it.
std::optional<TableProblem> read_row(Place& place, std::vector<Cell>& row) {
    for (;;) {
        Cell cell;
        cell.line = place.line;
        cell.column = place.column();
        auto problem = place.peek() == '"' ? read_quoted(place, cell) : read_plain(place, cell);
        if (problem) {
            return problem;
        }
        cell.text = text_of_cell(cell.text);
        row.push_back(std::move(cell));
        if (place.peek() != ',') {
            break;
        }
        ++place.next;
    }
    if (!place.ended()) {
        place.pass_line_end();
    }
    return {};
}

std::optional<TableProblem> check_header(const std::vector<Cell>& header) {
    if (header.size() > columns_most) {
        return TableProblem{header[0].line, header[columns_most].column,
                            "The header has more than 100 columns.", "Take the extra ones out."};
    }
    for (std::size_t i = 0; i < header.size(); ++i) {
        const Cell& cell = header[i];
        if (cell.text.empty()) {
            return TableProblem{cell.line, cell.column, "A column has no name.",
                                "Name every column in the header line."};
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (header[j].text == cell.text) {
                return TableProblem{cell.line, cell.column,
                                    "The column " + quoted(cell.text) + " stands there twice.",
                                    "Keep one of the two columns."};
            }
        }
    }
    return {};
}

std::optional<TableProblem> check_row(const Table& table, const std::vector<Cell>& row) {
    if (table.rows.size() == rows_most) {
        return TableProblem{row[0].line, 1, "The file has more than 20 000 rows.",
                            "Split the file."};
    }
    if (row.size() == table.header.size()) {
        return {};
    }
    const bool longer = row.size() > table.header.size();
    const Cell& cell = longer ? row[table.header.size()] : row.back();
    return TableProblem{cell.line, cell.column,
                        "The row has " + std::to_string(row.size()) + " cells, and the header " +
                            std::to_string(table.header.size()) + ".",
                        longer ? "Take the extra cells out, or put a cell that holds a comma in "
                                 "quotes."
                               : "Add the missing cells; leave them empty between their commas."};
}

}  // namespace

Problem said_of(const TableProblem& problem) {
    return {Text("Line " + std::to_string(problem.line) + ", column " +
                 std::to_string(problem.column) + ": " + problem.what),
            Text(problem.mend)};
}

std::optional<std::size_t> Table::column(std::string_view name) const {
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (header[i].text == name) {
            return i;
        }
    }
    return {};
}

std::variant<Table, TableProblem> read_table(std::string_view text) {
    if (text.size() > bytes_most) {
        return TableProblem{0, 0, "The file is larger than 1 MiB.", "Split the file."};
    }
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    const bool marked = text.substr(0, byte_order_mark.size()) == byte_order_mark;
    Place place{text, marked ? byte_order_mark.size() : 0, 1, 0};
    if (auto problem = check_bytes(place)) {
        return *problem;
    }
    Table table;
    while (!place.ended()) {
        if (place.line_end() > 0) {
            place.pass_line_end();
            continue;
        }
        std::vector<Cell> row;
        if (auto problem = read_row(place, row)) {
            return *problem;
        }
        const bool is_header = table.header.empty();
        if (auto problem = is_header ? check_header(row) : check_row(table, row)) {
            return *problem;
        }
        if (is_header) {
            table.header = std::move(row);
        } else {
            table.rows.push_back(std::move(row));
        }
    }
    if (table.header.empty()) {
        return TableProblem{0, 0, "The file is empty.", "Begin it with the header line."};
    }
    return table;
}

}  // namespace hemline
