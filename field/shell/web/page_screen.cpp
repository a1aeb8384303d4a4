#include "field/shell/web/page_screen.h"
#include "engine/words/result.h"

#include <GLES3/gl3.h>
#include <backends/imgui_impl_opengl3.h>
#include <emscripten/html5.h>
#include <imgui.h>

namespace hemline {

std::optional<Problem> PageScreen::make_context() {
    EmscriptenWebGLContextAttributes wanted;
    emscripten_webgl_init_context_attributes(&wanted);
    wanted.majorVersion = 2;
    wanted.alpha = wanted.depth = wanted.antialias = EM_FALSE;
    context_ = static_cast<int>(emscripten_webgl_create_context("#screen", &wanted));
    if (context_ <= 0 || emscripten_webgl_make_context_current(context_) != 0 ||
        !ImGui_ImplOpenGL3_Init("#version 300 es")) {
        return Problem{say("This browser cannot draw here: it has no WebGL 2."),
                       say("Update the browser, or allow it to use the graphics chip.")};
    }
    return {};
}

std::optional<Problem> PageScreen::open() {
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;
    return make_context();
}

std::optional<Problem> PageScreen::open_again() {
    ImGui_ImplOpenGL3_Shutdown();
    emscripten_webgl_destroy_context(context_);
    return make_context();
}

void PageScreen::set_size(int w, int h) {
    emscripten_set_canvas_element_size("#screen", w, h);
    ImGui::GetIO().DisplaySize = ImVec2(static_cast<float>(w), static_cast<float>(h));
}

void PageScreen::take_letters() const {
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    ImGui_ImplOpenGL3_CreateDeviceObjects();
    if (ImGui::GetIO().Fonts->TexID == nullptr) {
        ImGui_ImplOpenGL3_CreateFontsTexture();
    }
    ImGui::GetIO().Fonts->ClearTexData();  // the graphics card has a copy
}

void PageScreen::present(Colour ground) const {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const ImVec4 colour = ImGui::ColorConvertU32ToFloat4(ground);
    glViewport(0, 0, static_cast<int>(size.x), static_cast<int>(size.y));
    glClearColor(colour.x, colour.y, colour.z, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

}  // namespace hemline
