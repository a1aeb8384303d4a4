// A zip container in memory, through libzip: the only file of the engine that knows the library.
// ISO/IEC 21320-1 (stored or deflated entries, no encryption) is what is written and read.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

using Entries = std::map<std::string, std::vector<std::uint8_t>>;

/// What is believed of a container before it is unpacked.
struct ZipLimits {
    std::size_t file = 0;      ///< most bytes of the whole file
    std::size_t unpacked = 0;  ///< most bytes of all entries together
    std::size_t entries = 0;   ///< most entries
};

/// The container with those entries, in their order, without times: same entries, same bytes.
Result<std::vector<std::uint8_t>> zip_of(const Entries& entries);

/// Puts the entries of a container into `entries` (a value of theirs would be copied). Memory stays
/// below the limits' sum. Problem names what is wrong: too large, too many, twice the same name, a
/// name that `is_known` does not know, encryption, a wrong checksum, no zip at all; what `entries`
/// holds is then to be thrown away.
[[nodiscard]] std::optional<Problem> unzip(std::span<const std::uint8_t> file, ZipLimits limits,
                                           bool (*is_known)(const std::string& name),
                                           Entries& entries);

}  // namespace hemline
