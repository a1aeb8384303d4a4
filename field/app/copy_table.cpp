// What the screen shows, as lines with tabs between: spreadsheets take that from the clipboard. On
// the sticks' screens it is the sticks of the pool, a line a piece; elsewhere the pieces of the
// edge, or of the whole roof.
#include <algorithm>

#include "engine/quantity/length_print.h"
#include "engine/words/shown_text.h"
#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

/// Joins cells; what somebody wrote begins no formula and no new cell.
std::string tabbed(const std::vector<std::string>& cells) {
    std::string line;
    for (const std::string& cell : cells) {
        std::string safe = shown_text(cell);
        std::replace(safe.begin(), safe.end(), '\t', ' ');
        const bool is_formula = !safe.empty() && std::string("=+-@").find(safe[0]) < 4;
        line += (line.empty() ? "" : "\t") + std::string(is_formula ? "'" : "") + safe;
    }
    return line + "\n";
}

bool is_of_sticks(Screen screen) {
    return screen == Screen::sticks || screen == Screen::stick || screen == Screen::stock ||
           screen == Screen::choices || screen == Screen::on_hand;
}

struct CopiedTable {
    std::string text;
    std::int64_t lines = 0;

    void add(const std::vector<std::string>& cells) {
        text += tabbed(cells);
        ++lines;
    }
};

template <class Say>
CopiedTable sticks_table(const State& state, const PoolView& pool, Say words) {
    CopiedTable table;
    table.text = tabbed({words(say("stick")), words(say("stick length")), words(say("piece")),
                         words(say("begins at")), words(say("cut length"))});
    int number = 0;
    for (const SticksAlike& alike : sticks_of(state, pool.pool)) {
        for (std::size_t i = 0; i < alike.sticks.size(); ++i) {
            ++number;
            for (const SticksAlike::Piece& piece : alike.pieces) {
                table.add(
                    {std::to_string(number), print_length(alike.sticks[i]->length, state.marks),
                     i < piece.names.size() ? piece.names[i] : std::string(),
                     print_length(piece.from, state.marks), print_length(piece.cut, state.marks)});
            }
        }
    }
    return table;
}

template <class Say>
CopiedTable pieces_table(const State& state, Say words) {
    CopiedTable table;
    table.text =
        tabbed({words(say("edge")), words(say("trim")), words(say("piece")),
                words(say("cut length")), words(say("covers")), words(say("cut already"))});
    const std::string& edge = state.where.edge;
    for (const Run& run : state.plan.runs) {
        if (!edge.empty() && run.edge != edge) {
            continue;
        }
        for (const PlannedPiece& piece : run.pieces) {
            table.add({run.edge, words(trim_name(state, run.trim)), std::to_string(piece.number),
                       print_length(piece.cut, state.marks),
                       print_length(piece.covers, state.marks),
                       piece.is_cut ? words(say("yes")) : std::string()});
        }
    }
    return table;
}

}  // namespace

void App::copy_table() {
    if (!options_.platform.copy) {
        tell(news::Told{say("Nothing can be copied from here.")});
        return;
    }
    const auto words = [this](const Text& text) { return in_words(text); };
    const std::optional<PoolView> pool =
        is_of_sticks(state().where.screen) ? pool_at(state()) : std::nullopt;
    const CopiedTable table =
        pool ? sticks_table(state(), *pool, words) : pieces_table(state(), words);
    if (table.lines == 0) {
        tell(news::Told{say("There are no pieces to copy yet: read an edge first.")});
        return;
    }
    options_.platform.copy(table.text);
    tell(news::Told{say("Copied, to be pasted into a spreadsheet: {1} lines.", table.lines)});
}

}  // namespace hemline
