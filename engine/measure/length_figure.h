// A figure of a written length, whose unit is not known yet: "7", "7.625", "9 650", "7-5/8".
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "engine/measure/length_tokens.h"
#include "engine/quantity/length.h"
#include "engine/words/result_declared.h"
#include "engine/words/text.h"

namespace hemline {

/// A number, a fraction, or both.
struct LengthFigure {
    Token whole;  ///< kind end when there is only a fraction
    int numerator = 0;
    int denominator = 1;
    bool fraction = false;
    int at = 0;
    int fraction_at = 0;
};

/// A text, and how far it has been read.
struct LengthReader {
    std::string_view text;
    std::vector<Token> tokens;
    std::size_t next = 0;

    [[nodiscard]] const Token& peek(std::size_t ahead = 0) const {
        const std::size_t index = next + ahead;
        return index < tokens.size() ? tokens[index] : tokens.back();
    }
    /// What is wrong, with the text as its {1}; what to do; and where.
    [[nodiscard]] Problem refuse(int at, Text what, Text mend) const;
};

/// A number without decimals and without groups.
bool is_whole(const Token& token);

/// Reads a figure and moves past it. Problem: no figure, or a fraction that no tape shows.
Result<LengthFigure> read_figure(LengthReader& reader);

/// The figure in a unit of `unit_nm`, exactly. Problem: past longest_readable(), or finer than a
/// nanometer.
Result<Length> length_of(const LengthReader& reader, const LengthFigure& figure,
                         std::int64_t unit_nm);

}  // namespace hemline
