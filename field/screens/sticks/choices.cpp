// The plans worth choosing from, side by side: what each costs in sticks, and how it looks from the
// ground.
//
//   4 sticks            3 sticks             3 sticks
//   every edge even     A, B run out         1 lap more, on A
//   A |--===--|         A |===-|             A |-===-|
//   [ chosen ]          [ choose ]           [ choose ]
#include <imgui.h>

#include <algorithm>
#include <tuple>

#include "engine/roof/edge_shape.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr float cell_mm = 57, strip_mm = 6.5F, button_mm = 12;

using Choices = std::vector<const PlanChoice*>;

constexpr std::size_t shown_most = 9;

/// If there are many, the best looking plan for each number of sticks, and of those some evenly
/// between the first and the last.
Choices few_of(Choices choices) {
    if (choices.size() <= shown_most) {
        return choices;
    }
    const auto order = [](const PlanChoice* c) {
        return std::make_tuple(-c->sticks, c->unbalanced, c->extra_laps);
    };
    const auto same_sticks = [](const PlanChoice* a, const PlanChoice* b) {
        return a->sticks == b->sticks;
    };
    std::sort(choices.begin(), choices.end(),
              [&](const PlanChoice* a, const PlanChoice* b) { return order(a) < order(b); });
    choices.erase(std::unique(choices.begin(), choices.end(), same_sticks), choices.end());
    if (choices.size() <= shown_most) {
        return choices;
    }
    Choices few;
    for (std::size_t i = 0; i < shown_most; ++i) {
        few.push_back(choices[i * (choices.size() - 1) / (shown_most - 1)]);
    }
    return few;
}

/// The plans found; until then the present plan.
Choices choices_of(const State& state, const std::string& pool) {
    Choices choices;
    for (const PlanChoice& choice : state.choices) {
        if (choice.pool == pool) {
            choices.push_back(&choice);
        }
    }
    const PlanChoice* const planned = planned_choice(state, pool);
    if (choices.empty() && planned != nullptr) {
        choices.push_back(planned);
    }
    return few_of(std::move(choices));
}

const ChosenDivision* run_in(const PlanChoice& choice, const ChosenDivision& like) {
    const auto found = std::find_if(choice.runs.begin(), choice.runs.end(), [&](const auto& run) {
        return run.edge == like.edge && run.role == like.role;
    });
    return found == choice.runs.end() ? nullptr : &*found;
}

/// The runs that differ between choices; every run where there is only one choice.
std::vector<const ChosenDivision*> runs_that_differ(const Choices& choices) {
    std::vector<const ChosenDivision*> differ;
    for (const ChosenDivision& run : choices.front()->runs) {
        const bool same = std::all_of(choices.begin(), choices.end(), [&](const PlanChoice* c) {
            const ChosenDivision* const own = run_in(*c, run);
            return own != nullptr && own->pieces == run.pieces;
        });
        if (!same || choices.size() == 1) {
            differ.push_back(&run);
        }
    }
    return differ;
}

/// Whether its cuts are those planned now.
bool is_planned(const State& state, const PlanChoice& choice) {
    return std::all_of(choice.runs.begin(), choice.runs.end(), [&](const ChosenDivision& run) {
        const Run* const planned = find_run(state.plan, run.edge, run.role);
        return planned != nullptr &&
               std::equal(planned->pieces.begin(), planned->pieces.end(), run.pieces.begin(),
                          run.pieces.end(),
                          [](const PlannedPiece& a, const Division& b) { return a.cut == b.cut; });
    });
}

Text looks_words(const PlanChoice& choice) {
    const Text ends = choice.unbalanced == 0
                          ? say("Ends equal wherever they can be")
                          : say_count("{1} edge runs out to one side",
                                      "{1} edges run out to one side", choice.unbalanced);
    return choice.extra_laps == 0
               ? say("{1}, no lap more.", ends)
               : say_count("{2}, {1} lap more to see.", "{2}, {1} laps more to see.",
                           choice.extra_laps, ends);
}

Text proof_words(const State& state, const PlanChoice& choice) {
    if (state.choices.empty()) {
        return say("Planned now.");  // its proof may hold for its pieces only
    }
    if (choice.proved) {
        return say("Fewest for these looks: proved.");
    }
    return choice.is_too_large
               ? say("Not proved, for the job is larger than the proof has room for: at least {1}.",
                     choice.lower_bound)
               : say("Not proved: at least {1}.", choice.lower_bound);
}

/// The visible pieces of a run to scale, as seen from outside.
void draw_strip(Ui& ui, const State& state, const ChosenDivision& run, Length longest, Box strip) {
    const Box name = take_left(strip, ui.mm(9));
    ui.text(name.x, strip.mid_y() - ui.line_height(Size::small) / 2, Text(run.edge), Size::small);
    const EdgeWork* const work = edge_of(state, run.edge);
    const bool from_right = work != nullptr && first_fitted(work->edge) == Side::right;
    Length edge;
    for (const Division& piece : run.pieces) {
        edge += piece.covers;
    }
    const auto share = [&](Length part) {
        return strip.w * static_cast<float>(static_cast<double>(part.nm()) /
                                            static_cast<double>(longest.nm()));
    };
    if (!ui.shows(strip)) {
        return;
    }
    Length begins;
    bool is_even = true;
    for (const Division& piece : run.pieces) {
        const float w = share(piece.covers);
        const float x =
            strip.x + (from_right ? share(edge - begins - piece.covers) : share(begins));
        ui.ink()->AddRectFilled({x, strip.y}, {x + w, strip.bottom()},
                                is_even ? ui.colours().metal : ui.colours().metal_low);
        ui.ink()->AddRect({x, strip.y}, {x + w, strip.bottom()}, ui.colours().ink, 0, 0,
                          ui.mm(0.4F));
        begins += piece.covers;
        is_even = !is_even;
    }
}

Length longest_of(const std::vector<const ChosenDivision*>& runs) {
    Length longest = nanometres(1);
    for (const ChosenDivision* run : runs) {
        Length edge;
        for (const Division& piece : run->pieces) {
            edge += piece.covers;
        }
        longest = std::max(longest, edge);
    }
    return longest;
}

void draw_strips(Ui& ui, const State& state, const PlanChoice& choice,
                 const std::vector<const ChosenDivision*>& differ, Box box) {
    const Length longest = longest_of(differ);
    const auto room = static_cast<std::size_t>(std::max(1.0F, box.h / ui.mm(strip_mm)));
    const std::size_t shown = differ.size() <= room ? differ.size() : room - 1;
    for (std::size_t i = 0; i < shown; ++i) {
        if (const ChosenDivision* const run = run_in(choice, *differ[i])) {
            draw_strip(ui, state, *run, longest,
                       inset(take_top(box, ui.mm(strip_mm)), 0, ui.mm(1)));
        }
    }
    if (shown < differ.size()) {
        ui.text(box.x, box.y, say("and {1} edges more", differ.size() - shown), Size::small,
                Align::left, ui.colours().soft);
    }
}

PlanChosen chosen_of(const State& state, const PlanChoice& choice) {
    PlanChosen chosen;
    chosen.prefer = state.job.prefer;
    chosen.trim = choice.trim;
    chosen.extra_laps = choice.extra_laps;
    chosen.unbalanced = choice.unbalanced;
    chosen.sticks = choice.sticks;
    for (const ChosenDivision& run : choice.runs) {
        RunChosen own{run.edge, run.role, {}};
        for (const Division& piece : run.pieces) {
            own.cuts.push_back(piece.cut);
        }
        chosen.runs.push_back(std::move(own));
    }
    return chosen;
}

void draw_cell(Ui& ui, const State& state, const PoolView& pool, const PlanChoice& choice,
               const std::vector<const ChosenDivision*>& differ, const std::string& name, Box cell,
               Wished& wish) {
    take_top(cell, ui.paragraph(cell.x, cell.y, cell.w,
                                say_count("{1} stick", "{1} sticks", choice.sticks), Size::title));
    take_top(cell, ui.paragraph(cell.x, cell.y, cell.w, looks_words(choice), Size::small));
    take_top(cell, ui.paragraph(cell.x, cell.y, cell.w, proof_words(state, choice), Size::small,
                                ui.colours().soft) +
                       ui.mm(1));
    const bool planned = is_planned(state, choice);
    const Box button = take_bottom(cell, ui.mm(button_mm));
    take_bottom(cell, ui.mm(2));
    if (ui.button(name, planned ? say("Planned now") : say("Take this one"), button,
                  planned ? Look::chosen : Look::plain) &&
        !planned) {
        wish = Keep{chosen_of(state, choice), at_pool(Screen::sticks, pool)};
    }
    draw_strips(ui, state, choice, differ, cell);
}

}  // namespace

Wished draw_choices(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const std::optional<PoolView> pool = pool_at(state);
    const Choices choices = pool ? choices_of(state, pool->pool) : Choices{};
    if (choices.empty()) {
        return Go{pool ? at_pool(Screen::sticks, *pool) : Where{Screen::roof, {}}};
    }
    const Frame frame =
        open_frame(ui, state, say("Plans to choose from · {1}", trim_name(state, pool->trim)),
                   {{"leave", say("Roof")}, {"done", say("The sticks"), Look::primary}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("plans", frame.body);
    const Text words = state.looking ? say("Still looking; what is found so far:")
                       : choices.size() == 1
                           ? say("No other plan saves a stick.")
                           : say("Fewer sticks cost looks. Only the edges that differ are drawn.");
    const float top = list.y;
    take_top(list, ui.paragraph(list.x, list.y, list.w, words) + ui.mm(2));
    const auto differ = runs_that_differ(choices);
    const int wide = ui.portrait() ? 2 : 3;
    const auto count = static_cast<int>(choices.size());
    const int lines = (count + wide - 1) / wide;
    const float gap = ui.mm(4);
    const float room = lines == 1 ? frame.body.h - (list.y - top) : 0;
    const float height = std::max(room, ui.mm(cell_mm));
    const std::vector<Box> places = columns({list.x, list.y, list.w, height}, wide, gap);
    for (int i = 0; i < count; ++i) {
        Box cell = places[static_cast<std::size_t>(i % wide)];
        cell.y += static_cast<float>(i / wide) * (height + gap);
        draw_cell(ui, state, *pool, *choices[static_cast<std::size_t>(i)], differ,
                  "take " + std::to_string(i + 1), cell, wish);
    }
    ui.end_scroll(list.y - top + static_cast<float>(lines) * (height + gap) - gap);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "done") {
        wish = Go{at_pool(Screen::sticks, *pool)};
    }
    return wish;
}

}  // namespace hemline
