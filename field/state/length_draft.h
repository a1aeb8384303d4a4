// A length keyed in by touch: each key either counts or says why it does not.
#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/length.h"
#include "engine/words/result.h"
#include "field/state/state.h"

namespace hemline {

/// Keys of the three fields. What cannot be right is refused in `draft.refused`, never mended.
void press_feet_digit(LengthDraft& draft, int digit);
void press_inches(LengthDraft& draft, int inches);          ///< 0…11; goes on to the sixteenths
void press_sixteenths(LengthDraft& draft, int sixteenths);  ///< 0…15
void press_millimetre_digit(LengthDraft& draft, int digit);
/// Takes back the last digit of the field, or empties it.
void press_back(LengthDraft& draft, bool metric);
bool is_empty(const LengthDraft& draft);

/// What the draft says so far: unset parts count as 0. Problem: nothing keyed in, or no length at
/// all.
Result<Length> length_of(const LengthDraft& draft, bool metric);
/// What is shown while keying: as length_of, 0 when empty.
Length shown_length(const LengthDraft& draft, bool metric);
/// A draft that says this length (on the sixteenth or the millimetre).
LengthDraft draft_of(Length length, bool metric);

/// Takes typed text (a laser, a keyboard) up to its newline: the draft then says that length, or
/// `refused` says why not. Text without a newline is kept in `so_far`.
void take_typed(LengthDraft& draft, std::string& so_far, std::string_view typed, bool metric);

}  // namespace hemline
