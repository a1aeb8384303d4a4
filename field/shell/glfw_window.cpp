#include <GLFW/glfw3.h>
#include <imgui.h>

#include <atomic>
#include <cstdio>

#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "field/shell/glfw_events.h"
#include "field/shell/painter.h"
#include "field/shell/targets_file.h"
#include "field/shell/window.h"

namespace hemline {

namespace {

std::atomic<bool> woken = false;  // wake_window() gets no window as argument, and a program has one

Problem no_window(const std::string& what) {
    const char* why = nullptr;
    glfwGetError(&why);
    return {Text(what + (why == nullptr ? "." : std::string(": ") + why + ".")),
            Text("Start it on a desktop with OpenGL 3, or use the tablet's program.")};
}

GLFWwindow* open_window(const WindowOptions& options, const Dialect& dialect) {
    const bool es = dialect.profile == Dialect::Profile::es;
    glfwDefaultWindowHints();
    glfwWindowHint(GLFW_CLIENT_API, es ? GLFW_OPENGL_ES_API : GLFW_OPENGL_API);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, dialect.major);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, dialect.minor);
    glfwWindowHint(GLFW_OPENGL_PROFILE, dialect.profile == Dialect::Profile::core
                                            ? GLFW_OPENGL_CORE_PROFILE
                                            : GLFW_OPENGL_ANY_PROFILE);
    glfwWindowHint(GLFW_DEPTH_BITS, 0);
    glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_FALSE);
    return glfwCreateWindow(options.w, options.h, "Hemline", nullptr, nullptr);
}

class Window {
  public:
    Window(const WindowOptions& options, const Scene& scene)
        : options_(options), stage_(scene, options.font_folder) {}
    Window(const Window&) = delete;
    Window& operator=(const Window&) = delete;
    ~Window();
    std::optional<Problem> open();
    void run();

  private:
    static Window& of(GLFWwindow* window) {
        return *static_cast<Window*>(glfwGetWindowUserPointer(window));
    }
    void hear();
    void wait() const;
    std::string load_letters();
    void draw_frame();

    const WindowOptions& options_;
    Stage stage_;
    MouseFinger mouse_{stage_.touches()};
    TargetsFile targets_{options_.targets};
    Painter painter_;
    GLFWwindow* window_ = nullptr;
    float density_ = 0, px_per_mm_ = 0;
    double frame_at_ = 0;
};

std::optional<Problem> Window::open() {
    if (glfwInit() != GLFW_TRUE) {
        return no_window("There is no screen to draw on");
    }
    for (const Dialect& dialect : dialects) {
        window_ = open_window(options_, dialect);
        if (window_ == nullptr) {
            continue;
        }
        glfwMakeContextCurrent(window_);
        glfwSwapInterval(1);
        if (!painter_.open(dialect)) {
            glfwDestroyWindow(window_);
            window_ = nullptr;
            continue;
        }
        hear();
        if (std::string wrong = load_letters(); !wrong.empty()) {
            return Problem{Text(wrong), Text("Then start it again.")};
        }
        return {};
    }
    return no_window("OpenGL cannot be used here");
}

Window::~Window() {
    painter_.close();
    if (window_ != nullptr) {
        glfwDestroyWindow(window_);
    }
    glfwTerminate();
}

void Window::hear() {
    glfwSetWindowUserPointer(window_, this);
    glfwSetCharCallback(window_, [](GLFWwindow* window, unsigned int code_point) {
        of(window).stage_.type(text_of(code_point));
        of(window).stage_.want_frames();
    });
    glfwSetKeyCallback(window_, [](GLFWwindow* window, int key, int, int action, int mods) {
        if (action == GLFW_RELEASE) {
            return;
        }
        Stage& stage = of(window).stage_;
        if ((mods & GLFW_MOD_CONTROL) != 0 && types_letter(key, 'v')) {
            const char* const lines = glfwGetClipboardString(window);
            stage.paste(lines != nullptr ? lines : "");
            stage.want_frames();
        } else if (const std::string typed = typed_by(key, mods);
                   !typed.empty() && (action == GLFW_PRESS || typed != "\n")) {
            stage.type(typed);  // Enter that is held down acts once
            stage.want_frames();
        }
    });
    glfwSetCursorPosCallback(window_, [](GLFWwindow* window, double x, double y) {
        Window& self = of(window);
        self.mouse_.move(x, y, self.density_);
        if (self.mouse_.is_down()) {
            self.stage_.want_frames();
        }
    });
    glfwSetMouseButtonCallback(window_, [](GLFWwindow* window, int button, int action, int) {
        if (button == GLFW_MOUSE_BUTTON_LEFT) {
            of(window).mouse_.press(action == GLFW_PRESS);
            of(window).stage_.want_frames();
        }
    });
    glfwSetScrollCallback(window_, [](GLFWwindow* window, double, double notches) {
        of(window).mouse_.turn(notches);
        of(window).stage_.want_frames();
    });
    glfwSetFramebufferSizeCallback(window_, [](GLFWwindow* window, int, int) {
        of(window).stage_.touches().cancel();
        of(window).stage_.want_frames();
    });
    glfwSetWindowFocusCallback(window_, [](GLFWwindow* window, int focused) {
        if (focused == GLFW_FALSE) {
            of(window).stage_.touches().cancel();
        }
        of(window).stage_.want_frames();
    });
    glfwSetWindowRefreshCallback(window_,
                                 [](GLFWwindow* window) { of(window).stage_.want_frames(); });
}

/// Letters and layout follow the display's density; does nothing while it stays the same.
std::string Window::load_letters() {
    int window_w = 0;
    int w = 0;
    int h = 0;
    glfwGetWindowSize(window_, &window_w, nullptr);
    glfwGetFramebufferSize(window_, &w, &h);
    ImGui::GetIO().DisplaySize = ImVec2(static_cast<float>(w), static_cast<float>(h));
    const float density =
        window_w > 0 && w > 0 ? static_cast<float>(w) / static_cast<float>(window_w) : 1.0F;
    const float px_per_mm = stage_.px_per_mm(options_.px_per_mm) * density;
    if (density == density_ && px_per_mm == px_per_mm_) {
        return {};
    }
    density_ = density;
    px_per_mm_ = px_per_mm;
    std::string wrong = stage_.set_scale(px_per_mm);
    if (wrong.empty()) {
        painter_.take_letters();
    }
    return wrong;
}

void Window::wait() const {
    if (!stage_.at_rest()) {
        glfwPollEvents();
    } else if (const double left = stage_.refusal_left(); left > 0) {
        glfwWaitEventsTimeout(left);
    } else {
        glfwWaitEvents();
    }
}

void Window::run() {
    for (;;) {
        const bool shown_refused = stage_.at_rest() && stage_.refusal_left() > 0;
        wait();
        if (shown_refused || woken.exchange(false)) {
            stage_.want_frame();
        }
        if (glfwWindowShouldClose(window_) == GLFW_TRUE) {
            if (!options_.may_close || options_.may_close()) {
                return;
            }
            glfwSetWindowShouldClose(window_, GLFW_FALSE);
            stage_.want_frames();
        }
        if (!stage_.at_rest()) {
            load_letters();  // the crew may have measured the screen
            draw_frame();
        }
    }
}

void Window::draw_frame() {
    const double now = glfwGetTime();
    stage_.draw(frame_at_ == 0 ? 0 : now - frame_at_);
    frame_at_ = now;
    Painter::draw(stage_.ground());
    glfwSwapBuffers(window_);
    if (options_.presented) {
        options_.presented();
    }
    if (!options_.targets.empty() && !targets_.update(stage_.targets(), density_)) {
        std::fprintf(stderr, "hemline: the targets cannot be written: %s\n",
                     shown_text(options_.targets.string()).c_str());
    }
    if (!options_.picture.empty() && stage_.at_rest() &&
        !Painter::save_picture(options_.picture, stage_.ground())) {
        std::fprintf(stderr, "hemline: the picture cannot be written: %s\n",
                     shown_text(options_.picture.string()).c_str());
    }
}

}  // namespace

std::optional<Problem> show_window(const WindowOptions& options, const Scene& scene) {
    Window window(options, scene);
    std::optional<Problem> problem = window.open();
    if (!problem) {
        window.run();
    }
    return problem;
}

void wake_window() {
    woken = true;
    glfwPostEmptyEvent();
}

void copy_text(const std::string& text) { glfwSetClipboardString(nullptr, text.c_str()); }

}  // namespace hemline
