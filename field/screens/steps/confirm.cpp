#include "field/screens/steps/confirm.h"

#include <imgui.h>

#include <algorithm>
#include <set>

#include "engine/roof/edge_shape.h"
#include "engine/work/confirm.h"
#include "engine/work/edge_values.h"
#include "engine/work/order.h"
#include "field/screens/page/frame.h"
#include "field/screens/steps/cautions.h"
#include "field/screens/steps/step_answer.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float value_mm = 22, row_pad_mm = 1.5F;

/// "11", "6 in", or a check mark where no value is asked.
Text value_of(const Step& step) {
    const std::optional<Answer> answer = as_asked(step);
    const bool valued =
        answer && (answer->kind == AnswerKind::length || answer->kind == AnswerKind::count);
    return valued ? answer_words(*answer) : Text("✓");
}

/// Returns the height used.
float draw_row(Ui& ui, const Step& step, StepDraft& draft, Box row) {
    const float pad = ui.mm(row_pad_mm);
    const float words_w = row.w - ui.mm(value_mm) - 3 * pad;
    const float words_h = ui.paragraph_height(words_w, step.action, Size::body);
    row.h = std::max(ui.mm(target_min), words_h + 2 * pad);
    const std::string name = "open " + key_of(step);
    if (ui.area(name, row, step.action)) {
        draft.singly = key_of(step);
    }
    ui.to_be_seen(row);
    ui.ink()->AddRect({row.x, row.y}, {row.right(), row.bottom()}, ui.colours().ink, ui.mm(1), 0,
                      ui.mm(ui.pressed(name) ? 0.8F : 0.3F));
    ui.paragraph(row.x + pad, row.mid_y() - words_h / 2, words_w, step.action);
    ui.text(row.right() - pad, row.mid_y() - ui.line_height(Size::bold) / 2, value_of(step),
            Size::bold, Align::right);
    return row.h + ui.mm(gap_mm);
}

/// What is dangerous in any of them, each once; in a single band where the page is low.
void draw_cautions(Ui& ui, std::vector<Text> cautions, const std::vector<Step>& steps,
                   const std::vector<std::size_t>& together, Box& body) {
    std::set<std::string> said;
    for (const std::size_t i : together) {
        const std::string caution = steps[i].rule->caution;
        if (!caution.empty() && said.insert(caution).second) {
            cautions.push_back(say(caution));
        }
    }
    if (is_low(ui) && cautions.size() > 1) {
        cautions = {joined(cautions, " ")};
    }
    for (const Text& caution : cautions) {
        draw_caution(ui, caution, body);
    }
}

/// Returns the height used.
float draw_hint(Ui& ui, Box box) {
    return ui.paragraph(box.x, box.y, box.w,
                        say("Not as asked? Touch that line and say what it is."), Size::small) +
           ui.mm(2);
}

/// A piece by the part in which it ends up, else the part that comes first.
Text title_with(const EdgeWork& work, const Step& first, const Step& last) {
    const Text part = say((first.piece > 0 ? last : first).rule->part);
    return first.piece > 0 && first.rule->each != Each::wrap_piece &&
                   first.rule->each != Each::cleat_piece
               ? say("{1} · {2} · piece {3}", title_of(work.edge), part, first.piece)
               : say("{1} · {2}", title_of(work.edge), part);
}

}  // namespace

std::vector<std::size_t> confirmed_now(const State& state, const std::vector<Step>& steps,
                                       std::size_t next, const StepDraft& draft) {
    if (state.way == Way::learn || !draft.singly.empty()) {
        return {};
    }
    std::vector<std::size_t> together = confirmed_with(steps, next);
    return together.size() < 2 ? std::vector<std::size_t>() : together;
}

Wished draw_confirm(Ui& ui, const State& state, const EdgeWork& work,
                    const std::vector<Step>& steps, const std::vector<std::size_t>& together,
                    StepDraft& draft) {
    const Step& first = steps[together.front()];
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (has_run(work.edge.kind)) {
        actions.push_back({"run", say("The run")});
    }
    actions.push_back({"not safe", say("Not safe")});
    actions.push_back({"all so", say("All done, as asked"), Look::primary});
    const std::string name = "confirm " + work.edge.id + " " + key_of(first);
    const std::size_t below = ui.left_below(name);
    see_first(actions.back(), below,
              say_count("{1} more line below", "{1} more lines below", std::int64_t(below)));
    const Frame frame =
        open_frame(ui, state, title_with(work, first, steps[together.back()]), actions);
    Box list = ui.begin_scroll(name, frame.body);
    const float top = list.y;
    take_top(list, draw_band(ui, fitting_waits_for(work, state.job, state.catalogue), list));
    draw_cautions(ui, before_roof_step(state, work, steps, first), steps, together, list);
    take_top(list, is_low(ui) ? 0 : draw_hint(ui, list));
    for (const std::size_t i : together) {
        take_top(list, draw_row(ui, steps[i], draft, list));
    }
    take_top(list, is_low(ui) ? draw_hint(ui, list) : 0);
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (frame.tapped == below_target) {
        ui.go_on_below(name);
    }
    if (frame.tapped == "leave") {
        return Go{{Screen::roof, {}}};
    }
    if (frame.tapped == "run") {
        return Go{{Screen::run, work.edge.id}};
    }
    if (frame.tapped == "not safe") {
        return Go{{Screen::gate, work.edge.id}};
    }
    if (frame.tapped == "all so") {
        KeepAll all;
        for (const std::size_t i : together) {
            all.facts.emplace_back(answer_as_asked(work.edge.id, steps[i]));
        }
        return all;
    }
    return frame.wish;
}

}  // namespace hemline
