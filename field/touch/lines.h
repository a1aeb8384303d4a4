// Words broken into lines: at spaces alone, so that a number keeps its point and its unit sign.
#pragma once

#include <string_view>
#include <vector>

#include "field/theme/theme.h"

struct ImDrawList;

namespace hemline {

/// Pixels that the words take on a single line.
float width_of(const ImFont* font, std::string_view words);
/// The lines between line ends.
std::vector<std::string_view> lines_of(std::string_view label);
/// Lines no wider than `w`; a word that is wider is cut between its letters.
std::vector<std::string_view> lines_within(const ImFont* font, std::string_view words, float w);
/// The label on two lines, broken at the space that makes the longer line shortest.
std::vector<std::string_view> broken(const ImFont* font, std::string_view label);

/// Draws a line of text, its top at `y`, on whole pixels.
void put(ImDrawList* ink, const ImFont* font, float x, float y, std::string_view words,
         Colour colour);
/// Top of the line whose capitals have their middle at `mid_y`.
float top_for(const ImFont* font, float mid_y);

}  // namespace hemline
