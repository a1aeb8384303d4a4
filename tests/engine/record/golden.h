// Files of tests/golden/, and bytes laid out by hand.
#pragma once

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

#include "engine/record/event_bytes.h"

namespace hemline {

/// The text of tests/golden/`name`.
inline std::string golden(const std::string& name) {
    const char* const source = std::getenv("HEMLINE_SOURCE");
    std::ifstream in(std::string(source == nullptr ? "." : source) + "/tests/golden/" + name,
                     std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline Bytes from_hex(std::string_view hex) {
    Bytes bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        bytes.push_back(
            static_cast<std::uint8_t>(std::stoi(std::string(hex.substr(i, 2)), nullptr, 16)));
    }
    return bytes;
}

}  // namespace hemline
