#include "tools/cli/pieces_file.h"

#include <algorithm>

#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

/// A column that is unknown, or that is missing.
std::optional<TableProblem> problem_with_columns(const Table& table) {
    for (const Cell& cell : table.header) {
        if (cell.text != "length" && cell.text != "count") {
            return TableProblem{cell.line, cell.column,
                                hemline::quoted(cell.text) + " is no column here.",
                                "The columns are length and count."};
        }
    }
    for (const char* name : {"length", "count"}) {
        if (!table.column(name)) {
            return TableProblem{1, 1, std::string("There is no column ") + name + ".",
                                "The first line names the columns: length,count."};
        }
    }
    return {};
}

}  // namespace

std::string_view without_spaces(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos
               ? std::string_view()
               : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

Result<Length> read_metal(std::string_view text, std::optional<BareUnit> bare) {
    const Result<Length> length = parse_length(text, bare);
    if (length && (*length <= Length() || *length > longest_readable())) {
        return Problem{say("{1} is no length of metal.", quoted(text)),
                       say("Give a length above 0 and not past 1 km, such as \"10 ft\".")};
    }
    return length;
}

std::optional<std::int64_t> read_count(std::string_view text) {
    const bool is_number =
        !text.empty() && text.size() <= 7 &&
        std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!is_number) {
        return std::nullopt;
    }
    const std::int64_t count = std::stoll(std::string(text));
    return count < 1 || count > cut_pieces_most ? std::nullopt : std::optional(count);
}

std::variant<std::vector<CutDemand>, TableProblem> read_pieces(const std::string& text,
                                                               std::optional<BareUnit> bare) {
    const auto read = read_table(text);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return *problem;
    }
    const Table& table = std::get<Table>(read);
    if (const auto problem = problem_with_columns(table)) {
        return *problem;
    }
    std::vector<CutDemand> pieces;
    std::int64_t all = 0;
    for (const auto& row : table.rows) {
        const Cell& length_cell = row[*table.column("length")];
        const Cell& count_cell = row[*table.column("count")];
        const Result<Length> length = read_metal(without_spaces(length_cell.text), bare);
        if (!length) {
            return TableProblem{length_cell.line, length_cell.column,
                                "length: " + length.problem().what.english(),
                                length.problem().mend.english()};
        }
        const auto count = read_count(without_spaces(count_cell.text));
        if (!count) {
            return TableProblem{
                count_cell.line, count_cell.column,
                "count " + hemline::quoted(count_cell.text) + " is no number of pieces.",
                "Give a whole number from 1 to 1000000."};
        }
        all += *count;
        if (all > cut_pieces_most) {
            return TableProblem{count_cell.line, count_cell.column,
                                "The pieces up to this row are more than 1000000.",
                                "Split the list, and look at the counts."};
        }
        pieces.push_back({*length, *count});
    }
    return pieces;
}

}  // namespace hemline
