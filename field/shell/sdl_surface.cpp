#include "field/shell/sdl_surface.h"
#include "engine/words/result.h"

#include <SDL.h>
#include <imgui.h>

#include <string_view>

namespace hemline {

namespace {

int profile_of(const Dialect& dialect) {
    switch (dialect.profile) {
        case Dialect::Profile::core:
            return SDL_GL_CONTEXT_PROFILE_CORE;
        case Dialect::Profile::es:
            return SDL_GL_CONTEXT_PROFILE_ES;
        case Dialect::Profile::any:
            break;
    }
    return 0;
}

void set_hints() {
    SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
    SDL_SetHint(SDL_HINT_MOUSE_TOUCH_EVENTS, "1");  // a mouse is a finger too
    SDL_SetHint(SDL_HINT_ANDROID_TRAP_BACK_BUTTON, "1");
    SDL_SetHint(SDL_HINT_VIDEO_ALLOW_SCREENSAVER, "1");
    SDL_SetHint(SDL_HINT_VIDEO_X11_NET_WM_BYPASS_COMPOSITOR, "0");
    SDL_SetHint(SDL_HINT_MOUSE_FOCUS_CLICKTHROUGH, "1");  // the first tap counts
}

Problem no_window(const char* what) {
    return {Text(std::string(what) + ": " + SDL_GetError() + "."),
            Text("Start it on a screen with OpenGL 3 or OpenGL ES 3.")};
}

}  // namespace

std::optional<Problem> SdlSurface::open(const std::string& title, int w, int h) {
    set_hints();
    if (SDL_Init(SDL_INIT_VIDEO) != 0) {
        return no_window("There is no screen to draw on");
    }
    // Without a display SDL would draw where nobody sees it; only do that when asked for by name.
    const std::string_view driver = SDL_GetCurrentVideoDriver();
    if ((driver == "offscreen" || driver == "dummy") && SDL_getenv("SDL_VIDEODRIVER") == nullptr) {
        SDL_Quit();
        return Problem{Text("There is no screen to draw on."),
                       Text("Start it on a desktop, or set DISPLAY or WAYLAND_DISPLAY.")};
    }
    for (const Dialect& dialect : dialects) {
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_PROFILE_MASK, profile_of(dialect));
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
            if (painter_.open(dialect)) {
                return {};
            }
        }
        close();
    }
    Problem problem = no_window("OpenGL cannot be used here");
    SDL_Quit();
    return problem;
}

SdlSurface::~SdlSurface() {
    if (context_ != nullptr) {
        close();
        SDL_Quit();
    }
}

void SdlSurface::close() {
    if (context_ != nullptr) {
        painter_.close();
        SDL_GL_DeleteContext(context_);
    }
    if (window_ != nullptr) {
        SDL_DestroyWindow(window_);
    }
    context_ = nullptr;
    window_ = nullptr;
}

float SdlSurface::density() const {
    int window_w = 0;
    int drawable_w = 0;
    SDL_GetWindowSize(window_, &window_w, nullptr);
    SDL_GL_GetDrawableSize(window_, &drawable_w, nullptr);
    return window_w > 0 && drawable_w > 0
               ? static_cast<float>(drawable_w) / static_cast<float>(window_w)
               : 1.0F;
}

void SdlSurface::measure() const {
    int w = 0;
    int h = 0;
    SDL_GL_GetDrawableSize(window_, &w, &h);
    ImGui::GetIO().DisplaySize = ImVec2(static_cast<float>(w), static_cast<float>(h));
}

void SdlSurface::present(Colour ground) const {
    Painter::draw(ground);
    SDL_GL_SwapWindow(window_);
}

}  // namespace hemline
