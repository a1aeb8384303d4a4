#include "engine/record/utf8.h"

#include <cstddef>
#include <cstdint>

namespace hemline {
namespace {

/// Bytes that follow a lead byte, and the bounds of the first of them (RFC 3629 §4).
struct Lead {
    std::size_t followers;
    std::uint8_t least, most;
};

Lead lead_of(std::uint8_t byte) {
    if (byte >= 0xC2 && byte <= 0xDF) return {1, 0x80, 0xBF};
    if (byte == 0xE0) return {2, 0xA0, 0xBF};
    if (byte == 0xED) return {2, 0x80, 0x9F};
    if (byte >= 0xE1 && byte <= 0xEF) return {2, 0x80, 0xBF};
    if (byte == 0xF0) return {3, 0x90, 0xBF};
    if (byte >= 0xF1 && byte <= 0xF3) return {3, 0x80, 0xBF};
    if (byte == 0xF4) return {3, 0x80, 0x8F};
    return {0, 1, 0};  // not a lead byte
}

}  // namespace

bool is_clean_utf8(std::string_view text) {
    const auto byte_at = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (byte_at(i) == 0) return false;
        if (byte_at(i) < 0x80) continue;
        const Lead lead = lead_of(byte_at(i));
        if (lead.followers == 0 || lead.followers >= text.size() - i) return false;
        if (byte_at(i + 1) < lead.least || byte_at(i + 1) > lead.most) return false;
        for (std::size_t k = 2; k <= lead.followers; ++k) {
            if (byte_at(i + k) < 0x80 || byte_at(i + k) > 0xBF) return false;
        }
        i += lead.followers;
    }
    return true;
}

}  // namespace hemline
