// Whole frames in any bytes, one after another, past whatever damage lies between.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

#include "engine/record/crc32.h"

namespace hemline {

/// Where a frame lies whose magic, length and CRC are right.
struct FramePlace {
    std::size_t at = 0, size = 0;
};

class FrameSearch {
  public:
    /// The bytes must outlive it.
    explicit FrameSearch(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}

    /// The next one; none at the end. All of them together in time that grows with the bytes only,
    /// however many false beginnings they hold.
    std::optional<FramePlace> next();

  private:
    std::optional<std::size_t> size_of_frame_here();

    std::span<const std::uint8_t> bytes_;
    std::size_t at_ = 0;
    std::optional<StretchCrc> stretches_;  ///< made at the first doubt
};

}  // namespace hemline
