#include "engine/measure/length_tokens.h"

#include <array>
#include <optional>
#include <utility>

#include "engine/measure/characters.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

struct UnitWord {
    std::string_view word;
    TokenKind kind;
};

constexpr std::array<UnitWord, 30> unit_words = {{
    {"ft", TokenKind::foot},
    {"foot", TokenKind::foot},
    {"feet", TokenKind::foot},
    {"pie", TokenKind::foot},
    {"pies", TokenKind::foot},
    {"in", TokenKind::inch},
    {"inch", TokenKind::inch},
    {"inches", TokenKind::inch},
    {"pulg", TokenKind::inch},
    {"pulgada", TokenKind::inch},
    {"pulgadas", TokenKind::inch},
    {"m", TokenKind::metre},
    {"metre", TokenKind::metre},
    {"metres", TokenKind::metre},
    {"meter", TokenKind::metre},
    {"meters", TokenKind::metre},
    {"metro", TokenKind::metre},
    {"metros", TokenKind::metre},
    {"cm", TokenKind::centimetre},
    {"centimetres", TokenKind::centimetre},
    {"centimeters", TokenKind::centimetre},
    {"centimetro", TokenKind::centimetre},
    {"centimetros", TokenKind::centimetre},
    {"mm", TokenKind::millimetre},
    {"millimetre", TokenKind::millimetre},
    {"millimetres", TokenKind::millimetre},
    {"millimeter", TokenKind::millimetre},
    {"millimeters", TokenKind::millimetre},
    {"milimetro", TokenKind::millimetre},
    {"milimetros", TokenKind::millimetre},
}};

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// How far the plain text has been read.
struct Place {
    std::string_view original;
    const PlainNotation& plain;
    std::size_t next = 0;

    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return next + ahead < plain.text.size() ? plain.text[next + ahead] : '\0';
    }
    [[nodiscard]] int at() const { return plain.from[next]; }
};

/// `what` gets the text as its {1}.
Problem refused(const Place& place, int at, Text what, Text mend) {
    what.values.insert(what.values.begin(), Text(quoted(place.original)));
    return {std::move(what), std::move(mend), at};
}

std::string digits_from(Place& place) {
    std::string digits;
    while (is_digit(place.peek())) {
        digits += place.peek();
        ++place.next;
    }
    return digits;
}

/// A number; `place` stands on its first digit, or on the point of ".5".
Result<Token> number_token(Place& place) {
    Token token;
    token.kind = TokenKind::number;
    token.at = place.at();
    token.whole = place.peek() == '.' ? "0" : digits_from(place);
    if (place.peek() != '.') {
        return token;
    }
    if (!is_digit(place.peek(1))) {
        return refused(place, place.at(), say("{1} has a point with no digit after it."),
                       say("Write the digits after the point, or leave the point out."));
    }
    ++place.next;
    token.decimals = digits_from(place);
    if (place.peek() == '.') {
        return refused(place, place.at(), say("{1} has two points in one number."),
                       say("Keep one point."));
    }
    return token;
}

/// A word; `place` stands on its first letter. "in." and "ft." may have their period.
Result<Token> word_token(Place& place) {
    Token token;
    token.at = place.at();
    std::string word;
    while (is_letter(place.peek())) {
        word += lower(place.peek());
        ++place.next;
    }
    for (const UnitWord& unit : unit_words) {
        if (unit.word != word) {
            continue;
        }
        token.kind = unit.kind;
        const bool may_stop = word == "ft" || word == "in" || word == "pulg";
        if (may_stop && place.peek() == '.' && !is_digit(place.peek(1))) {
            ++place.next;
        }
        return token;
    }
    return refused(place, token.at, say("{1} has {2} where a unit belongs.", quoted(word)),
                   say("Write ft, in, m, cm or mm."));
}

/// One of ' " / -, or a refusal of what can never be right.
Result<Token> sign_token(Place& place) {
    Token token;
    token.at = place.at();
    const char sign = place.peek();
    switch (sign) {
        case '\'':
            token.kind = TokenKind::foot;
            if (place.peek(1) == '\'') {  // two single quotes are typed for the inch mark
                token.kind = TokenKind::inch;
                ++place.next;
            }
            break;
        case '"':
            token.kind = TokenKind::inch;
            break;
        case '/':
            token.kind = TokenKind::slash;
            break;
        case '-':
            token.kind = TokenKind::dash;
            break;
        case ',':
            return refused(place, token.at, say("{1} has a comma, which is read two ways."),
                           say("Write a point for decimals, and no comma between thousands."));
        case '.':
            return refused(place, token.at, say("{1} has a point with no digit before it."),
                           say("Write the figure before the point, as in 0.5 in."));
        default:
            return refused(place, token.at, say("{1} has a character that no length has."),
                           say("Use only digits, a fraction, and ft, in, m, cm or mm."));
    }
    ++place.next;
    return token;
}

/// Whether `token` continues the thousands of `before`: 9 then 650, a single space between, no
/// fraction.
bool goes_on(const Token& before, const Token& token, const Place& place, int spaces) {
    const bool starts = before.grouped || (before.whole.size() <= 3 && before.whole[0] != '0');
    return before.kind == TokenKind::number && before.decimals.empty() && starts && spaces == 1 &&
           token.whole.size() == 3 && place.peek() != '/';
}

/// Skips white space; returns how many plain spaces, or -1 when there is a tab or a line end in it.
int spaces_from(Place& place) {
    int spaces = 0;
    while (is_space(place.peek())) {
        spaces = place.peek() == ' ' && spaces >= 0 ? spaces + 1 : -1;
        ++place.next;
    }
    return spaces;
}

}  // namespace

Result<std::vector<Token>> length_tokens(std::string_view text) {
    const PlainNotation plain = plain_notation(text);
    Place place{text, plain, 0};
    std::vector<Token> tokens;
    int past_last = 0;
    for (;;) {
        const int spaces = spaces_from(place);
        if (place.next == plain.text.size()) {
            Token end;
            end.at = past_last;
            tokens.push_back(std::move(end));
            return tokens;
        }
        // A point with its figure missing leads a number only where it stands alone: "31 ft.5 in"
        // may be 5 in.
        const bool leads = spaces != 0 || place.next == 0;
        const bool number =
            is_digit(place.peek()) || (leads && place.peek() == '.' && is_digit(place.peek(1)));
        const Result<Token> read = number                    ? number_token(place)
                                   : is_letter(place.peek()) ? word_token(place)
                                                             : sign_token(place);
        if (!read) {
            return read.problem();
        }
        Token token = read.value();
        token.spaced = spaces != 0;
        past_last = place.at();
        if (number && !tokens.empty() && goes_on(tokens.back(), token, place, spaces)) {
            tokens.back().whole += token.whole;
            tokens.back().decimals = token.decimals;
            tokens.back().grouped = true;
            continue;
        }
        tokens.push_back(std::move(token));
    }
}

}  // namespace hemline
