// Colors, letter sizes and the scale, in millimeters: what makes a screen legible in the sun.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

struct ImFont;

namespace hemline {

enum class Light { day, night };

/// Packed as Dear ImGui wants it (IM_COL32).
using Colour = std::uint32_t;

/// Text has a contrast of 7:1 on its ground and stays legible under the sun's veil (text_pairs()
/// lists the pairs). Fills are from the Okabe–Ito set, under black text; `good` is its sky blue,
/// lightened until black text on it stays legible under the veil.
struct Palette {
    Colour paper;     ///< ground
    Colour ink;       ///< text and lines
    Colour soft;      ///< secondary text, still 7:1
    Colour hairline;  ///< rules and ticks
    Colour chalk;     ///< blue of a mark and of what is chosen; carries chalk_ink
    Colour chalk_ink;
    Colour metal;      ///< flange
    Colour metal_low;  ///< face, kick
    Colour tape;       ///< the tape itself; carries black
    Colour waste;      ///< hatching
    Colour waste_ground;
    Colour warn;  ///< fill of a warning; carries black
    Colour good;  ///< fill of something finished; carries black
    Colour key;   ///< ground of a key
};
const Palette& palette_of(Light light);

/// Contrast ratio of two colors, 1…21 (WCAG 2.2).
double contrast_of(Colour a, Colour b);
/// The contrast left in open sun: a 500 cd/m² screen under a 255 cd/m² veil, as a share (0…1) of
/// what is left for black on white.
double share_left_in_sun(Colour a, Colour b);

/// Text and the ground it may stand on. Other pairs are for lines and fills only.
struct TextPair {
    const char* name;
    Colour text, ground;
};
std::vector<TextPair> text_pairs(const Palette& palette);

/// Letter sizes by role. Cap heights at 600 mm: small 2.8 mm (16′), body 3.84 mm (22′), title and
/// figures above 5.24 mm (30′).
struct Fonts {
    ImFont* small = nullptr;     ///< 16′: secondary text only
    ImFont* body = nullptr;      ///< 22′
    ImFont* bold = nullptr;      ///< 22′, bold: labels of buttons, what counts
    ImFont* title = nullptr;     ///< 30′, bold
    ImFont* figure = nullptr;    ///< 60′ and more, bold: the readback, the cut length
    ImFont* fraction = nullptr;  ///< stacked figures of a fraction beside `figure`
};

/// Pixels in a millimeter when nobody has measured the screen: 5.9.
constexpr float px_per_mm_unknown = 5.9F;

/// Cap heights in millimeters, by role.
constexpr float cap_small = 2.80F, cap_body = 3.84F, cap_title = 5.24F, cap_figure = 12.0F,
                cap_fraction = 5.5F;
/// Cap height as a part of the pixel size Dear ImGui is asked for, which is ascent + descent:
/// B612 1.008 has 1500 against 1930 + 500 of 2000 units an em (its OS/2 and hhea tables).
constexpr float cap_per_size = 1500.0F / 2430.0F;
/// Middle of the capitals below the top of a line, as a part of that size.
constexpr float cap_middle_per_size = (1930.0F - 750.0F) / 2430.0F;

/// Where Debian's fonts-b612 puts the faces.
constexpr const char* font_folder_usual = "/usr/share/fonts/opentype/b612";

/// Builds the atlas at the scale's pixel sizes (never FontGlobalScale); call again when it changes.
/// `font_folder`: holds B612-Regular.otf and B612-Bold.otf. Returns what is wrong, or empty.
/// Loaded: the letters of letters.txt (not ▲ ■ ○ ⌫ ✗: B612 lacks them).
/// `figure` has digits, − . and ? only; `fraction` digits and ?.
std::string load_fonts(const std::string& font_folder, float px_per_mm, Fonts& fonts);

}  // namespace hemline
