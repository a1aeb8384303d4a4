// A drawing of a flat pattern, the same for SVG, DXF and the printed page: lines by layer, and
// words.
//
//      0 ─┬────────────── 46 in ─┬─ words along the top
//         │       CUT            │
//         ├╌╌╌╌╌╌ BEND ╌╌╌╌╌╌╌╌╌╌┤ 4 in
//
//   x to the right, y down the page, from the piece's left upper corner; whole nanometers.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/trim/pattern.h"

namespace hemline {

constexpr std::int64_t mm_nm = 1'000'000;

enum class Layer { cut, bend, mark };

/// "CUT", "BEND", "MARK".
std::string_view name_of(Layer layer);

struct DrawnLine {
    Layer layer = Layer::cut;
    FlatOutline points;
    bool closed = false;
};
struct DrawnCircle {
    Layer layer = Layer::cut;
    FlatPoint centre;
    Length radius;
};
enum class Turned { level, upright };
struct DrawnWords {
    FlatPoint at;  ///< left end of the words' foot line
    std::string text;
    Turned turned = Turned::level;
};
struct Drawing {
    FlatPoint least, most;  ///< of the metal
    std::vector<DrawnLine> lines;
    std::vector<DrawnCircle> circles;  ///< no trim has it yet: a hole's, a screw's
    std::vector<DrawnWords> words;
    std::string title;
};

/// Outline and slits as CUT, folds as BEND, a dimension at every place of a corner or fold along
/// the piece and at every bend across it.
Drawing drawing_of(const FlatPattern& pattern, const std::string& title, Marks marks);

/// The part of the drawing from x0 to x1, for a template of an end; lines are cut off there.
Drawing part_of(const FlatPattern& pattern, const std::string& title, Marks marks, Side end,
                Length reach);

/// How far from the end its work reaches inward.
Length work_reach(const FlatPattern& pattern, Side end);

/// Millimeters with up to six decimals, without trailing zeros: "25.4", "0.000001".
std::string mm_text(std::int64_t nm);

}  // namespace hemline
