// Digits and blanks as a tape's or a table's text has them; no locale is asked.
#pragma once

namespace hemline {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr bool is_space(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

}  // namespace hemline
