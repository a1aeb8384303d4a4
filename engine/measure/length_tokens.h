// The pieces a written length falls into: numbers, units, and the signs between them.
//
//   31'-7 5/8"   →   31  '  -  7  5  /  8  "
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/plain_notation.h"
#include "engine/words/result_declared.h"

namespace hemline {

enum class TokenKind { number, slash, dash, foot, inch, metre, centimetre, millimetre, end };

struct Token {
    TokenKind kind = TokenKind::end;
    std::string whole, decimals;  ///< of a number: its digits before and after the point
    bool spaced = false;          ///< white space before it
    bool grouped = false;         ///< a number in groups of three: 9 650
    int at = 0;  ///< byte of the original text; of the end: just past the last token
};

/// Splits the text; the last token is always `end`. Problem: a character, a comma or a word that
/// has no place in a length.
Result<std::vector<Token>> length_tokens(std::string_view text);

}  // namespace hemline
