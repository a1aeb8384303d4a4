// Words broken into lines: at spaces alone, so that a number keeps its point and its unit sign.
#pragma once

#include <string_view>
#include <vector>

struct ImFont;

namespace hemline {

/// Pixels that the words take on one line.
float width_of(const ImFont* font, std::string_view words);
/// The lines between line ends.
std::vector<std::string_view> lines_of(std::string_view label);
/// Lines no wider than `w`; a word that is wider is cut between its letters.
std::vector<std::string_view> lines_within(const ImFont* font, std::string_view words, float w);
/// The label on two lines, broken at the space that leaves the shortest longer one.
std::vector<std::string_view> broken(const ImFont* font, std::string_view label);

}  // namespace hemline
