#include "engine/quote.h"

#include "engine/utf8.h"

namespace hemline {

std::string quoted(std::string_view text) {
    constexpr int shown_most = 40;
    std::string out = "\"";
    int shown = 0;
    for (std::size_t at = 0; at < text.size(); ++shown) {
        if (shown == shown_most) {
            out += "...";
            break;
        }
        const CodePoint point = code_point_at(text, at);
        const bool control = point.value < 0x20 || (point.value >= 0x7F && point.value < 0xA0);
        if (point.bytes == 0 || control) {
            out += '?';
        } else {
            out += text.substr(at, point.bytes);
        }
        at += point.bytes == 0 ? 1 : point.bytes;
    }
    out += '"';
    return out;
}

}  // namespace hemline
