#include "engine/words/quote.h"

#include "engine/words/shown_text.h"
#include "engine/words/utf8.h"

namespace hemline {

std::string quoted(std::string_view text) {
    constexpr int shown_most = 40;
    std::size_t end = 0;
    for (int shown = 0; shown < shown_most && end < text.size(); ++shown) {
        const CodePoint point = code_point_at(text, end);
        end += point.bytes == 0 ? 1 : point.bytes;
    }
    return '"' + shown_text(text.substr(0, end)) + (end < text.size() ? "..." : "") + '"';
}

}  // namespace hemline
