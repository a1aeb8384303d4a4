// The number of an event, and how people and file names write it.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace hemline {

/// The device that wrote the event, and its place in the sequence of that device (1…).
struct EventId {
    std::uint64_t device = 0;
    std::uint32_t sequence = 0;

    auto operator<=>(const EventId&) const = default;
};

/// Sixteen hex digits, lower case: the name of a device in ids and file names.
std::string print_device(std::uint64_t device);
std::optional<std::uint64_t> parse_device(std::string_view text);
/// "3f9c…-12": sixteen hex digits of the device, a dash, the sequence.
std::string print_event_id(EventId id);
std::optional<EventId> parse_event_id(std::string_view text);

}  // namespace hemline
