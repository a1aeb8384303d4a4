// What all shells share, without a window.
#include "field/shell/stage.h"

#include <doctest/doctest.h>
#include <imgui.h>

using namespace hemline;

namespace {

/// A list that is longer than it shows, of which that is known only once it is drawn: its bar takes
/// room from the button in it.
void draw_long_list(Ui& ui) {
    const Box list = ui.begin_scroll("list", {0, 0, 600, 300});
    ui.button("row", Text("row"), {list.x, list.y, list.w, 100});
    ui.end_scroll(1000);
}

}  // namespace

TEST_CASE("What a window shows first lies as it stays, or a touch would miss it") {
    struct Context {
        ImGuiContext* is = ImGui::CreateContext();
        Context() { ImGui::SetCurrentContext(is); }
        ~Context() { ImGui::DestroyContext(is); }
    } const context;
    ImGui::GetIO().IniFilename = nullptr;
    ImGui::GetIO().DisplaySize = ImVec2(1280, 800);
    Stage stage({draw_long_list, []() -> const Palette& { return palette_of(Light::day); }},
                font_folder_usual);
    CHECK(stage.set_scale(5.9F) == "");
    stage.draw(0);
    const float first = stage.targets().front().box.w;
    CHECK(first < 600);
    stage.draw(0.016);
    CHECK(stage.targets().front().box.w == first);
}
