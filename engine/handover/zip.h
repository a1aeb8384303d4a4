// A zip container in memory, through libzip; only zip.cpp includes the library. Reads and writes
// ISO/IEC 21320-1 (stored or deflated entries, no encryption).
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

using Entries = std::map<std::string, std::vector<std::uint8_t>>;

/// The limits that a container must keep before it is unpacked.
struct ZipLimits {
    std::size_t file = 0;      ///< most bytes of the whole file
    std::size_t unpacked = 0;  ///< most bytes of all entries together
    std::size_t entries = 0;   ///< most entries
};

/// The container with those entries, in their order, without times: same entries, same bytes.
Result<std::vector<std::uint8_t>> zip_of(const Entries& entries);

/// Puts the entries of a container into `entries` (returning them would copy them). Memory stays
/// below the sum of the limits. Problem names what is wrong: too large, too many, the same name
/// twice, a name that `is_known` does not know, encryption, a wrong checksum, not a zip file.
/// Discard what `entries` holds then.
[[nodiscard]] std::optional<Problem> unzip(std::span<const std::uint8_t> file, ZipLimits limits,
                                           bool (*is_known)(const std::string& name),
                                           Entries& entries);

}  // namespace hemline
