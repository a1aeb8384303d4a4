#include "field/screens/steps/step_answer.h"

#include <imgui.h>

#include <algorithm>
#include <charconv>

#include "engine/work/confirm.h"
#include "engine/work/edge_values.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/people/values.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr std::size_t count_digits_most = 4;
constexpr float asked_part = 0.6F, asked_mm_most = 60;
constexpr float above_keys_mm = 50;  // caution, action and readback, on an upright screen

std::int64_t count_of(const std::string& digits) {
    std::int64_t count = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), count);
    return count;
}

/// An apprentice sees the whole step first, and the keys once he has found the value.
bool keys_wait(const State& state, const Step& step, const StepDraft& draft) {
    const bool keyed = step.rule->asks == Asks::length || step.rule->asks == Asks::count;
    return keyed && state.way == Way::learn && !draft.keys_out;
}

/// A gap of 0 is what a good hook measures, so only a value not keyed in at all is not ready.
bool is_ready(const Step& step, const StepDraft& draft) {
    if (step.rule->asks == Asks::length) {
        return !is_empty(draft.length);
    }
    return step.rule->asks != Asks::count || !draft.count.empty();
}

/// `finding`: the answer to a step that is judged by eye.
StepAnswered answer_of(const State& state, const std::string& edge, const Step& step,
                       const StepDraft& draft, Finding finding) {
    StepAnswered answer{edge, step.rule->id, step.piece};
    answer.limits = limits_asked(step);
    switch (step.rule->asks) {
        case Asks::length:
            answer.kind = AnswerKind::length;
            answer.length = shown_length(draft.length, state.marks == Marks::millimetre);
            break;
        case Asks::count:
            answer.kind = AnswerKind::count;
            answer.count = count_of(draft.count);
            break;
        case Asks::seen:
        case Asks::side:
            answer.kind = AnswerKind::seen;
            answer.finding = finding;
            break;
        default:
            break;
    }
    return answer;
}

void press_count(StepDraft& draft, char key) {
    if (key == '\b') {
        if (!draft.count.empty()) {
            draft.count.pop_back();
        }
    } else if (key != 0 && draft.count.size() < count_digits_most) {
        draft.count = draft.count == "0" ? std::string(1, key) : draft.count + key;
    }
    if (key != 0) {
        draft.exception_asked = {};
    }
}

/// Opens the keys on the field of the limit: sixteenths for a gap, inches for a lap.
void open_field(const Step& step, StepDraft& draft) {
    const std::optional<Length> limit = step.length_most ? step.length_most : step.length_least;
    if (!draft.field_opened && limit) {
        draft.length.field = *limit < inches(1) ? 2 : *limit < feet(1) ? 1 : 0;
    }
    draft.field_opened = true;
}

/// What is keyed in, and beside it the count that is asked for, a touch away for who has counted.
float draw_count(Ui& ui, const Step& step, StepDraft& draft, Box body) {
    Box row{body.x, body.y, body.w, ui.mm(count_fields_mm)};
    const std::optional<Answer> asked = as_asked(step);
    if (asked && asked->kind == AnswerKind::count) {
        const std::string count = std::to_string(asked->count);
        if (ui.button("as asked", say("As asked: {1}", count),
                      take_right(row, std::min(row.w * asked_part, ui.mm(asked_mm_most))))) {
            draft.count = count;
            draft.exception_asked = {};
        }
    }
    ui.text(row.x, row.mid_y() - ui.line_height(Size::title) / 2,
            Text(draft.count.empty() ? "…" : draft.count), Size::title);
    return ui.mm(count_fields_mm);
}

}  // namespace

std::string key_of(const Step& step) { return step.rule->id + " " + std::to_string(step.piece); }

StepAnswered answer_as_asked(const std::string& edge, const Step& step) {
    StepAnswered answer{edge, step.rule->id, step.piece};
    answer.limits = limits_asked(step);
    const Answer asked = as_asked(step).value_or(Answer());
    answer.kind = asked.kind;
    answer.length = asked.length;
    answer.count = asked.count;
    return answer;
}

AnswerActions answers_of(const State& state, const EdgeWork& work, const Step& step,
                         const StepDraft& draft) {
    const Look ready = is_ready(step, draft) ? Look::primary : Look::off;
    const bool noting = !draft.exception_asked.empty();
    const Text note = say("Note it, signed {1}", state.by);
    if (keys_wait(state, step, draft)) {
        return {{{"key in", say("Key it in"), Look::primary}}};
    }
    switch (step.rule->asks) {
        case Asks::length:
            return {{{"answer", noting ? note : say("Save this"), ready}}};
        case Asks::count:
            return {{{"answer", noting ? note : say("Count is right"), ready}}};
        case Asks::seen:
            if (noting) {
                return {{{"look again", say("Look again")}, {"answer wrong", note, Look::primary}}};
            }
            return {{{"answer wrong", say("Not as it should be")},
                     {"answer", say("It is as it should be"), Look::primary}}};
        case Asks::safe:
            return {{{"lift",
                      state.way == Way::tick_off ? say("Lift it, with the reason")
                                                 : say("Hand it to the foreman"),
                      Look::primary}}};
        case Asks::side:
            return {{{"answer left", say("Left"), Look::primary},
                     {"answer right", say("Right"), Look::primary}}};
        case Asks::cut:
            return {{{"to card", say("To the cut card"), Look::primary}}};
        case Asks::remainder:
            return {{{"to reading", say("Key in the reading"), Look::primary}}};
        case Asks::tick:
            return {{{"send back", say("Send it back")}, tick_action(state, work)}};
        case Asks::done:
        case Asks::prompt:
            break;
    }
    return {{{"answer", say("Done"), Look::primary}}};
}

KeysWanted keys_for(const State& state, const Step& step, const StepDraft& draft) {
    if (keys_wait(state, step, draft)) {
        return {};
    }
    if (step.rule->asks == Asks::count) {
        return {digit_keys, above_keys_mm};
    }
    const bool metric = state.marks == Marks::millimetre;
    return {step.rule->asks == Asks::length ? (metric ? digit_keys : sixteenth_keys) : 0,
            above_keys_mm};
}

void draw_answer_keys(Ui& ui, const State& state, const Step& step, StepDraft& draft, Box keys) {
    draft.keys_out = draft.keys_out || ui.keyboard().has_text();
    if (keys_wait(state, step, draft)) {
        return;
    }
    const bool metric = state.marks == Marks::millimetre;
    if (step.rule->asks == Asks::count) {
        press_count(draft, draw_digit_keys(ui, keys, false));
    } else if (step.rule->asks == Asks::length) {
        open_field(step, draft);
        const Length before = shown_length(draft.length, metric);
        take_typed(ui, draft.length, metric);
        draw_length_keys(ui, draft.length, keys, metric);
        if (before != shown_length(draft.length, metric)) {
            draft.exception_asked = {};
        }
    }
}

float draw_answer(Ui& ui, const State& state, const Step& step, StepDraft& draft, Box body) {
    if (keys_wait(state, step, draft)) {
        return 0;
    }
    if (step.rule->asks == Asks::count) {
        return draw_count(ui, step, draft, body);
    }
    if (step.rule->asks != Asks::length) {
        return 0;
    }
    const bool metric = state.marks == Marks::millimetre;
    const Length before = shown_length(draft.length, metric);
    const float used = draw_length_fields(ui, draft.length, body, tapes_of(state));
    if (before != shown_length(draft.length, metric)) {
        draft.exception_asked = {};
    }
    return used;
}

bool is_refused(const StepDraft& draft) {
    return !draft.length.refused.empty() || !draft.exception_asked.empty();
}

float draw_limits(Ui& ui, const Step& step, const StepDraft& draft, Box box) {
    const Text& refused =
        draft.length.refused.empty() ? draft.exception_asked : draft.length.refused;
    if (!refused.empty()) {  // it names the limit
        return draw_band(ui, refused, box);
    }
    const Text limits = limits_of(step);
    return limits.empty()
               ? 0
               : ui.paragraph(box.x, box.y, box.w, say("Practice: {1}.", limits)) + ui.mm(2);
}

Wished answer_with(const std::string& tapped, const State& state, const EdgeWork& work,
                   const Step& step, StepDraft& draft) {
    Wished wish;
    const std::string& id = work.edge.id;
    if (tapped == "key in") {
        draft.keys_out = true;
    } else if (tapped == "to card" || tapped == "to reading") {
        wish = Go{made_at(work, step)};
    } else if (tapped == "send back") {
        wish = Go{{Screen::send_back, id}};
    } else if (tapped == "tick") {
        wish = Keep{EdgeFinished{id, ""}};
    } else if (tapped == "lift") {
        wish = state.way == Way::tick_off ? Wish{Go{{Screen::lift, id}}}
                                          : Wish{Keep{StepLifted{id, step.rule->id, "", ""}}};
    } else if (tapped == "look again") {
        draft.exception_asked = {};
    } else if (tapped == "answer left" || tapped == "answer right") {
        wish = Keep{answer_of(state, id, step, draft,
                              tapped == "answer left" ? Finding::left : Finding::right)};
    } else if (tapped == "answer" || tapped == "answer wrong") {
        const bool wrong = tapped == "answer wrong";
        StepAnswered answer =
            answer_of(state, id, step, draft, wrong ? Finding::bad : Finding::good);
        const Text outside = wrong ? say("Fix it and look again. If it must stay so, note it.")
                                   : outside_practice(step, answer.said().answer);
        if (!outside.empty() && draft.exception_asked.empty()) {
            draft.exception_asked = outside;
            return wish;
        }
        answer.accepted_by = outside.empty() ? "" : state.by;
        wish = Keep{answer};
    }
    return wish;
}

}  // namespace hemline
