// A drawing as SVG at true size: one unit is one millimeter, layers are classes.
#pragma once

#include <string>
#include <string_view>

#include "engine/handover/drawing.h"

namespace hemline {

/// A whole SVG document, sized in mm, with room for the words about the metal. Paths and lines have
/// the class cut, bend or mark; coordinates are exact to the nanometer.
std::string svg_of(const Drawing& drawing);

/// The same lines and words as elements to put inside another SVG.
std::string svg_elements(const Drawing& drawing);

/// Text made safe inside XML and HTML; invisible characters are shown by their numbers.
std::string xml_text(std::string_view text);

/// What the classes look like.
std::string_view svg_style();

}  // namespace hemline
