#include "field/screens/people/gate_checks.h"

#include <algorithm>
#include <string>

namespace hemline {

namespace {

constexpr float yes_mm = 14;
constexpr float two_columns_mm = 150, others_part = 0.36F, column_gap_mm = 6;
constexpr std::string_view words_of_checks[] = {"anchors", "ladder", "wires",
                                                "wind",    "wet",    "heat"};

std::string name_of(GateCheck check) {
    return std::string(words_of_checks[static_cast<std::size_t>(check)]);
}

/// What is so where the answer is yes.
Text asked(GateCheck check) {
    switch (check) {
        case GateCheck::anchors:
            break;
        case GateCheck::ladder:
            return say("Ladder tied, and 3 ft past the edge.");
        case GateCheck::wires:
            return say("No wires within 10 ft of you, the ladder or the metal.");
        case GateCheck::wind:
            return say("Wind: gusts under this limit and your employer's.");
        case GateCheck::wet:
            return say("Roof and metal are dry: no dew, no frost, no ice.");
        case GateCheck::heat:
            return say("Heat: water, shade and breaks are there.");
    }
    return say("Anchors, lines and harness looked at: nothing cut, frayed or loose.");
}

Text wind_said(const std::optional<Sheet>& sheet) {
    return joined({sheet ? wind_words(*sheet) : Text(), wind_note()}, " ");
}

void answer(GateDraft& draft, GateCheck check, char with) {
    draft.found.resize(gate_checks.size(), ' ');
    draft.found[static_cast<std::size_t>(check)] = with;
}

/// Returns the height used.
float draw_check(Ui& ui, GateCheck check, const Text& below, GateDraft& draft, Box row) {
    const float gap = ui.mm(gap_mm);
    Box words = row;
    Box buttons = take_right(words, ui.mm(2 * yes_mm) + gap);
    take_right(words, gap);
    float used = ui.paragraph(words.x, words.y, words.w, asked(check), Size::bold);
    if (check == GateCheck::wind && !below.empty()) {
        used += ui.paragraph(words.x, words.y + used, words.w, below, Size::small);
    }
    buttons.h = ui.mm(target_min);
    const auto places = columns(buttons, 2, gap);
    const char now = answer_to(draft, check);
    const auto look = [&](char answered) { return now == answered ? Look::chosen : Look::plain; };
    if (ui.button("yes " + name_of(check), say("Yes"), places[0], look(said_yes))) {
        answer(draft, check, said_yes);
    }
    if (ui.button("no " + name_of(check), say("No"), places[1], look(said_no))) {
        answer(draft, check, said_no);
    }
    return std::max(used, buttons.h) + gap;
}

/// A name or a street, and the button to say it or to say another. Returns the height used.
float draw_said(Ui& ui, std::string_view name, const Text& words, bool is_said, Box row) {
    const Box button = take_right(row, ui.mm(2 * yes_mm) + ui.mm(gap_mm));
    take_right(row, ui.mm(gap_mm));
    const float used = ui.paragraph(row.x, row.y, row.w, words, Size::bold);
    static_cast<void>(ui.button(name, is_said ? say("Another") : say("Say it"),
                                {button.x, button.y, button.w, ui.mm(target_min)}));
    return std::max(used, ui.mm(target_min)) + ui.mm(gap_mm);
}

/// Returns the height used.
float draw_all_checks(Ui& ui, const Text& wind, GateDraft& draft, Box column) {
    const float top = column.y;
    for (const GateCheck check : gate_checks) {
        take_top(column, draw_check(ui, check, wind, draft, column));
    }
    return column.y - top;
}

/// Who watches, the nearest hospital, the way to the dew point, and the limits of wind where they
/// are beside the checks. Returns the height used.
float draw_others(Ui& ui, const Text& wind, GateDraft& draft, Box column) {
    const float top = column.y;
    take_top(column, draw_said(ui, "watcher",
                               draft.watcher.empty() ? say("Who watches and can call?")
                                                     : say("{1} watches.", draft.watcher),
                               !draft.watcher.empty(), column));
    take_top(column,
             draw_said(ui, "hospital",
                       draft.hospital.empty() ? say("Where is the nearest hospital?")
                                              : say("Nearest hospital: {1}", draft.hospital),
                       !draft.hospital.empty(), column));
    if (ui.button("dew", say("Is the metal wet? Work out the dew point"),
                  {column.x, column.y, column.w, ui.mm(target_min)})) {
        draft.page = GatePage::dew;
    }
    take_top(column, ui.mm(target_min + gap_mm));
    take_top(column, ui.paragraph(column.x, column.y, column.w, wind, Size::small));
    return column.y - top;
}

}  // namespace

char answer_to(const GateDraft& draft, GateCheck check) {
    const auto place = static_cast<std::size_t>(check);
    return place < draft.found.size() ? draft.found[place] : ' ';
}

void draw_checks(Ui& ui, const std::optional<Sheet>& sheet, GateDraft& draft, Box body) {
    Box list = ui.begin_scroll("gate", body);
    const float top = list.y;
    take_top(list, ui.paragraph(list.x, list.y, list.w,
                                say("Before roof work today. Look, then say what you saw.")) +
                       ui.mm(2));
    const bool wide = list.w >= ui.mm(two_columns_mm);
    Box checks = list;
    Box others = wide ? take_right(checks, list.w * others_part) : list;
    take_right(checks, wide ? ui.mm(column_gap_mm) : 0);
    const Text wind = wind_said(sheet);
    const float used = draw_all_checks(ui, wide ? Text() : wind, draft, checks);
    take_top(others, wide ? 0 : used);
    const float more = draw_others(ui, wide ? wind : Text(), draft, others);
    ui.end_scroll(list.y - top + (wide ? std::max(used, more) : used + more));
    if (ui.tapped() == "watcher") {
        draft.page = GatePage::watcher;
    } else if (ui.tapped() == "hospital") {
        draft.page = GatePage::hospital;
    }
}

}  // namespace hemline
