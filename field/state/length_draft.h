// A length keyed in by touch: each key either counts or says why it does not.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/quantity/length.h"
#include "engine/words/result_declared.h"
#include "engine/words/text.h"

namespace hemline {

/// Field by field. Unset parts are empty.
struct LengthDraft {
    std::string feet;  ///< digits
    std::optional<int> inches;
    std::optional<int> sixteenths;
    std::string millimetres;
    int field = 0;      ///< 0 feet, 1 inches, 2 sixteenths
    std::string typed;  ///< keyboard or laser text so far, up to its newline
    Text refused;       ///< why the last key was not taken; cleared by the next key
};

/// Keys of the three fields. What cannot be right is refused in `draft.refused`, never corrected.
void press_feet_digit(LengthDraft& draft, int digit);
void press_inches(LengthDraft& draft, int inches);          ///< 0…11; goes on to the sixteenths
void press_sixteenths(LengthDraft& draft, int sixteenths);  ///< 0…15
void press_millimetre_digit(LengthDraft& draft, int digit);
/// Erases the last digit of the field, or empties it.
void press_back(LengthDraft& draft, bool metric);
bool is_empty(const LengthDraft& draft);

/// The length keyed in so far: unset parts count as 0. Problem: nothing keyed in, or not a length.
Result<Length> length_of(const LengthDraft& draft, bool metric);
/// What is shown while keying: as length_of, 0 when empty.
Length shown_length(const LengthDraft& draft, bool metric);
/// A draft that says this length (on the sixteenth or the millimeter).
LengthDraft draft_of(Length length, bool metric);

/// Takes typed text (a laser, a keyboard) up to its newline: the draft then says that length, or
/// `refused` says why not. Text without a newline waits in `typed`. Erasing past it takes back what
/// was keyed in.
void take_typed(LengthDraft& draft, std::string_view typed, bool metric);

}  // namespace hemline
