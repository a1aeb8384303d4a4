// Words on paper: safe inside HTML, and no length broken across two lines.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace hemline {

/// How many letters (code points) a text has.
std::size_t letters_in(std::string_view text);

/// At most so many letters; the last is "…" where some are left out.
std::string shortened(std::string_view text, std::size_t letters);

/// The text on lines of at most so many letters, broken between words, or inside a word that is
/// longer than a line. At least one line.
std::vector<std::string> wrapped(std::string_view text, std::size_t letters);

/// Text made safe inside HTML; each length in it ("17 ft 5 1/2 in", "9 650 mm") in a span of the
/// class `whole`, which whole_style() keeps on one line.
std::string paper_text(std::string_view text);
std::string_view whole_style();

}  // namespace hemline
