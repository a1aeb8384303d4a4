#include <doctest/doctest.h>
#include <imgui.h>

#include <cmath>
#include <string>

#include "field/theme/theme.h"

using namespace hemline;

namespace {

struct Letters {
    ImGuiContext* context = ImGui::CreateContext();
    Fonts fonts;
    ~Letters() { ImGui::DestroyContext(context); }
};

/// Height of the letter E, which is flat at both ends, in millimeters.
double cap_of(const ImFont* font, wchar_t letter, float px_per_mm) {
    const ImFontGlyph* glyph = font->FindGlyph(static_cast<ImWchar>(letter));
    return static_cast<double>((glyph->Y1 - glyph->Y0) / px_per_mm);
}

/// Millimeters that so many minutes of arc cover at 600 mm: 2 · 600 · tan(half the angle).
double minutes(double arc) { return 1200 * std::tan(arc / 60 / 2 * 3.14159265358979 / 180); }

}  // namespace

// ISO 9241-3 and NUREG-0700 ask for 16′ at least and prefer 20–22′; 7 and its like are flat at both
// ends as E is. Half a pixel is what rounding to whole pixels may take.
TEST_CASE("Capitals are as high as their minutes of arc at 600 mm, at any scale") {
    for (const float scale : {4.0F, 5.9F, 11.0F}) {
        Letters letters;
        REQUIRE(load_fonts(font_folder_usual, scale, letters.fonts) == "");
        const double half_pixel = 0.5 / static_cast<double>(scale);
        CHECK(cap_of(letters.fonts.small, 'E', scale) >= minutes(16) - half_pixel);
        CHECK(cap_of(letters.fonts.body, 'E', scale) >= minutes(22) - half_pixel);
        CHECK(cap_of(letters.fonts.bold, 'E', scale) >= minutes(22) - half_pixel);
        CHECK(cap_of(letters.fonts.title, 'E', scale) >= minutes(30) - half_pixel);
        CHECK(cap_of(letters.fonts.figure, '7', scale) >= minutes(60) - half_pixel);
        CHECK(cap_of(letters.fonts.fraction, '7', scale) >= minutes(30) - half_pixel);
        // and not from a glyph box that is larger than the letter: within a pixel of what is meant
        CHECK(cap_of(letters.fonts.body, 'E', scale) <= 3.84 + 2 * half_pixel + half_pixel);
    }
}

TEST_CASE("Digits are all of one width, so that figures stand still while they are keyed") {
    Letters letters;
    REQUIRE(load_fonts(font_folder_usual, px_per_mm_unknown, letters.fonts) == "");
    for (const ImFont* font : {letters.fonts.small, letters.fonts.body, letters.fonts.bold,
                               letters.fonts.title, letters.fonts.figure, letters.fonts.fraction}) {
        for (ImWchar digit = '1'; digit <= '9'; ++digit) {
            CHECK(font->GetCharAdvance(digit) == font->GetCharAdvance('0'));
        }
    }
}

TEST_CASE("The letters that screens may use are there, Spanish ones too") {
    Letters letters;
    REQUIRE(load_fonts(font_folder_usual, px_per_mm_unknown, letters.fonts) == "");
    const std::u16string wanted = u"áéíóúüñÁÉÍÓÚÜÑ¿¡½¼¾⅛⅜⅝⅞✓▸▾…′″×°·–—−→←↑↓≈≤≥●☐☑⚠⚡•‘’“”➀➉";
    for (const ImFont* font :
         {letters.fonts.small, letters.fonts.body, letters.fonts.bold, letters.fonts.title}) {
        for (const char16_t letter : wanted) {
            CAPTURE(static_cast<int>(letter));
            CHECK(font->FindGlyphNoFallback(static_cast<ImWchar>(letter)) != nullptr);
        }
    }
    CHECK(letters.fonts.figure->FindGlyphNoFallback(0x2212) != nullptr);
}

TEST_CASE("A folder without the letters is named, with the package that has them") {
    Letters letters;
    const std::string wrong = load_fonts("/nowhere", px_per_mm_unknown, letters.fonts);
    CHECK(wrong.find("/nowhere/B612-Regular.otf") != std::string::npos);
    CHECK(wrong.find("fonts-b612") != std::string::npos);
}
