// Colours, letter sizes and the scale: what makes a screen legible in the sun, in millimetres.
#pragma once

#include <cstdint>
#include <string>

struct ImFont;

namespace hemline {

enum class Light { day, night };

/// Packed as Dear ImGui wants it (IM_COL32).
using Colour = std::uint32_t;

/// Text pairs keep 7:1 on their ground; fills are of the Okabe–Ito set, under black text.
struct Palette {
    Colour paper;       ///< ground
    Colour ink;         ///< text and lines
    Colour soft;        ///< second text, still 7:1
    Colour hairline;    ///< rules and ticks
    Colour chalk;       ///< blue of a mark and of what is chosen; carries chalk_ink
    Colour chalk_ink;
    Colour metal;       ///< flange
    Colour metal_low;   ///< face, kick
    Colour tape;        ///< the tape itself; carries black
    Colour waste;       ///< hatching
    Colour waste_ground;
    Colour warn;        ///< fill of a warning; carries black
    Colour good;        ///< fill of something finished; carries black
    Colour key;         ///< ground of a key
};
const Palette& palette_of(Light light);

/// Contrast ratio of two colours, 1…21 (WCAG 2.2).
double contrast_of(Colour a, Colour b);

/// Letter sizes by role. Cap heights at 600 mm: small 2.8 mm (16′), body 3.84 mm (22′), title and
/// figures above 5.24 mm (30′).
struct Fonts {
    ImFont* small = nullptr;   ///< 16′: second text only
    ImFont* body = nullptr;    ///< 22′
    ImFont* bold = nullptr;    ///< 22′, bold: labels of buttons, what counts
    ImFont* title = nullptr;   ///< 30′, bold
    ImFont* figure = nullptr;  ///< 60′ and more, bold: the readback, the cut length
    ImFont* fraction = nullptr;  ///< stacked figures of a fraction beside `figure`
};

/// Pixels a millimetre has when nobody calibrated: 5.9.
constexpr float px_per_mm_unknown = 5.9F;

/// Builds the atlas at the scale's pixel sizes (never FontGlobalScale); call again when it changes.
/// `font_folder`: holds B612-Regular.ttf and B612-Bold.ttf. Returns what is wrong, or empty.
std::string load_fonts(const std::string& font_folder, float px_per_mm, Fonts& fonts);

}  // namespace hemline
