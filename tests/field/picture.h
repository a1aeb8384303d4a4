// A screen's pixels without a window or a graphics card: what Dear ImGui wants drawn, drawn by the
// processor alone, so that every machine makes the same picture.
#pragma once

#include <cstdint>
#include <filesystem>
#include <vector>

#include "field/theme/theme.h"

struct ImDrawData;

namespace hemline {

struct Picture {
    int w = 0, h = 0;
    std::vector<std::uint8_t> rgb;  ///< row by row from the top, 3 bytes a pixel
};

/// Triangles in their order, letters from the current context's atlas between four of its pixels,
/// colors blended where they overlap, on a plain ground.
Picture paint(const ImDrawData& data, Colour ground);

/// False when the file cannot be written.
bool write_png(const Picture& picture, const std::filesystem::path& file);
/// Empty (w 0) when the file is not there or no picture.
Picture read_png(const std::filesystem::path& file);

/// Pixels in which a color differs by more than `by` of 255; all pixels when the sizes differ.
long differing(const Picture& a, const Picture& b, int by);

}  // namespace hemline
