// The layouts of a plane that are worth choosing, side by side.
#include <algorithm>
#include <memory>

#include "field/screens/page/frame.h"
#include "field/screens/panels/draw_plane.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/plane_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float cell_mm = 62, button_mm = 12, cell_gap_mm = 4;

Text best_words(BestFor best) {
    switch (best) {
        case BestFor::least_shift:
            return say("as balanced, moved least");
        case BestFor::looks:
            return say("best looks");
        case BestFor::metal:
            return say("least metal");
        case BestFor::cut_pans:
            break;
    }
    return say("fewest cut pans");
}

Text title_of(const PanelChoice& choice) {
    std::vector<Text> all;
    for (const BestFor best : choice.best_for) {
        all.push_back(best_words(best));
    }
    return joined(all, ", ");
}

std::vector<Text> lines_of(const PanelChoice& choice) {
    std::vector<Text> lines = {
        say("{1} pans, {2} cut; {3} of panel.", choice.pans, choice.cut_pans, choice.metal)};
    if (choice.left_end && choice.right_end) {
        lines.push_back(say("Ends {1} and {2}.", *choice.left_end, *choice.right_end));
    }
    if (!choice.staying.empty()) {
        lines.push_back(say_count("{1} thing is too near to a seam.",
                                  "{1} things are too near to a seam.",
                                  static_cast<std::int64_t>(choice.staying.size())));
    }
    return lines;
}

Wish chosen_wish(const State& state, const PanelChoice& choice) {
    const std::string said = print_seams({choice.seams.shift, choice.seams.one_more});
    return Keep{RuleSet{"seams." + state.where.edge, said}, at(state.where, Screen::panels)};
}

void draw_cell(Ui& ui, const State& state, const PlaneAsked& asked, const PanelLayout& now,
               const PanelChoice& choice, const std::string& name, Box cell, Wished& wish) {
    take_top(cell, ui.paragraph(cell.x, cell.y, cell.w, title_of(choice), Size::bold));
    for (const Text& line : lines_of(choice)) {
        take_top(cell, ui.paragraph(cell.x, cell.y, cell.w, line, Size::small));
    }
    const bool chosen = now.shift == choice.seams.shift && now.one_more == choice.seams.one_more;
    const Box button = take_bottom(cell, ui.mm(button_mm));
    take_bottom(cell, ui.mm(2));
    if (ui.button(name, chosen ? say("Laid so now") : say("Take this one"), button,
                  chosen ? Look::chosen : Look::plain) &&
        !chosen) {
        wish = chosen_wish(state, choice);
    }
    PlaneAsked tried = asked;
    tried.job.chosen = choice.seams;
    if (const auto layout = lay_panels(tried.plane, tried.job, tried.through); layout.ok()) {
        std::vector<Length> seams;
        for (const LaidSeam& seam : layout->seams) {
            seams.push_back(seam.at);
        }
        draw_strips(ui, layout->plane, seams, cell);
    }
}

/// Worked out once for as long as nothing is said anew.
const PanelChoices* choices_on(const State& state, const PlaneAsked& asked, SeamsDraft& draft) {
    const std::string of = state.where.edge + " " + std::to_string(state.events.size());
    if (draft.of != of) {
        const Result<PanelChoices> found = panel_choices(asked.plane, asked.job, asked.through);
        draft.of = of;
        draft.found = found ? std::make_shared<const PanelChoices>(*found) : nullptr;
    }
    return draft.found.get();
}

}  // namespace

Wished draw_seams(Ui& ui, const State& state, Drafts& drafts) {
    const PlannedPanels* const panels = panels_at(state);
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const auto asked = plane_asked(state.job, state.bodies, state.where.edge);
    if (panels == nullptr || panels->layout == nullptr || work == nullptr || !asked) {
        return Go{{Screen::roof, {}}};
    }
    const PanelChoices* const found = choices_on(state, *asked, drafts.seams);
    const bool is_chosen = asked->job.chosen.has_value();
    const Frame frame = open_frame(
        ui, state, say("{1} · where its seams lie", title_of(work->edge)),
        {{"by itself", say("As laid out by itself"), is_chosen ? Look::plain : Look::off},
         {"leave", say("Back"), Look::primary}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("seams to choose", frame.body);
    const float top = list.y;
    if (found != nullptr && !found->choices.empty()) {
        take_top(list, ui.paragraph(list.x, list.y, list.w,
                                    say("The best of {1} layouts: every place of the seams on a "
                                        "sixteenth was tried.",
                                        found->tried)) +
                           ui.mm(2));
        const int wide =
            ui.portrait() ? 2 : std::min<int>(4, static_cast<int>(found->choices.size()));
        const float room = frame.body.h - (list.y - top), height = std::max(room, ui.mm(cell_mm));
        const std::vector<Box> places =
            columns({list.x, list.y, list.w, height}, wide, ui.mm(cell_gap_mm));
        for (std::size_t i = 0; i < found->choices.size(); ++i) {
            const auto across = static_cast<std::size_t>(wide);
            Box cell = places[i % across];
            cell.y += static_cast<float>(i / across) * (height + ui.mm(cell_gap_mm));
            draw_cell(ui, state, *asked, *panels->layout, found->choices[i],
                      "take " + std::to_string(i + 1), cell, wish);
            list.y = cell.bottom();
        }
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "by itself") {
        wish = Keep{RuleSet{"seams." + state.where.edge, ""}, at(state.where, Screen::panels)};
    } else if (frame.tapped == "leave") {
        wish = Go{at(state.where, Screen::panels)};
    }
    return wish;
}

}  // namespace hemline
