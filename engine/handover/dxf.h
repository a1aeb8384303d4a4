// A drawing as DXF, for the shop's cutter: layers CUT, BEND and MARK, in millimeters.
#pragma once

#include <string>
#include <string_view>

#include "engine/handover/drawing.h"

namespace hemline {

/// A whole ASCII DXF file (R12, that every program reads): outlines as closed polylines, other
/// lines as lines, words on MARK. y is up, the metal's lower edge at 0; coordinates are exact to
/// the nanometer.
std::string dxf_of(const Drawing& drawing);

/// Words as a DXF file holds them, printable ASCII alone: a control character by its caret (^J), a
/// character that is not ASCII by its number (\U+00F1, the backslash too; a degree sign as %%d), a
/// byte that is not UTF-8 or a character past U+FFFF as "?". A space is put between two percent
/// signs, since readers take them for a code. Source: the format's published reference, from
/// memory.
std::string dxf_words(std::string_view text);

}  // namespace hemline
