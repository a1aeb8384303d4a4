// Rewrites typographic signs in a measure plainly: ′ as ', ½ as 1/2, a no-break space as a space.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace hemline {

/// Text whose known signs are plain ASCII; `from` gives for each byte of it, and for its end, the
/// byte of the original text where it came from.
struct PlainNotation {
    std::string text;
    std::vector<int> from;
};

/// Rewrites primes, closing quotes, fraction and division slashes, ready-made fractions, dashes,
/// spaces and the degree sign; every other byte is kept, for the reader to refuse.
PlainNotation plain_notation(std::string_view text);

}  // namespace hemline
