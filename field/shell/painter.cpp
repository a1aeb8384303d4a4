#include "field/shell/painter.h"

#include <GL/gl.h>
#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>
#include <stb_image_write.h>

#include <system_error>
#include <vector>

namespace hemline {

Painter::~Painter() { close(); }

bool Painter::open(const Dialect& dialect) {
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;
    open_ = ImGui_ImplOpenGL3_Init(dialect.shading);
    if (!open_) {
        ImGui::DestroyContext();
    }
    return open_;
}

void Painter::close() {
    if (open_) {
        ImGui_ImplOpenGL3_Shutdown();
        ImGui::DestroyContext();
    }
    open_ = drawn_with_ = false;
}

/// Buffers and shaders are made once: Dear ImGui 1.86 would draw nothing with new buffers, because
/// it remembers the size of the former buffers.
void Painter::take_letters() {
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    if (drawn_with_) {
        ImGui_ImplOpenGL3_CreateFontsTexture();
    } else {
        drawn_with_ = ImGui_ImplOpenGL3_CreateDeviceObjects();
    }
    if (ImGui::GetIO().Fonts->TexID == nullptr) {
        ImGui_ImplOpenGL3_CreateFontsTexture();
    }
    ImGui::GetIO().Fonts->ClearTexData();  // the graphics card has a copy
}

void Painter::draw(Colour ground) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const ImVec4 colour = ImGui::ColorConvertU32ToFloat4(ground);
    glViewport(0, 0, static_cast<int>(size.x), static_cast<int>(size.y));
    glClearColor(colour.x, colour.y, colour.z, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

bool Painter::save_picture(const std::filesystem::path& file, Colour ground) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const int w = static_cast<int>(size.x);
    const int h = static_cast<int>(size.y);
    draw(ground);  // a presented buffer is undefined
    std::vector<unsigned char> pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h) *
                                      4);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadPixels(0, 0, w, h, GL_RGBA, GL_UNSIGNED_BYTE, pixels.data());
    for (std::size_t alpha = 3; alpha < pixels.size(); alpha += 4) {
        pixels[alpha] = 0xFF;
    }
    stbi_flip_vertically_on_write(1);
    std::filesystem::path part = file;
    part += ".part";
    std::error_code error;
    if (stbi_write_png(part.c_str(), w, h, 4, pixels.data(), w * 4) != 0) {
        std::filesystem::rename(part, file, error);
        return !error;
    }
    return false;
}

}  // namespace hemline
