#include "field/words/short_id.h"

#include <cstdint>

namespace hemline {

std::string short_id(std::string_view sentence) {
    constexpr std::uint32_t begin = 0x811c9dc5, prime = 0x01000193;
    std::uint32_t hash = begin;
    for (const char c : sentence) {
        hash = (hash ^ static_cast<unsigned char>(c)) * prime;
    }
    std::string digits;
    for (int shift = 28; shift > 0; shift -= 4) {
        digits += "0123456789abcdef"[hash >> static_cast<unsigned>(shift) & 15U];
    }
    return digits;
}

}  // namespace hemline
