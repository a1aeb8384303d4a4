// Finds whole frames in any bytes, and skips the damage between them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

#include "engine/record/crc32.h"

namespace hemline {

/// The place of a frame whose magic, length and CRC are right.
struct FramePlace {
    std::size_t at = 0, size = 0;
};

class FrameSearch {
  public:
    /// The bytes must outlive it.
    explicit FrameSearch(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}

    /// The next frame; none at the end. Finding all of them takes time linear in the bytes, however
    /// many false beginnings they hold.
    std::optional<FramePlace> next();

  private:
    std::optional<std::size_t> size_of_frame_here();

    std::span<const std::uint8_t> bytes_;
    std::size_t at_ = 0;
    std::optional<StretchCrc> stretches_;  ///< made at the first doubt
};

}  // namespace hemline
