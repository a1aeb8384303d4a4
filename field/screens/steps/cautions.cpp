#include "field/screens/steps/cautions.h"

#include <imgui.h>

#include <algorithm>

#include "engine/work/procedure_words.h"
#include "field/screens/page/frame.h"
#include "field/state/gate_view.h"

namespace hemline {

void draw_caution(Ui& ui, const Text& caution, Box& body) {
    if (caution.empty()) {
        return;
    }
    const float height = ui.paragraph_height(body.w - ui.mm(16), caution, Size::bold) + ui.mm(4);
    const Box band = take_top(body, height);
    ui.ink()->AddRectFilled({band.x, band.y}, {band.right(), band.bottom()}, ui.colours().warn,
                            ui.mm(1));
    const float r = ui.mm(3.2F);
    const ImVec2 centre(band.x + ui.mm(6), band.mid_y() + r * 0.2F);
    ui.ink()->AddTriangleFilled({centre.x, centre.y - r * 1.2F},
                                {centre.x - r * 1.2F, centre.y + r},
                                {centre.x + r * 1.2F, centre.y + r}, IM_COL32(0, 0, 0, 255));
    ui.text(centre.x, centre.y - ui.line_height(Size::bold) / 2 + ui.mm(0.4F), Text("!"),
            Size::bold, Align::centre, ui.colours().warn);
    ui.paragraph(band.x + ui.mm(13), band.y + ui.mm(2), band.w - ui.mm(16), caution, Size::bold,
                 IM_COL32(0, 0, 0, 255));
    ui.mark_warning();
    take_top(body, ui.mm(3));
}

std::vector<Text> before_roof_step(const State& state, const EdgeWork& work,
                                   const std::vector<Step>& steps, const Step& step) {
    std::vector<Text> words;
    if (is_on_the_ground(step.rule->asks) || !step.refused_by.empty()) {
        return words;
    }
    if (const StepRule* const prompt = prompt_for(state, work)) {
        words.push_back(joined({say(prompt->action), say(prompt->caution)}, " "));
    }
    const auto is_of_trim = [](const Step& one) {
        return one.piece > 0 && role_of(one.rule->each) == TrimRole::main;
    };
    const bool is_up = std::any_of(steps.begin(), steps.end(), [&](const Step& one) {
        return is_of_trim(one) && one.piece == step.piece && one.done &&
               !is_on_the_ground(one.rule->asks);
    });
    const auto sheet =
        is_of_trim(step) && !is_up ? sheet_on(state, work, step.piece) : std::nullopt;
    if (sheet && is_much_for_one(*sheet)) {
        words.push_back(joined({wind_words(*sheet), wind_note()}, " "));
    }
    return words;
}

}  // namespace hemline
