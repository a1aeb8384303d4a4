// Sticks and offcuts on hand: a length, how many, and whether new sticks can be had today.
#include <algorithm>

#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 56;  // what is above the keys on an upright screen
constexpr std::int64_t count_most = 200;

/// What is on hand for the pool, as each event left or counted it.
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

/// Each is a row to tap, which brings back its count and length to be corrected.
void draw_there(Ui& ui, const State& state, const PoolView& pool, OnHandDraft& draft, Box& words) {
    const std::vector<const Offcut*> there = lying_there(state, pool);
    if (there.empty()) {
        take_top(words, ui.paragraph(words.x, words.y, words.w, say("Nothing is counted here yet."),
                                     Size::small, ui.colours().soft));
    }
    for (const Offcut* offcut : there) {
        const bool chosen = draft.corrects == offcut->left_by;
        const Text label = glued(offcut->count, " × ", offcut->length);
        if (ui.button("there " + print_event_id(offcut->left_by), label, take_top(words, ui.mm(12)),
                      chosen ? Look::chosen : Look::plain)) {
            const bool metric = state.marks == Marks::millimetre;
            draft.corrects = chosen ? std::nullopt : std::optional(offcut->left_by);
            draft.length = chosen ? LengthDraft{} : draft_of(offcut->length, metric);
            draft.sticks = chosen ? 1 : offcut->count;
        }
        take_top(words, ui.mm(3));
    }
}

/// [ − ]  2  [ + ]
void draw_count(Ui& ui, OnHandDraft& draft, Box strip) {
    const std::vector<Box> places = columns(strip, 3, ui.mm(3));
    const std::int64_t least = draft.corrects ? 0 : 1;  // a correction may say that none is left
    if (ui.button("fewer", Text("−"), places[0], draft.sticks > least ? Look::plain : Look::off)) {
        --draft.sticks;
    }
    ui.text(places[1].mid_x(), strip.mid_y() - ui.line_height(Size::title) / 2,
            Text(std::to_string(draft.sticks)), Size::title, Align::centre);
    if (ui.button("more", Text("+"), places[2],
                  draft.sticks < count_most ? Look::plain : Look::off)) {
        ++draft.sticks;
    }
}

}  // namespace

Wished draw_on_hand(Ui& ui, const State& state, Drafts& drafts) {
    OnHandDraft& draft = drafts.on_hand;
    const std::optional<PoolView> pool = pool_at(state);
    if (!pool) {
        return Go{{Screen::roof, {}}};
    }
    const bool metric = state.marks == Marks::millimetre;
    take_typed(ui, draft.length, metric);
    const Result<Length> length = length_of(draft.length, metric);
    const Supply supply = supply_now(state, *pool);
    const bool only = supply == Supply::on_hand_only;
    const Frame frame =
        open_frame(ui, state, say("On hand · {1}", trim_name(state, pool->trim)),
                   {{"leave", say("Back to the sticks")},
                    {"supply", only ? say("New ones too") : say("Only these today")},
                    {"keep", draft.corrects ? say("So many there are") : say("I have these"),
                     length ? Look::primary : Look::off}},
                   {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(3));
    Box words = ui.begin_scroll("on hand words", body);
    const float top = words.y;
    draw_count(ui, draft, take_top(words, ui.mm(12)));
    take_top(words, ui.mm(3));
    const Text refused = draft.length.refused;
    if (!refused.empty() || only) {
        take_top(words,
                 ui.paragraph(words.x, words.y, words.w,
                              refused.empty() ? say("Only these are cut from today.") : refused) +
                     ui.mm(2));
    }
    draw_there(ui, state, *pool, draft, words);
    ui.end_scroll(words.y - top);
    const Where back = at_pool(Screen::on_hand, *pool);
    if (frame.tapped == "leave") {
        wish = Go{at_pool(Screen::sticks, *pool)};
    } else if (frame.tapped == "supply") {
        wish = Keep{
            SupplyChosen{pool->edge, pool->role, only ? Supply::as_wanted : Supply::on_hand_only},
            back,
            {},
            true};
    } else if (frame.tapped == "keep" && length) {
        const std::vector<EventId> before =
            draft.corrects ? std::vector<EventId>{*draft.corrects} : std::vector<EventId>();
        wish = Keep{MetalCounted{pool->edge, pool->role, *length, draft.sticks}, back, before};
    }
    return wish;
}

}  // namespace hemline
