// The names of segments: writer, number, checksum.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace hemline {

struct SegmentName {
    std::uint64_t writer = 0;
    std::uint32_t number = 0;
    std::uint32_t crc = 0;  ///< CRC-32 of the file's bytes
};

/// "77aa00000000beef-000012-1a2b3c4d.hemline".
std::string print_segment_name(SegmentName name);
/// Nothing for any other name: a synchronizer's draft or conflict copy, somebody's notes.
std::optional<SegmentName> parse_segment_name(std::string_view text);

}  // namespace hemline
