#include "field/state/length_draft.h"

#include <charconv>

#include "engine/measure/length_text.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::size_t feet_digits_most = 3;
constexpr std::size_t millimetre_digits_most = 6;

std::int64_t number_in(const std::string& digits) {
    std::int64_t number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return number;
}

void add_digit(std::string& digits, int digit, std::size_t most, Text& refused) {
    if (digits.size() >= most) {
        refused = say("No roof edge is that long. Take a digit back first.");
    } else {
        refused = {};
        digits = digits == "0" ? std::to_string(digit) : digits + std::to_string(digit);
    }
}

}  // namespace

void press_feet_digit(LengthDraft& draft, int digit) {
    draft.field = 0;
    add_digit(draft.feet, digit, feet_digits_most, draft.refused);
}

void press_inches(LengthDraft& draft, int inches) {
    draft.refused = {};
    draft.inches = inches;
    draft.field = 2;
}

void press_sixteenths(LengthDraft& draft, int sixteenths) {
    draft.refused = {};
    draft.sixteenths = sixteenths;
    draft.field = 2;
}

void press_millimetre_digit(LengthDraft& draft, int digit) {
    add_digit(draft.millimetres, digit, millimetre_digits_most, draft.refused);
}

void press_back(LengthDraft& draft, bool metric) {
    draft.refused = {};
    std::string& digits = metric ? draft.millimetres : draft.feet;
    if (!metric && draft.field == 2 && draft.sixteenths) {
        draft.sixteenths.reset();
    } else if (!metric && draft.field >= 1 && draft.inches) {
        draft.inches.reset();
        draft.field = 1;
    } else if (!digits.empty()) {
        digits.pop_back();
        draft.field = 0;
    } else {
        draft.refused = say("There is nothing to erase.");
    }
}

bool is_empty(const LengthDraft& draft) {
    return draft.feet.empty() && !draft.inches && !draft.sixteenths && draft.millimetres.empty();
}

Length shown_length(const LengthDraft& draft, bool metric) {
    if (metric) {
        return millimetres(number_in(draft.millimetres));
    }
    return feet(number_in(draft.feet)) + inches(draft.inches.value_or(0)) +
           sixteenths(draft.sixteenths.value_or(0));
}

Result<Length> length_of(const LengthDraft& draft, bool metric) {
    if (is_empty(draft)) {
        return Problem{say("Nothing is keyed in yet."), say("Key in what the tape shows.")};
    }
    const Length length = shown_length(draft, metric);
    if (length <= Length()) {
        return Problem{say("A length of 0 covers nothing."), say("Read the tape again.")};
    }
    return length;
}

LengthDraft draft_of(Length length, bool metric) {
    LengthDraft draft;
    if (metric) {
        draft.millimetres = std::to_string(take_apart(length, Marks::millimetre).millimetres);
        return draft;
    }
    const LengthParts parts = take_apart(length, Marks::sixteenth);
    draft.feet = std::to_string(parts.feet);
    draft.inches = static_cast<int>(parts.inches);
    draft.sixteenths = parts.numerator * (16 / parts.denominator);
    draft.field = 2;
    return draft;
}

void take_typed(LengthDraft& draft, std::string_view typed, bool metric) {
    for (const char letter : typed) {
        if (letter == '\b') {
            if (draft.typed.empty()) {
                press_back(draft, metric);
            } else {
                draft.typed.pop_back();
            }
        } else if (letter != '\n') {
            draft.typed += letter;
        } else if (!draft.typed.empty()) {
            const Result<Length> read = parse_length(draft.typed);
            if (read) {
                draft = draft_of(*read, metric);
            } else {
                draft.refused = said(read.problem());
            }
            draft.typed.clear();
        }
    }
}

}  // namespace hemline
