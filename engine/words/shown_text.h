// What a person, a file or another tablet wrote, made safe to show anywhere: no invisible character
// gets through that could control a terminal, reverse a line or hide; its number is shown instead.
//
//   "R. Vale" ESC "]0;"  ──▶  R. Vale\u001B]0;
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// Whether the character is invisible: a control (U+0000 to 001F, 007F to 009F), a mark or override
/// of the direction of writing, an end of line or paragraph, one of no width, and what Unicode says
/// will never be a character.
bool is_unseen(char32_t character);

/// Whether the text is UTF-8 and has no invisible character: fit for a name.
bool is_plain(std::string_view text);

/// Each invisible character as \uXXXX, past U+FFFF as two of them, as JSON readers know it; each
/// byte that is not UTF-8 as U+FFFD. Plain text stays unchanged, so calling it twice does no harm.
std::string shown_text(std::string_view text);

/// The same for text that the program laid out in lines: line ends ("\n") stay.
std::string shown_lines(std::string_view text);

}  // namespace hemline
