// The sticks of a trim: what to cut from each, to scale, and whether fewer would do.
#include <imgui.h>

#include <algorithm>
#include <map>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/screens/sticks/draw_stick_bar.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float row_mm = 19, times_mm = 16;

/// "12 ft or 10 ft", or that none can be had.
Text stock_words(const State& state) {
    Text lengths = state.job.practice.stock;
    for (const Length length : state.job.stock_shorter) {
        lengths = say("{1} or {2}", lengths, length);
    }
    return say("New sticks: {1}. Drops are kept from {2}.", lengths,
               state.job.practice.offcut_kept);
}

/// The pieces for which the plan has no stick; empty when there are none.
Text missing_words(const State& state, const PoolView& pool) {
    for (const PlanProblem& problem : state.plan.problems) {
        const bool of_pool = problem.field == "stock" && problem.edge == pool.edge;
        if (of_pool) {
            return said(problem);
        }
    }
    return {};
}

float draw_words(Ui& ui, const State& state, const PoolView& pool, Box box) {
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, proof_words(state, pool.pool), Size::bold);
    if (const PlanChoice* better = better_choice(state, pool.pool)) {
        y += ui.paragraph(box.x, y, box.w,
                          say("A plan of {1} was found: look at the other plans.", better->sticks),
                          Size::bold);
    } else if (const PlanChoice* planned = planned_choice(state, pool.pool);
               planned != nullptr && planned->proved && planned->sticks > 0 &&
               is_undecided(state, pool.pool)) {
        y += ui.paragraph(box.x, y, box.w,
                          say("No plan with as few laps and as well balanced takes fewer."),
                          Size::small, ui.colours().soft);
    } else if (state.looking) {
        y += ui.paragraph(box.x, y, box.w, say("Still looking for fewer."), Size::small,
                          ui.colours().soft);
    }
    const Text missing = missing_words(state, pool);
    if (!missing.empty()) {
        y += ui.paragraph(box.x, y, box.w, missing, Size::small);
    }
    y += ui.paragraph(box.x, y, box.w, stock_words(state), Size::small, ui.colours().soft);
    return y - box.y + ui.mm(2);
}

void draw_row(Ui& ui, const State& state, const PoolView& pool, const SticksAlike& sticks,
              Length longest, Box row, Wished& wish) {
    const PlannedStick& stick = *sticks.sticks.front();
    if (ui.area("stick " + std::to_string(stick.number), row, say("Stick {1}", stick.number))) {
        Where where = at_pool(Screen::stick, pool);
        where.stick = stick.number;
        wish = Go{where};
    }
    Box bar = inset(row, 0, ui.mm(1.5F));
    Box head = take_left(bar, ui.mm(times_mm));
    ui.text(head.x, head.y, glued(sticks.sticks.size(), " ×"), Size::bold);
    ui.text(head.x, head.y + ui.line_height(Size::bold), stick.offcut ? say("on hand") : say("new"),
            Size::small, Align::left, ui.colours().soft);
    if (ui.shows(row)) {
        draw_stick_bar(ui, state, sticks, longest, bar);
    }
}

/// What is on hand and no piece needs, a line for each.
std::vector<Text> unused_words(const State& state, const PoolView& pool) {
    std::vector<Text> lines;
    std::map<EventId, std::int64_t> uses;
    for (const PlannedStick& stick : state.plan.sticks) {
        if (stick.offcut) {
            ++uses[*stick.offcut];
        }
    }
    for (const Offcut& offcut : state.job.offcuts) {
        const auto own = uses.find(offcut.left_by);
        const std::int64_t used = own == uses.end() ? 0 : own->second;
        const bool of_pool = is_of_pool(state, offcut.edge, offcut.role, pool.pool);
        if (of_pool && used < offcut.count && offcut.length >= state.job.practice.offcut_kept) {
            lines.push_back(say("{1} × {2} on hand, kept", offcut.count - used, offcut.length));
        }
    }
    return lines;
}

void draw_list(Ui& ui, const State& state, const PoolView& pool, Box& list, Wished& wish) {
    const std::vector<SticksAlike> all = sticks_of(state, pool.pool);
    const std::vector<Text> unused = unused_words(state, pool);
    Length longest = nanometres(1);
    for (const SticksAlike& sticks : all) {
        longest = std::max(longest, sticks.sticks.front()->length);
    }
    for (const SticksAlike& sticks : all) {
        draw_row(ui, state, pool, sticks, longest, take_top(list, ui.mm(row_mm)), wish);
    }
    for (const Text& words : unused) {
        take_top(list, ui.paragraph(list.x, list.y, list.w, words));
    }
}

}  // namespace

Wished draw_sticks(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const std::optional<PoolView> pool = pool_at(state);
    if (!pool) {
        return Go{{Screen::roof, {}}};
    }
    const std::optional<NextWork> next = next_work(state);
    const bool only_one = pools_on(state).size() < 2;
    const Frame frame =
        open_frame(ui, state, say("Sticks · {1}", trim_name(state, pool->trim)),
                   {{"leave", say("Roof")},
                    {"other trim", say("Other trim"), only_one ? Look::off : Look::plain},
                    {"next", next ? next->label : say("Next"), next ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("sticks", frame.body);
    const float top = list.y;
    const std::vector<Box> places = columns(take_top(list, ui.mm(12)), 3, ui.mm(3));
    take_top(list, ui.mm(2));
    const bool can_choose = planned_choice(state, pool->pool) != nullptr;
    if (ui.button("choices", say("Other plans"), places[0], can_choose ? Look::plain : Look::off)) {
        wish = Go{at_pool(Screen::choices, *pool)};
    }
    if (ui.button("on hand", say("On hand"), places[1])) {
        wish = Go{at_pool(Screen::on_hand, *pool)};
    }
    if (ui.button("stock", say("New sticks"), places[2])) {
        wish = Go{at_pool(Screen::stock, *pool)};
    }
    take_top(list, draw_words(ui, state, *pool, list));
    draw_list(ui, state, *pool, list, wish);
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "other trim") {
        wish = Go{at_pool(Screen::sticks, next_pool(state, *pool))};
    } else if (frame.tapped == "next" && next) {
        wish = Go{next->where};
    }
    return wish;
}

}  // namespace hemline
