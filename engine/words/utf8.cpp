#include "engine/words/utf8.h"

namespace hemline {

namespace {

/// Number of bytes that a leading byte announces; 0 when it cannot lead.
std::size_t announced(unsigned char lead) {
    if (lead < 0x80) {
        return 1;
    }
    if (lead < 0xC2) {
        return 0;
    }
    if (lead < 0xE0) {
        return 2;
    }
    if (lead < 0xF0) {
        return 3;
    }
    return lead < 0xF5 ? 4 : 0;
}

}  // namespace

CodePoint code_point_at(std::string_view text, std::size_t at) {
    const auto lead = static_cast<unsigned char>(text[at]);
    const std::size_t bytes = announced(lead);
    if (bytes == 0 || text.size() - at < bytes) {
        return {};
    }
    if (bytes == 1) {
        return {lead, 1};
    }
    char32_t value = lead & (0xFFU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        const auto next = static_cast<unsigned char>(text[at + i]);
        if ((next & 0xC0U) != 0x80U) {
            return {};
        }
        value = (value << 6) | (next & 0x3FU);
    }
    const bool overlong = (bytes == 3 && value < 0x800) || (bytes == 4 && value < 0x10000);
    const bool surrogate = value >= 0xD800 && value < 0xE000;
    if (overlong || surrogate || value > 0x10FFFF) {
        return {};
    }
    return {value, bytes};
}

}  // namespace hemline
