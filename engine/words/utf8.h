// UTF-8, one character at a time; bytes that are not UTF-8 are reported, never skipped.
#pragma once

#include <cstddef>
#include <string_view>

namespace hemline {

struct CodePoint {
    char32_t value = 0;
    std::size_t bytes =
        0;  ///< 0: not valid UTF-8 here (overlong, surrogate, cut off, past U+10FFFF)
};

/// The character that starts at byte `at` (< text.size()).
CodePoint code_point_at(std::string_view text, std::size_t at);

}  // namespace hemline
