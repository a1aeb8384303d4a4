// One stick that is not what it should be: shorter than it was taken for, or spoiled whole.
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 40;  // what stands above the keys in portrait

}  // namespace

Wish draw_stick(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const std::optional<PoolView> pool = pool_at(state);
    const PlannedStick* const stick = find_stick(state.plan, state.where.stick);
    if (!pool || stick == nullptr || stick->pool != pool->pool) {
        wish.go = pool ? at_pool(Place::sticks, *pool) : Where{Place::roof, {}};
        return wish;
    }
    const bool metric = state.marks == Marks::millimetre;
    take_typed(drafts.length, drafts.typed, ui.typed(), metric);
    const Result<Length> length = length_of(drafts.length, metric);
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
                   {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    draw_length_keys(ui, drafts.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, drafts.length, body, tapes_of(state)) + ui.mm(3));
    const Box words = ui.begin_scroll("stick words", body);
    ui.end_scroll(ui.paragraph(words.x, words.y, words.w,
                               !drafts.length.refused.empty() ? drafts.length.refused
                               : refused.empty() ? say("The rest is planned again at once.")
                                                 : refused));
    const MetalTaken metal{stick->length, stick->offcut};
    if (frame.tapped == "leave") {
        wish.go = at_pool(Place::sticks, *pool);
    } else if (frame.tapped == "spoiled whole") {
        wish.fact = StickSpoiled{pool->edge, pool->role, metal};
        wish.go = at_pool(Place::sticks, *pool);
    } else if (frame.tapped == "keep" && refused.empty()) {
        wish.fact = StickMeasured{pool->edge, pool->role, metal, *length};
        wish.go = at_pool(Place::sticks, *pool);
    }
    return wish;
}

}  // namespace hemline
