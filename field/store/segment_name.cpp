#include "field/store/segment_name.h"

#include <array>
#include <cstdio>

#include "engine/record/event.h"

namespace hemline {

std::string print_segment_name(SegmentName name) {
    std::array<char, 64> rest{};
    std::snprintf(rest.data(), rest.size(), "-%06u-%08x.hemline", name.number, name.crc);
    return print_device(name.writer) + rest.data();
}

std::optional<SegmentName> parse_segment_name(std::string_view text) {
    constexpr std::size_t digits = 16, number_at = digits + 1, number_most = 10;
    if (text.size() > 64 || text.size() <= number_at) {
        return {};
    }
    const auto writer = parse_device(text.substr(0, digits));
    const std::size_t dash = text.find('-', number_at);
    if (!writer || dash == std::string_view::npos || dash - number_at > number_most ||
        text.size() < dash + 9) {
        return {};
    }
    std::uint64_t number = 0;
    for (const char c : text.substr(number_at, dash - number_at)) {
        number = number * 10 + static_cast<std::uint64_t>(c >= '0' && c <= '9' ? c - '0' : 0);
    }
    const auto crc = parse_device("00000000" + std::string(text.substr(dash + 1, 8)));
    if (!crc || number > UINT32_MAX) {
        return {};
    }
    const SegmentName name{*writer, static_cast<std::uint32_t>(number),
                           static_cast<std::uint32_t>(*crc)};
    return print_segment_name(name) == text ? std::optional(name) : std::nullopt;
}

}  // namespace hemline
