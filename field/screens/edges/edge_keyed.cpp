#include "field/screens/edges/edge_keyed.h"

#include "engine/measure/angle_text.h"
#include "engine/words/result.h"
#include "field/screens/edges/edge_question.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/letters.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float keyed_above_mm = 75;
constexpr std::size_t digits_most = 6;

struct Notation {
    SlopeNotation notation;
    const char *words, *ending;
};
constexpr Notation notations[] = {{SlopeNotation::rise_in_12, phrase("in 12"), "/12"},
                                  {SlopeNotation::degrees, phrase("degrees"), "deg"},
                                  {SlopeNotation::percent, phrase("percent"), "%"}};

const Notation& notation_of(const EdgeDraft& draft) {
    return notations[static_cast<std::size_t>(draft.number.notation)];
}

Result<Edge> with_corner(Edge edge, Side side, const std::string& number) {
    const Result<Angle> angle = parse_degrees(number);
    if (!angle) {
        return angle.problem();
    }
    if (auto problem = check_corner(edge, side, *angle)) {
        return *problem;
    }
    stated_corner(edge, side) = *angle;
    return edge;
}

void key_number(std::string& number, char key) {
    if (key == '\b') {
        if (!number.empty()) {
            number.pop_back();
        }
    } else if (key != 0 && number.size() < digits_most &&
               (key != '.' || number.find('.') == std::string::npos)) {
        number += key;
    }
}

void draw_notations(Ui& ui, EdgeDraft& draft, Box strip) {
    const std::vector<Box> places = columns(strip, 3, ui.mm(gap_mm));
    for (std::size_t i = 0; i < 3; ++i) {
        if (ui.button(
                std::string("notation ") + notations[i].words, say(notations[i].words), places[i],
                draft.number.notation == notations[i].notation ? Look::chosen : Look::plain)) {
            draft.number.notation = notations[i].notation;
        }
    }
}

}  // namespace

KeysWanted keys_for(EdgeField field) {
    const bool digits = is_keyed(field) && field != EdgeField::name;
    return digits ? KeysWanted{digit_keys, keyed_above_mm} : KeysWanted{};
}

Result<Edge> edge_keyed(EdgeField field, const State& state, const EdgeDraft& draft) {
    Edge edge = draft.edge;
    const std::string& number = draft.number.number;
    if (field == EdgeField::name) {
        if (draft.name.letters.empty() || edge_of(state, draft.name.letters) != nullptr) {
            return Problem{say("That name is taken."), say("Key in another one.")};
        }
        edge.id = draft.name.letters;
        return edge;
    }
    if (field != EdgeField::other_pitch) {
        return with_corner(edge, field == EdgeField::corner_left ? Side::left : Side::right,
                           number);
    }
    const Result<Slope> pitch = parse_slope(number + notation_of(draft).ending);
    if (!pitch) {
        return pitch.problem();
    }
    edge.pitch2 = *pitch;
    return edge;
}

namespace {

/// What is keyed in, why it is refused, and answers that need no keys. Where they are low, all of
/// it scrolls as one.
std::optional<Edge> draw_number(Ui& ui, EdgeField field, const State& state, EdgeDraft& draft,
                                Box body) {
    const std::string name = "keyed " + std::to_string(static_cast<int>(field));
    Box list = ui.begin_scroll(name, body);
    const float top = list.y;
    if (field == EdgeField::other_pitch) {
        draw_notations(ui, draft, take_top(list, ui.mm(12)));
        take_top(list, ui.mm(gap_mm));
    }
    const std::string& keyed = draft.number.number;
    const Text unit =
        field == EdgeField::other_pitch ? glued(" ", say(notation_of(draft).words)) : Text("°");
    ui.text(list.x, list.y, glued(keyed.empty() ? "…" : keyed, unit), Size::title);
    take_top(list, ui.line_height(Size::title) + ui.mm(1));
    if (const Result<Edge> edge = edge_keyed(field, state, draft); !edge && !keyed.empty()) {
        take_top(list, draw_band(ui, said(edge.problem()), list));
    }
    const Text stands = answer_of(field, draft.edge, state.catalogue);
    std::vector<EdgeAnswer> answers = answers_to(field, draft.edge, state.catalogue);
    const bool is_first = draft.one_by_one;  // it is asked, and goes on by its answer alone
    if (!is_first && answers.size() == 1 && answers.front().words == stands) {
        answers.clear();  // leaving it unchanged has a separate button
    }
    const EdgeAnswer* const touched =
        draw_answers_in(ui, answers, is_first ? Text() : stands, true, list);
    ui.end_scroll(list.y - top - (answers.empty() ? 0 : ui.mm(gap_mm)));
    return touched == nullptr ? std::nullopt : std::optional(touched->edge);
}

}  // namespace

std::optional<Edge> draw_edge_keyed(Ui& ui, EdgeField field, const State& state, EdgeDraft& draft,
                                    const Frame& frame, Box body) {
    if (field != EdgeField::name) {
        key_number(draft.number.number, draw_digit_keys(ui, frame.keys, true));
        return draw_number(ui, field, state, draft, body);
    }
    const std::string& keyed = draft.name.letters;
    ui.text(body.x, body.y, Text(keyed.empty() ? "…" : keyed), Size::title);
    take_top(body, ui.line_height(Size::title) + ui.mm(1));
    if (const Result<Edge> edge = edge_keyed(field, state, draft); !edge && !keyed.empty()) {
        take_top(body, draw_band(ui, said(edge.problem()), body));
    }
    draw_letter_keys(ui, draft.name, body);
    return {};
}

}  // namespace hemline
