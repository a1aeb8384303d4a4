#include "field/screens/reading/pasted.h"

#include <algorithm>

#include "engine/measure/length_text.h"
#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr char line_end = '\x1e';  // kept drafts are a line each

struct PastedLine {
    std::string edge;  ///< empty: none is named
    std::string length;
};

std::string trimmed(const std::string& words) {
    const std::size_t from = words.find_first_not_of(" \t");
    return from == std::string::npos ? std::string()
                                     : words.substr(from, words.find_last_not_of(" \t") - from + 1);
}

std::string first_line(const PastedDraft& pasted) {
    return pasted.lines.substr(0, pasted.lines.find(line_end));
}

PastedLine parts_of(const std::string& line) {
    const std::size_t tab = line.find('\t');
    return tab == std::string::npos
               ? PastedLine{"", line}
               : PastedLine{trimmed(line.substr(0, tab)), trimmed(line.substr(tab + 1))};
}

Result<Length> length_in(const State& state, const PastedLine& line) {
    if (!line.edge.empty() && edge_of(state, line.edge) == nullptr) {
        return Problem{say("There is no edge {1} on this job.", line.edge),
                       say("Skip the line, or add that edge first.")};
    }
    return parse_length(line.length);
}

/// Blank lines are passed over, and counted.
void pass_blanks(PastedDraft& pasted) {
    while (!pasted.lines.empty() && trimmed(first_line(pasted)).empty()) {
        const std::size_t end = pasted.lines.find(line_end);
        pasted.lines.erase(0, end == std::string::npos ? end : end + 1);
        ++pasted.number;
    }
}

PastedDraft list_of(const std::string& text) {
    PastedDraft pasted;
    for (const char letter : text) {
        if (letter == '\n') {
            pasted.lines += line_end;
        } else if (letter == '\t' || static_cast<unsigned char>(letter) >= ' ') {
            pasted.lines += letter;
        }
    }
    pass_blanks(pasted);
    return pasted;
}

}  // namespace

Wished take_pasted(Ui& ui, const State& state, ReadingDrafts& drafts) {
    PastedDraft& pasted = drafts.pasted;
    if (const std::string text = ui.keyboard().take_pasted(); !text.empty()) {
        pasted = list_of(text);
    }
    if (!has_pasted(pasted) || pasted.on_page || !is_empty(drafts.reading.length)) {
        return std::nullopt;
    }
    const PastedLine line = parts_of(first_line(pasted));
    const Result<Length> length = length_in(state, line);
    if (!length) {
        return std::nullopt;
    }
    if (!line.edge.empty() && line.edge != state.where.edge) {
        return Go{{Screen::reading, line.edge}};
    }
    drafts.reading.length = draft_of(*length, state.marks == Marks::millimetre);
    pasted.on_page = true;
    return std::nullopt;
}

float draw_pasted(Ui& ui, const State& state, const PastedDraft& pasted, Box box) {
    if (!has_pasted(pasted)) {
        return 0;
    }
    std::string line = first_line(pasted);
    const Result<Length> length = length_in(state, parts_of(line));
    std::replace(line.begin(), line.end(), '\t', ' ');
    const std::int64_t number = pasted.number;
    return length ? draw_band(ui, say("Line {1} of the list: {2}", number, line), box, Band::news)
                  : draw_band(ui,
                              say("Line {1} of the list is not a reading: {2}. {3}", number, line,
                                  said(length.problem())),
                              box);
}

void drop_line(PastedDraft& pasted) {
    if (!has_pasted(pasted)) {
        return;
    }
    const std::size_t end = pasted.lines.find(line_end);
    pasted.lines.erase(0, end == std::string::npos ? end : end + 1);
    ++pasted.number;
    pasted.on_page = false;
    pass_blanks(pasted);
}

std::optional<Where> next_pasted(const State& state, const PastedDraft& pasted) {
    if (!has_pasted(pasted)) {
        return std::nullopt;
    }
    const std::string edge = parts_of(first_line(pasted)).edge;
    return edge_of(state, edge) == nullptr ? state.where : Where{Screen::reading, edge};
}

}  // namespace hemline
