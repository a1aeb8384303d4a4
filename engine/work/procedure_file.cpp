// Reading a procedures file, and refusing what a crew could not follow.
#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "engine/words/csv.h"
#include "engine/work/procedure.h"
#include "engine/work/procedure_words.h"

namespace hemline {
namespace {

constexpr int words_most = 12;  ///< of an action
constexpr int steps_most = 7;   ///< of a part

constexpr std::string_view columns[] = {"id",    "part",    "each",  "asks", "action", "why",
                                        "wrong", "caution", "least", "most", "source"};
constexpr std::string_view edge_words[] = {"edge",  "pieces", "lap",      "spacing",
                                           "beads", "trim",   "closures", "closure",
                                           "fold",  "toward", "reason"};
constexpr std::string_view piece_words[] = {"piece", "neighbour", "cut", "screws"};

template <class Words>
bool holds(const Words& words, std::string_view word) {
    return std::find(std::begin(words), std::end(words), word) != std::end(words);
}

Problem problem_at(int line, int column, std::string_view what, std::string mend) {
    return said_of(TableProblem{line, column, std::string(what), std::move(mend)});
}

Problem problem_at(const Cell& cell, std::string_view what, std::string mend) {
    return problem_at(cell.line, cell.column, what, std::move(mend));
}

int words_in(std::string_view text) {
    int words = 0;
    bool inside = false;
    for (const char c : text) {
        words += c != ' ' && !inside ? 1 : 0;
        inside = c != ' ';
    }
    return words;
}

/// The cells of one row by the name of their column.
struct Row {
    const Table& table;
    const std::vector<Cell>& cells;

    const Cell& operator[](std::string_view name) const { return cells[*table.column(name)]; }
    /// The cell of a column that need not be there.
    [[nodiscard]] const Cell* find(std::string_view name) const {
        const auto column = table.column(name);
        return column ? &cells[*column] : nullptr;
    }
    [[nodiscard]] std::string_view when() const {
        const Cell* cell = find("when");
        return cell == nullptr ? std::string_view() : cell->text;
    }
};

std::optional<Problem> bad_header(const Table& table) {
    for (const Cell& cell : table.header) {
        if (!holds(columns, cell.text) && cell.text != "when") {
            return problem_at(cell, "there is no column \"" + cell.text + "\".", "Take it out.");
        }
    }
    for (const std::string_view name : columns) {
        if (!table.column(name)) {
            return problem_at(1, 1, "the column \"" + std::string(name) + "\" is missing.",
                              "Add it to the first line.");
        }
    }
    return {};
}

std::optional<Problem> bad_action(const Cell& cell, Each each) {
    if (cell.text.empty()) {
        return problem_at(cell, "the action is empty.", "Say what the hands do.");
    }
    if (words_in(cell.text) > words_most) {
        return problem_at(cell, "the action has more than twelve words.", "Make two steps of it.");
    }
    for (const std::string& word : words_in_braces(cell.text)) {
        if (!holds(edge_words, word) && !(is_of_pieces(each) && holds(piece_words, word))) {
            return problem_at(cell, "this step knows no number {" + word + "}.",
                              "Use {edge}, {pieces}, {lap}, {spacing}, {beads}, {trim}, "
                              "{closures}, {closure}, {fold}, {toward}, {reason}; "
                              "with pieces also {piece}, {neighbour}, {cut}, {screws}.");
        }
    }
    return {};
}

std::optional<Problem> bad_limit(const Cell& cell, Asks asks) {
    if (cell.text.empty()) {
        return {};
    }
    if (asks == Asks::length && !length_limit(cell.text, {})) {
        return problem_at(cell, "\"" + cell.text + "\" is no length and no rule of practice.",
                          "Write a length with its unit, or a rule such as lap.");
    }
    if (asks == Asks::count && !count_limit(cell.text, {})) {
        return problem_at(cell, "\"" + cell.text + "\" is no whole number.",
                          "Write a whole number, or screws or closures for as many as planned.");
    }
    if (asks != Asks::length && asks != Asks::count) {
        return problem_at(cell, "only a length or a count has limits.", "Leave it empty.");
    }
    return {};
}

std::optional<Problem> bad_row(const Row& row, const StepRule& rule) {
    for (const std::string_view name : {"id", "part", "why", "wrong", "source"}) {
        if (row[name].text.empty()) {
            return problem_at(row[name], "the " + std::string(name) + " is empty.", "Fill it in.");
        }
    }
    if (auto problem = bad_action(row["action"], rule.each)) {
        return problem;
    }
    if (auto problem = bad_limit(row["least"], rule.asks)) {
        return problem;
    }
    if (rule.least == screws_planned && !is_of_pieces(rule.each)) {
        return problem_at(row["least"], "only a step of pieces has screws planned.",
                          "Write a whole number.");
    }
    return bad_limit(row["most"], rule.asks);
}

Result<StepRule> read_rule(const Row& row) {
    const std::optional<Each> each = each_of(row["each"].text);
    if (!each) {
        return problem_at(row["each"],
                          "\"" + row["each"].text + "\" is not how often a step comes.",
                          "Use edge, wrap_piece, cleat_piece, trim_piece, trim_lap, "
                          "last_trim_piece or sent_back.");
    }
    const std::optional<Asks> asks = asks_of(row["asks"].text);
    if (!asks) {
        return problem_at(row["asks"], "\"" + row["asks"].text + "\" is not what a step can ask.",
                          "Use done, length, count, seen, cut, remainder, tick or side.");
    }
    if ((*asks == Asks::cut && !is_of_pieces(*each)) ||
        (*asks == Asks::remainder && *each != Each::last_trim_piece) ||
        (*asks == Asks::tick && *each != Each::edge)) {
        return problem_at(
            row["asks"],
            "\"" + row["asks"].text + "\" does not go with \"" + row["each"].text + "\".",
            "A cut is of a piece, a remainder of the last, a tick of the edge.");
    }
    if ((*each == Each::sent_back) != (row["id"].text == mend_step)) {
        return problem_at(row["id"], "the step mend, and no other, comes when sent back.",
                          "Give it the id mend and sent_back.");
    }
    const std::string_view when = row.when();
    if (!when.empty() && !end_of(when)) {
        return problem_at(*row.find("when"), "\"" + std::string(when) + "\" is not an end.",
                          "Write gable, corner_out, corner_in, wall, open, eave, ridge, hip or "
                          "valley, or leave the cell empty.");
    }
    StepRule rule{row["id"].text,
                  row["part"].text,
                  when.empty() ? std::nullopt : end_of(when),
                  *each,
                  *asks,
                  row["action"].text,
                  row["why"].text,
                  row["wrong"].text,
                  row["caution"].text,
                  row["least"].text,
                  row["most"].text,
                  row["source"].text};
    if (auto problem = bad_row(row, rule)) {
        return *problem;
    }
    return rule;
}

}  // namespace

Result<std::vector<StepRule>> read_procedure(std::string_view csv) {
    const auto read = read_table(csv);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return problem_at(problem->line, problem->column, problem->what, problem->mend);
    }
    const Table& table = *std::get_if<Table>(&read);
    if (auto problem = bad_header(table)) {
        return *problem;
    }
    std::vector<StepRule> rules;
    std::set<std::string> ids;
    std::map<std::string, int> steps_in;
    for (const std::vector<Cell>& cells : table.rows) {
        const Row row{table, cells};
        const Result<StepRule> rule = read_rule(row);
        if (!rule) {
            return rule.problem();
        }
        if (!ids.insert(rule->id).second) {
            return problem_at(row["id"], "the id \"" + rule->id + "\" is there twice.",
                              "Give each step its own id.");
        }
        if (++steps_in[rule->part] > steps_most) {
            return problem_at(row["part"],
                              "the part \"" + rule->part + "\" has more than seven steps.",
                              "Begin another part.");
        }
        rules.push_back(*rule);
    }
    return rules;
}

}  // namespace hemline
