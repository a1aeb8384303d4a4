#include "tests/field/harness.h"

#include <doctest/doctest.h>
#include <imgui.h>

#include <algorithm>

namespace hemline {

namespace {

constexpr float slop = 6;        // mm
constexpr float gap_min = 3;     // mm
constexpr int layouts_more = 2;  // as Stage draws on until lists are as long as they were taken for
constexpr double pause = 0.25;   // s between two taps of a hand

ImGuiContext* open() {
    ImGuiContext* context = ImGui::CreateContext();
    ImGui::SetCurrentContext(context);
    ImGui::GetIO().IniFilename = nullptr;
    return context;
}

/// Empty width or height between two boxes; negative where they overlap in both.
float gap_of(Box a, Box b) {
    return std::max({b.x - a.right(), a.x - b.right(), b.y - a.bottom(), a.y - b.bottom()});
}

}  // namespace

void Harness::Close::operator()(ImGuiContext* context) const { ImGui::DestroyContext(context); }

Harness::Harness(Draw draw, float w, float h, float px_per_mm)
    : context_(open()),
      draw_(std::move(draw)),
      px_per_mm_(px_per_mm),
      queue_(slop * px_per_mm),
      ui_(palette_of(Light::day), fonts_, px_per_mm) {
    const std::string wrong = load_fonts(font_folder_usual, px_per_mm, fonts_);
    REQUIRE_MESSAGE(wrong.empty(), wrong);
    resize(w, h);
    frames();
}

Harness::~Harness() = default;

void Harness::resize(float w, float h) {
    ImGui::SetCurrentContext(context_.get());
    ImGui::GetIO().DisplaySize = ImVec2(w, h);
}

void Harness::frames(int n, double step) {
    ImGui::SetCurrentContext(context_.get());
    const int most = n + layouts_more;
    for (int i = 0; i < n || (!ui_.is_laid_out() && i < most); ++i) {
        queue_.next_frame(step);
        ImGui::GetIO().DeltaTime = static_cast<float>(step);
        ImGui::NewFrame();
        ui_.begin_page(&queue_);
        draw_(ui_);
        ui_.end_page();
        ImGui::Render();
        ++frames_drawn_;
    }
}

void Harness::touch(Touch touch) {
    push(touch);
    while (queue_.pending()) {
        frames();
    }
}

void Harness::tap(std::string_view name) {
    read_warning();
    const Box box = target(name);
    push({TouchKind::down, 0, box.mid_x(), box.mid_y()});
    touch({TouchKind::up, 0, box.mid_x(), box.mid_y()});
    rest();
}

void Harness::rest() {
    frames(1, pause);
    read_warning();
}

/// The main action waits for that.
void Harness::read_warning() {
    if (const double left = ui_.wait_left(); left > 0) {
        frames(1, left + pause);
    }
}

void Harness::tap_all(const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        tap(name);
    }
}

void Harness::press(std::string_view name) {
    const Box box = target(name);
    press_at(box.mid_x(), box.mid_y());
}

void Harness::press_at(float x, float y) {
    x_ = x;
    y_ = y;
    touch({TouchKind::down, 0, x_, y_});
}

void Harness::lift() { touch({TouchKind::up, 0, x_, y_}); }

void Harness::drag(std::string_view name, float dx_mm, float dy_mm) {
    const Box box = target(name);
    drag_from(box.mid_x(), box.mid_y(), dx_mm, dy_mm);
}

void Harness::drag_from(float x, float y, float dx_mm, float dy_mm) {
    press_at(x, y);
    for (int i = 0; i < 10; ++i) {
        x_ += dx_mm * px_per_mm_ / 10;
        y_ += dy_mm * px_per_mm_ / 10;
        push({TouchKind::move, 0, x_, y_});
        frames();
    }
    frames(1, pause);  // the finger rests, so that nothing is flung
    lift();
    frames(1, pause);
}

void Harness::type(std::string_view text) {
    ui_.keyboard().type(text);
    settle_keys();
}

void Harness::paste(std::string_view text) {
    ui_.keyboard().paste(text);
    settle_keys();
}

void Harness::settle_keys() {
    do {
        frames();
    } while (ui_.keyboard().is_pending());
    rest();
}

void Harness::press(Key key) { type(std::string(1, static_cast<char>(key))); }

bool Harness::has_target(std::string_view name) const {
    const auto& all = ui_.targets();
    return std::any_of(all.begin(), all.end(),
                       [name](const Target& target) { return target.name == name; });
}

Box Harness::target(std::string_view name) const {
    for (const Target& target : ui_.targets()) {
        if (target.name == name) {
            return target.box;
        }
    }
    std::string there;
    for (const std::string& other : names()) {
        there += "\n  " + other;
    }
    FAIL("no target is named " << std::string(name) << ", but:" << there);
    return {};
}

std::vector<std::string> Harness::names() const {
    std::vector<std::string> names;
    for (const Target& target : ui_.targets()) {
        names.push_back(target.name);
    }
    return names;
}

std::string Harness::crowded() const {
    std::string faults;
    const Box page = ui_.page();
    const auto& all = ui_.targets();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Box box = all[i].box;
        if (box.x < 0 || box.y < 0 || box.right() > page.w + 0.5F || box.bottom() > page.h + 0.5F) {
            faults += all[i].name + " is not wholly on the page\n";
        }
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const float gap = gap_of(box, all[j].box) / px_per_mm_;
            if (gap < gap_min - 0.1F) {
                faults += all[i].name + " and " + all[j].name + " are " + std::to_string(gap) +
                          " mm apart\n";
            }
        }
    }
    return faults;
}

}  // namespace hemline
