#include "field/shell/surface.h"

#include <SDL.h>
#include <SDL_opengl.h>
#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>
#include <stb_image_write.h>

#include <array>
#include <string_view>
#include <system_error>
#include <vector>

namespace hemline {

namespace {

struct Dialect {
    int profile, major, minor;
    const char* shading;
};
constexpr std::array<Dialect, 3> dialects{{{SDL_GL_CONTEXT_PROFILE_CORE, 3, 3, "#version 330 core"},
                                           {0, 3, 0, "#version 130"},
                                           {SDL_GL_CONTEXT_PROFILE_ES, 3, 0, "#version 300 es"}}};

void set_hints() {
    SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
    SDL_SetHint(SDL_HINT_MOUSE_TOUCH_EVENTS, "1");  // a mouse is a finger too
    SDL_SetHint(SDL_HINT_ANDROID_TRAP_BACK_BUTTON, "1");
    SDL_SetHint(SDL_HINT_VIDEO_ALLOW_SCREENSAVER, "1");
    SDL_SetHint(SDL_HINT_VIDEO_X11_NET_WM_BYPASS_COMPOSITOR, "0");
    SDL_SetHint(SDL_HINT_MOUSE_FOCUS_CLICKTHROUGH, "1");  // the first tap counts
}

Problem no_window(const char* what) {
    return {std::string(what) + ": " + SDL_GetError() + ".",
            "Start it on a screen with OpenGL 3 or OpenGL ES 3."};
}

}  // namespace

std::optional<Problem> Surface::open(const std::string& title, int w, int h) {
    set_hints();
    if (SDL_Init(SDL_INIT_VIDEO) != 0) {
        return no_window("There is no screen to draw on");
    }
    // Without a display SDL draws where nobody sees it; that is for those who ask for it by name.
    const std::string_view driver = SDL_GetCurrentVideoDriver();
    if ((driver == "offscreen" || driver == "dummy") && SDL_getenv("SDL_VIDEODRIVER") == nullptr) {
        SDL_Quit();
        return Problem{"There is no screen to draw on.",
                       "Start it on a desktop, or set DISPLAY or WAYLAND_DISPLAY."};
    }
    for (const Dialect& dialect : dialects) {
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_PROFILE_MASK, dialect.profile);
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_MAJOR_VERSION, dialect.major);
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_MINOR_VERSION, dialect.minor);
        SDL_GL_SetAttribute(SDL_GL_DOUBLEBUFFER, 1);
        SDL_GL_SetAttribute(SDL_GL_DEPTH_SIZE, 0);
        window_ =
            SDL_CreateWindow(title.c_str(), SDL_WINDOWPOS_CENTERED, SDL_WINDOWPOS_CENTERED, w, h,
                             SDL_WINDOW_OPENGL | SDL_WINDOW_RESIZABLE | SDL_WINDOW_ALLOW_HIGHDPI);
        context_ = window_ != nullptr ? SDL_GL_CreateContext(window_) : nullptr;
        if (context_ != nullptr) {
            SDL_GL_SetSwapInterval(1);
            ImGui::CreateContext();
            ImGui::GetIO().IniFilename = nullptr;
            if (ImGui_ImplOpenGL3_Init(dialect.shading)) {
                return {};
            }
        }
        close();
    }
    Problem problem = no_window("OpenGL cannot be used here");
    SDL_Quit();
    return problem;
}

Surface::~Surface() {
    if (context_ != nullptr) {
        ImGui_ImplOpenGL3_Shutdown();
        close();
        SDL_Quit();
    }
}

void Surface::close() {
    if (context_ != nullptr) {
        ImGui::DestroyContext();
        SDL_GL_DeleteContext(context_);
    }
    if (window_ != nullptr) {
        SDL_DestroyWindow(window_);
    }
    context_ = nullptr;
    window_ = nullptr;
}

float Surface::density() const {
    int window_w = 0;
    int drawable_w = 0;
    SDL_GetWindowSize(window_, &window_w, nullptr);
    SDL_GL_GetDrawableSize(window_, &drawable_w, nullptr);
    return window_w > 0 && drawable_w > 0
               ? static_cast<float>(drawable_w) / static_cast<float>(window_w)
               : 1.0F;
}

void Surface::measure() const {
    int w = 0;
    int h = 0;
    SDL_GL_GetDrawableSize(window_, &w, &h);
    ImGui::GetIO().DisplaySize = ImVec2(static_cast<float>(w), static_cast<float>(h));
}

/// Buffers and shaders are made once: 1.86 would draw nothing with new buffers, since it remembers
/// the size of the former ones.
void Surface::take_letters() {
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    if (drawn_with_) {
        ImGui_ImplOpenGL3_CreateFontsTexture();
    } else {
        drawn_with_ = ImGui_ImplOpenGL3_CreateDeviceObjects();
    }
    if (ImGui::GetIO().Fonts->TexID == nullptr) {
        ImGui_ImplOpenGL3_CreateFontsTexture();
    }
    ImGui::GetIO().Fonts->ClearTexData();  // the screen has its copy
}

void Surface::draw(Colour ground) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const ImVec4 colour = ImGui::ColorConvertU32ToFloat4(ground);
    glViewport(0, 0, static_cast<int>(size.x), static_cast<int>(size.y));
    glClearColor(colour.x, colour.y, colour.z, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

void Surface::present(Colour ground) const {
    draw(ground);
    SDL_GL_SwapWindow(window_);
}

bool Surface::save_picture(const std::filesystem::path& file, Colour ground) const {
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
