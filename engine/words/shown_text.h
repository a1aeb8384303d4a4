// What a hand, a file or another tablet wrote, made safe for whatever shows it: no character that
// is no letter gets through to steer a terminal, turn a line round or hide itself; its number
// stands there.
//
//   "R. Vale" ESC "]0;"  ──▶  R. Vale\u001B]0;
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// Whether the character has no face of its own: a control (U+0000 to 001F, 007F to 009F), a mark
/// or override of the direction of writing, an end of line or paragraph, one of no width, and what
/// Unicode says will never be a character.
bool is_unseen(char32_t character);

/// Whether the text is UTF-8 and has no unseen character: fit for a name.
bool is_plain(std::string_view text);

/// Each unseen character as \uXXXX, past U+FFFF as two of them, which is also how JSON and CSS
/// readers know it; each byte that is no UTF-8 as U+FFFD. What is plain stays as it is, so that
/// showing it twice does no harm.
std::string shown_text(std::string_view text);

/// The same for text that we laid out in lines: the line ends ("\n") stay.
std::string shown_lines(std::string_view text);

}  // namespace hemline
