#include "engine/record/event_id.h"

namespace hemline {
namespace {

constexpr std::string_view hex_digits = "0123456789abcdef";
constexpr std::size_t device_digits = 16;

/// Digits only, no sign, no leading zero, 1 to 4294967295.
std::optional<std::uint32_t> parse_sequence(std::string_view text) {
    if (text.empty() || text.size() > 10 || text.front() == '0') {
        return {};
    }
    std::uint64_t value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') {
            return {};
        }
        value = value * 10 + static_cast<std::uint64_t>(c - '0');
    }
    if (value > UINT32_MAX) {
        return {};
    }
    return static_cast<std::uint32_t>(value);
}

}  // namespace

std::string print_device(std::uint64_t device) {
    std::string text(device_digits, '0');
    for (std::size_t i = 0; i < device_digits; ++i) {
        text[device_digits - 1 - i] = hex_digits[(device >> (4 * i)) & 0xFU];
    }
    return text;
}

std::optional<std::uint64_t> parse_device(std::string_view text) {
    if (text.size() != device_digits) {
        return {};
    }
    std::uint64_t device = 0;
    for (const char c : text) {
        const std::size_t digit = hex_digits.find(c);
        if (digit == std::string_view::npos) {
            return {};
        }
        device = device << 4U | digit;
    }
    return device;
}

std::string print_event_id(EventId id) {
    return print_device(id.device) + "-" + std::to_string(id.sequence);
}

std::optional<EventId> parse_event_id(std::string_view text) {
    if (text.size() < device_digits + 2 || text[device_digits] != '-') {
        return {};
    }
    const std::optional<std::uint64_t> device = parse_device(text.substr(0, device_digits));
    const std::optional<std::uint32_t> sequence = parse_sequence(text.substr(device_digits + 1));
    if (!device || !sequence) {
        return {};
    }
    return EventId{*device, *sequence};
}

}  // namespace hemline
