#include <imgui.h>

#include <array>
#include <cmath>
#include <fstream>
#include <iterator>

#include "field/theme/theme.h"

namespace hemline {

namespace {

constexpr ImWchar letters[] = {
#include "letters.inc"
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
    config.OversampleH = 1;  // more would not help large letters, and the atlas stays small
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
    fonts.body = add(regular, cap_body * px_per_mm, letters);
    fonts.small = add(regular, cap_small * px_per_mm, letters);
    fonts.bold = add(bold, cap_body * px_per_mm, letters);
    fonts.title = add(bold, cap_title * px_per_mm, letters);
    fonts.figure = add(bold, cap_figure * px_per_mm, figures.data());
    fonts.fraction = add(bold, cap_fraction * px_per_mm, figures.data());
    const bool built = atlas.Build();
    atlas.ClearInputData();  // it points into our strings
    return built ? std::string()
                 : "The letters do not fit the screen's scale. Choose a smaller one.";
}

}  // namespace hemline
