#include <imgui.h>

#include <array>
#include <cmath>
#include <fstream>
#include <iterator>

#include "field/theme/theme.h"

namespace hemline {

namespace {

constexpr std::array<ImWchar, 51> letters{0x20,   0xFF,   0x2013, 0x2014,  // – —
                                          0x2018, 0x2019, 0x201C, 0x201D,  // ‘ ’ “ ”
                                          0x2022, 0x2022, 0x2026, 0x2026,  // • …
                                          0x2032, 0x2033, 0x215B, 0x215E,  // ′ ″ ⅛…⅞
                                          0x2190, 0x2193, 0x2212, 0x2212,  // ← ↑ → ↓ −
                                          0x2248, 0x2248,                  // ≈
                                          0x2264, 0x2265, 0x25B8, 0x25B8,  // ≤ ≥ ▸
                                          0x25BE, 0x25BE, 0x25CF, 0x25CF,  // ▾ ●
                                          0x2610, 0x2611, 0x26A0, 0x26A1,  // ☐ ☑ ⚠ ⚡
                                          0x2713, 0x2713, 0x2780, 0x2789,  // ✓ ➀…➉
                                          0};
constexpr std::array<ImWchar, 9> figures{'0', '9', '.', '.', '?', '?', 0x2212, 0x2212, 0};

/// The file's bytes when they can be a font; Dear ImGui stops the program on anything else.
std::string read_face(const std::string& path, std::string& bytes) {
    std::ifstream file(path, std::ios::binary);
    bytes.assign(std::istreambuf_iterator<char>(file), {});
    const std::string_view magic = std::string_view(bytes).substr(0, 4);
    if (magic == "OTTO" || magic == std::string_view("\0\1\0\0", 4)) {
        return {};
    }
    return "There is no font in " + path + ". Install the package fonts-b612.";
}

ImFont* add(std::string& face, float cap_px, const ImWchar* ranges) {
    ImFontConfig config;
    config.FontDataOwnedByAtlas = false;
    config.OversampleH = 1;  // letters this large gain nothing, and the atlas stays small
    config.PixelSnapH = true;
    return ImGui::GetIO().Fonts->AddFontFromMemoryTTF(face.data(), static_cast<int>(face.size()),
                                                      std::round(cap_px / cap_per_size), &config,
                                                      ranges);
}

}  // namespace

std::string load_fonts(const std::string& font_folder, float px_per_mm, Fonts& fonts) {
    std::string regular;
    std::string bold;
    for (const std::string& wrong : {read_face(font_folder + "/B612-Regular.otf", regular),
                                     read_face(font_folder + "/B612-Bold.otf", bold)}) {
        if (!wrong.empty()) {
            return wrong;
        }
    }
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    atlas.Flags |= ImFontAtlasFlags_NoPowerOfTwoHeight | ImFontAtlasFlags_NoMouseCursors;
    fonts.body = add(regular, cap_body * px_per_mm, letters.data());
    fonts.small = add(regular, cap_small * px_per_mm, letters.data());
    fonts.bold = add(bold, cap_body * px_per_mm, letters.data());
    fonts.title = add(bold, cap_title * px_per_mm, letters.data());
    fonts.figure = add(bold, cap_figure * px_per_mm, figures.data());
    fonts.fraction = add(bold, cap_fraction * px_per_mm, figures.data());
    const bool built = atlas.Build();
    atlas.ClearInputData();  // it points into our strings
    return built ? std::string()
                 : "The letters do not fit the screen's scale. Choose a smaller one.";
}

}  // namespace hemline
