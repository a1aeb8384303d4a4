// A stick that is not what it should be: shorter than assumed, or spoiled whole.
#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr float above_stick_keys_mm = 40;  // what is above the keys on an upright screen

}  // namespace

Wished draw_stick(Ui& ui, const State& state, Drafts& drafts) {
    StickDraft& draft = drafts.stick;
    const std::optional<PoolView> pool = pool_at(state);
    const PlannedStick* const stick = find_stick(state.plan, state.where.stick);
    if (!pool || stick == nullptr || stick->pool != pool->pool) {
        return Go{pool ? at_pool(Screen::sticks, *pool) : Where{Screen::roof, {}}};
    }
    const bool metric = state.marks == Marks::millimetre;
    take_typed(ui, draft.length, metric);
    const Result<Length> length = length_of(draft.length, metric);
    const Length taken_for = stick->length;
    const Text refused = !length                    ? length.problem().what
                         : *length == stick->length ? say("That is how long it was taken for.")
                                                    : Text();
    const Frame frame =
        open_frame(ui, state,
                   stick->offcut ? say("On hand, {1} · how long is it really?", taken_for)
                                 : say("A new stick, {1} · how long is it really?", taken_for),
                   {{"leave", say("Back to the sticks")},
                    {"spoiled whole", say("Spoiled, all of it")},
                    {"keep", say("It is this long"), refused.empty() ? Look::primary : Look::off}},
                   {metric ? digit_keys : sixteenth_keys, above_stick_keys_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(3));
    const Box words = ui.begin_scroll("stick words", body);
    ui.end_scroll(ui.paragraph(words.x, words.y, words.w,
                               !draft.length.refused.empty() ? draft.length.refused
                               : refused.empty() ? say("The rest is planned again at once.")
                                                 : refused));
    const MetalTaken metal{stick->length, stick->offcut};
    if (frame.tapped == "leave") {
        wish = Go{at_pool(Screen::sticks, *pool)};
    } else if (frame.tapped == "spoiled whole") {
        wish = Keep{StickSpoiled{pool->edge, pool->role, metal}, at_pool(Screen::sticks, *pool)};
    } else if (frame.tapped == "keep" && refused.empty()) {
        wish = Keep{StickMeasured{pool->edge, pool->role, metal, *length},
                    at_pool(Screen::sticks, *pool)};
    }
    return wish;
}

}  // namespace hemline
