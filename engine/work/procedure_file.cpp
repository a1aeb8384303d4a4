// Reads a procedures file, and refuses what a crew could not follow.
#include <algorithm>
#include <array>
#include <map>

#include "engine/words/csv.h"
#include "engine/words/result.h"
#include "engine/work/procedure.h"
#include "engine/work/procedure_words.h"

namespace hemline {
namespace {

constexpr int words_most = 12;  ///< of an action
constexpr int steps_most = 7;   ///< of a part

constexpr std::string_view columns[] = {"id",    "part",    "each",  "asks", "action", "why",
                                        "wrong", "caution", "least", "most", "source"};
constexpr std::string_view edge_words[] = {
    "edge",    "pieces",         "lap",          "spacing", "beads",      "trim",   "closures",
    "closure", "fold",           "toward",       "reason",  "places",     "pinned", "cleat_line",
    "rivets",  "strip",          "strip_screws", "half",    "seam_least", "hole",   "module",
    "cricket", "cricket_valley", "pitch",        "corner",  "lies",       "eave",   "begin",
    "pan",     "pans",           "rest",         "width",   "gap",        "hem",    "turn_up",
    "clips"};
constexpr std::string_view piece_names[] = {"piece", "neighbour", "cut", "screws"};

constexpr std::string_view foot_word = "foot";     ///< of a when: the left end alone
constexpr std::string_view last_word = "last_up";  ///< of a when: its neighbor there is up

/// "{edge}, {pieces}".
template <class Words>
std::string in_braces(const Words& words) {
    std::string all;
    for (const std::string_view word : words) {
        all += (all.empty() ? "{" : ", {") + std::string(word) + "}";
    }
    return all;
}

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

/// The cells of a row by the name of their column.
struct Row {
    const Table& table;
    const std::vector<Cell>& cells;

    const Cell& operator[](std::string_view name) const { return cells[*table.column(name)]; }
    /// The cell of an optional column.
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
        if (!holds(edge_words, word) && !(is_of_pieces(each) && holds(piece_names, word))) {
            return problem_at(cell, "this step knows no number {" + word + "}.",
                              "Use " + in_braces(edge_words) + "; with pieces also " +
                                  in_braces(piece_names) + ".");
        }
    }
    return {};
}

std::optional<Problem> bad_limit(const Cell& cell, Asks asks) {
    if (cell.text.empty()) {
        return {};
    }
    if (asks == Asks::length && cell.text != half_planned && cell.text != seam_least_planned &&
        !length_limit(cell.text, {})) {
        return problem_at(cell, "\"" + cell.text + "\" is no length and no rule of practice.",
                          "Write a length with its unit, or a rule such as lap.");
    }
    if (asks == Asks::count && !count_limit(cell.text, {})) {
        return problem_at(
            cell, "\"" + cell.text + "\" is no whole number.",
            "Write a whole number, or screws, closures, rivets or strip_screws for as many "
            "as planned.");
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

/// "over eave", "pinned": all of them must hold of the edge.
std::optional<Problem> read_when(const Row& row, StepRule& rule) {
    std::string_view rest = row.when();
    while (!rest.empty()) {
        const std::size_t space = std::min(rest.find(' '), rest.size());
        const std::string_view word = rest.substr(0, space);
        rest = rest.substr(std::min(space + 1, rest.size()));
        if (const auto only = only_of(word)) {
            rule.only.push_back(*only);
        } else if (word == foot_word) {
            rule.at_foot = true;
        } else if (word == last_word) {
            rule.when_last_up = true;
        } else if (const auto end = end_of(word)) {
            rule.when = end;
        } else {
            return problem_at(
                *row.find("when"), "\"" + std::string(word) + "\" is not an end.",
                "Write gable, corner_out, corner_in, wall, open, eave, ridge, hip or "
                "valley, with foot for that end alone, last_up where its neighbor there is up; "
                "under, over, pinned, free, boot, "
                "curb, cricket, narrow, strip, bare, two_pitches or one_pitch; or leave the cell "
                "empty.");
        }
    }
    return {};
}

/// Whether the two never come on one edge: then they may share an id.
bool exclude_each_other(const StepRule& a, const StepRule& b) {
    const auto pair_of = [](Only only) { return static_cast<int>(only) / 2; };
    return std::any_of(a.only.begin(), a.only.end(), [&](Only one) {
        return std::any_of(b.only.begin(), b.only.end(), [&](Only other) {
            return one != other && pair_of(one) == pair_of(other);
        });
    });
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
                          "Use done, length, count, seen, cut, remainder, tick, side, safe or "
                          "prompt.");
    }
    if ((*asks == Asks::cut && !is_of_pieces(*each)) ||
        (*asks == Asks::remainder && *each != Each::last_trim_piece) ||
        ((*asks == Asks::tick || *asks == Asks::safe || *asks == Asks::prompt) &&
         *each != Each::edge)) {
        return problem_at(
            row["asks"],
            "\"" + row["asks"].text + "\" does not go with \"" + row["each"].text + "\".",
            "A cut is of a piece, a remainder of the last; a tick, safe or prompt is of the edge.");
    }
    if ((*each == Each::sent_back) != (row["id"].text == mend_step)) {
        return problem_at(row["id"], "the step mend, and no other, comes when sent back.",
                          "Give it the id mend and sent_back.");
    }
    StepRule rule{row["id"].text,
                  row["part"].text,
                  {},
                  false,
                  false,
                  {},
                  *each,
                  *asks,
                  row["action"].text,
                  row["why"].text,
                  row["wrong"].text,
                  row["caution"].text,
                  row["least"].text,
                  row["most"].text,
                  row["source"].text};
    if (auto problem = read_when(row, rule)) {
        return *problem;
    }
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
    std::map<std::string, int> steps_in;
    for (const std::vector<Cell>& cells : table.rows) {
        const Row row{table, cells};
        const Result<StepRule> rule = read_rule(row);
        if (!rule) {
            return rule.problem();
        }
        const bool twice = std::any_of(rules.begin(), rules.end(), [&](const StepRule& before) {
            return before.id == rule->id && !exclude_each_other(before, *rule);
        });
        if (twice) {
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
