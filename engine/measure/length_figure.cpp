// Reads a figure and gives it its unit, in integers from the first digit to the last.
#include "engine/measure/length_figure.h"

#include <optional>
#include <string>

#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

Problem LengthReader::refuse(int at, Text what, Text mend) const {
    what.values.insert(what.values.begin(), Text(quoted(text)));
    return {std::move(what), std::move(mend), at};
}

bool is_whole(const Token& token) {
    return token.kind == TokenKind::number && token.decimals.empty() && !token.grouped;
}

namespace {

/// Whether a fraction (a number and a slash) starts `ahead` tokens on.
bool fraction_at(const LengthReader& reader, std::size_t ahead) {
    return reader.peek(ahead).kind == TokenKind::number &&
           reader.peek(ahead + 1).kind == TokenKind::slash;
}

/// Digits as an int; 999 for anything with more than two digits.
int small_number(const std::string& digits) {
    int value = 0;
    for (const char digit : digits) {
        value = value > 99 ? 999 : value * 10 + (digit - '0');
    }
    return value;
}

/// Reads numerator, slash and denominator into `figure`.
std::optional<Problem> read_fraction(LengthReader& reader, LengthFigure& figure) {
    const Token& numerator = reader.peek();
    const Token& slash = reader.peek(1);
    const Token& denominator = reader.peek(2);
    if (!is_whole(numerator)) {
        return reader.refuse(numerator.at,
                             say("{1} has a fraction that does not start with a whole number."),
                             say("Write the fraction with whole numbers, as in 7 5/8 in."));
    }
    if (slash.spaced || denominator.spaced || !is_whole(denominator)) {
        return reader.refuse(slash.spaced ? slash.at : denominator.at,
                             say("{1} has a fraction that is not finished."),
                             say("Write the fraction without spaces, as in 5/8."));
    }
    figure.numerator = small_number(numerator.whole);
    figure.denominator = small_number(denominator.whole);
    figure.fraction = true;
    figure.fraction_at = numerator.at;
    const int parts = figure.denominator;
    if (parts < 2 || parts > 64 || (parts & (parts - 1)) != 0) {
        return reader.refuse(
            denominator.at, say("{1} has a fraction that no tape is marked in."),
            say("Write halves, quarters, 8ths, 16ths, 32nds, 64ths, or decimals."));
    }
    if (figure.numerator >= parts) {
        return reader.refuse(denominator.at, say("{1} has a fraction that is not less than one."),
                             say("Read the tape again: the fraction lies between two inch marks."));
    }
    reader.next += 3;
    return {};
}

}  // namespace

Result<LengthFigure> read_figure(LengthReader& reader) {
    LengthFigure figure;
    const Token& first = reader.peek();
    figure.at = first.at;
    if (first.kind != TokenKind::number) {
        return reader.refuse(first.at, say("{1} has no figure where one belongs."),
                             say("Write the figure first and its unit after it."));
    }
    std::size_t joint = 0;
    if (!fraction_at(reader, 0)) {
        figure.whole = first;
        ++reader.next;
        const bool dashed = reader.peek().kind == TokenKind::dash && !reader.peek().spaced &&
                            !reader.peek(1).spaced && fraction_at(reader, 1);
        joint = dashed ? 1 : 0;
        if (!dashed && !fraction_at(reader, 0)) {
            return figure;
        }
        if (!is_whole(figure.whole)) {
            return reader.refuse(reader.peek(joint).at,
                                 say("{1} has a fraction after decimals or grouped thousands."),
                                 say("Write either decimals or a fraction, not both."));
        }
    }
    reader.next += joint;
    if (const std::optional<Problem> problem = read_fraction(reader, figure)) {
        return *problem;
    }
    return figure;
}

Result<Length> length_of(const LengthReader& reader, const LengthFigure& figure,
                         std::int64_t unit_nm) {
    const auto longer = [&] {
        return reader.refuse(figure.at, say("{1} is longer than any roof."),
                             say("Check the unit and the number of digits; at most 1 km is read."));
    };
    std::int64_t whole = 0;
    for (const char digit : figure.whole.whole) {
        whole = whole * 10 + (digit - '0');
        if (whole > longest_readable().nm() / unit_nm) {
            return longer();
        }
    }
    std::string decimals = figure.whole.decimals;
    decimals.resize(decimals.find_last_not_of('0') + 1);  // npos + 1 is 0: nothing but zeros
    std::int64_t part = 0;
    std::int64_t parts = 1;
    // A unit in nanometers never has more than nine factors of 10, so a tenth decimal is never
    // exact.
    const bool too_many = decimals.size() > 9;
    for (std::size_t i = 0; i < decimals.size() && !too_many; ++i) {
        part = part * 10 + (decimals[i] - '0');
        parts *= 10;
    }
    if (too_many || part * unit_nm % parts != 0) {
        return reader.refuse(figure.at, say("{1} is finer than a nanometre can hold."),
                             say("Write fewer decimals."));
    }
    const Length length = Length::of_nm(whole * unit_nm + part * unit_nm / parts +
                                        figure.numerator * unit_nm / figure.denominator);
    if (length > longest_readable()) {
        return longer();
    }
    return length;
}

}  // namespace hemline
