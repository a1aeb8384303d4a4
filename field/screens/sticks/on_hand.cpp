// Sticks and offcuts that lie there: a length, how many, and whether new ones can be had today.
#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 56;  // what stands above the keys in portrait
constexpr std::int64_t count_most = 200;

/// What lies there for the pool, as each event left or counted it.
std::vector<const Offcut*> lying_there(const State& state, const PoolView& pool) {
    std::vector<const Offcut*> there;
    for (const Offcut& offcut : state.job.offcuts) {
        if (is_of_pool(state, offcut.edge, offcut.role, pool.pool)) {
            there.push_back(&offcut);
        }
    }
    return there;
}

Supply supply_now(const State& state, const PoolView& pool) {
    for (auto said = state.job.supplies.rbegin(); said != state.job.supplies.rend(); ++said) {
        if (is_of_pool(state, said->edge, said->role, pool.pool)) {
            return said->supply;
        }
    }
    return Supply::as_wanted;
}

/// Each a row to tap: its count and length come back to be corrected.
void draw_there(Ui& ui, const State& state, const PoolView& pool, Drafts& drafts, Box& words) {
    const std::vector<const Offcut*> there = lying_there(state, pool);
    if (there.empty()) {
        take_top(words, ui.paragraph(words.x, words.y, words.w, say("Nothing is counted here yet."),
                                     Size::small, ui.colours().soft));
    }
    for (const Offcut* offcut : there) {
        const bool chosen = drafts.corrects == offcut->left_by;
        const Text label = glued(offcut->count, " × ", offcut->length);
        if (ui.button("there " + print_event_id(offcut->left_by), label, take_top(words, ui.mm(12)),
                      chosen ? Look::chosen : Look::plain)) {
            const bool metric = state.marks == Marks::millimetre;
            drafts.corrects = chosen ? std::nullopt : std::optional(offcut->left_by);
            drafts.length = chosen ? LengthDraft{} : draft_of(offcut->length, metric);
            drafts.sticks = chosen ? 1 : offcut->count;
        }
        take_top(words, ui.mm(3));
    }
}

/// [ − ]  2  [ + ]
void draw_count(Ui& ui, Drafts& drafts, Box strip) {
    const std::vector<Box> places = columns(strip, 3, ui.mm(3));
    const std::int64_t least = drafts.corrects ? 0 : 1;  // a correction may say there is none
    if (ui.button("fewer", Text("−"), places[0], drafts.sticks > least ? Look::plain : Look::off)) {
        --drafts.sticks;
    }
    ui.text(places[1].mid_x(), strip.mid_y() - ui.line_height(Size::title) / 2,
            Text(std::to_string(drafts.sticks)), Size::title, Align::centre);
    if (ui.button("more", Text("+"), places[2],
                  drafts.sticks < count_most ? Look::plain : Look::off)) {
        ++drafts.sticks;
    }
}

}  // namespace

Wish draw_on_hand(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const std::optional<PoolView> pool = pool_at(state);
    if (!pool) {
        wish.go = Where{Place::roof, {}};
        return wish;
    }
    const bool metric = state.marks == Marks::millimetre;
    take_typed(drafts.length, drafts.typed, ui.typed(), metric);
    const Result<Length> length = length_of(drafts.length, metric);
    const Supply supply = supply_now(state, *pool);
    const bool only = supply == Supply::on_hand_only;
    const Frame frame =
        open_frame(ui, state, say("On hand · {1}", trim_name(state, pool->trim)),
                   {{"leave", say("Back to the sticks")},
                    {"supply", only ? say("New ones too") : say("Only these today")},
                    {"keep", drafts.corrects ? say("So many there are") : say("I have these"),
                     length ? Look::primary : Look::off}},
                   {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    draw_length_keys(ui, drafts.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, drafts.length, body, tapes_of(state)) + ui.mm(3));
    Box words = ui.begin_scroll("on hand words", body);
    const float top = words.y;
    draw_count(ui, drafts, take_top(words, ui.mm(12)));
    take_top(words, ui.mm(3));
    const Text refused = drafts.length.refused;
    if (!refused.empty() || only) {
        take_top(words,
                 ui.paragraph(words.x, words.y, words.w,
                              refused.empty() ? say("Only these are cut from today.") : refused) +
                     ui.mm(2));
    }
    draw_there(ui, state, *pool, drafts, words);
    ui.end_scroll(words.y - top);
    const Where back = at_pool(Place::on_hand, *pool);
    if (frame.tapped == "leave") {
        wish.go = at_pool(Place::sticks, *pool);
    } else if (frame.tapped == "supply") {
        wish.fact =
            SupplyChosen{pool->edge, pool->role, only ? Supply::as_wanted : Supply::on_hand_only};
        wish.go = back;
    } else if (frame.tapped == "keep" && length) {
        wish.fact = MetalCounted{pool->edge, pool->role, *length, drafts.sticks};
        if (drafts.corrects) {
            wish.supersedes = {*drafts.corrects};
        }
        wish.go = back;
    }
    return wish;
}

}  // namespace hemline
