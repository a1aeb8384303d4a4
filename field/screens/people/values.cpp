#include "field/screens/people/values.h"

#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float accept_w_mm = 45;
constexpr float line_mm = 11 + gap_mm;
constexpr float mark_mm = 7, mark_gap_mm = 2, band_gap_mm = 1;
constexpr float wide_mm = 130, value_mm = 46, who_mm = 42;  // columns where there is room

Text noted(const EdgeValue& value) {
    return value.noted_by.empty() ? say("{1} Nobody noted it.", value.outside)
                                  : say("{1} Noted by {2}.", value.outside, value.noted_by);
}

Text what_words(const Ui& ui, const EdgeValue& value) {
    const std::string what = ui.in_words(value.what);
    const bool has_stop = !what.empty() && what.back() == '.';
    const Text sentence = has_stop ? Text(what) : Text(what + ".");
    return value.wanted.empty() ? sentence : say("{1} Practice: {2}.", sentence, value.wanted);
}

/// The value, what it is of, and who said it: next to each other, or below each other.
float draw_words(Ui& ui, const EdgeValue& value, Box words) {
    const std::string who = value.by.empty() ? "" : value.by + " " + clock_time(value.clock);
    if (words.w < ui.mm(wide_mm)) {
        float y = words.y + ui.paragraph(words.x, words.y, words.w, value.value, Size::bold);
        y += ui.paragraph(words.x, y, words.w, what_words(ui, value), Size::small);
        if (!who.empty()) {
            y += ui.paragraph(words.x, y, words.w, Text(who), Size::small, ui.colours().soft);
        }
        return y - words.y;
    }
    const Box left = take_left(words, ui.mm(value_mm)), right = take_right(words, ui.mm(who_mm));
    const float small_y = words.y + ui.mm(0.8F);  // on the line of the larger letters
    const float value_h = ui.paragraph(left.x, left.y, left.w, value.value, Size::bold);
    const float what_h =
        ui.paragraph(words.x, small_y, words.w, what_words(ui, value), Size::small);
    ui.text(right.right(), small_y, ui.shortened(Text(who), Size::small, right.w), Size::small,
            Align::right, ui.colours().soft);
    return std::max(value_h, what_h + ui.mm(0.8F));
}

/// Returns the height used.
float draw_value(Ui& ui, const EdgeValue& value, bool asks, bool& accepts, Box row) {
    const bool is_outside = !value.outside.empty();
    Box words = row;
    const Box mark = take_left(words, ui.mm(mark_mm));
    if (is_outside || !value.wanted.empty()) {
        ui.text(mark.x, row.y, Text(is_outside ? "!" : "✓"), Size::bold);
    }
    float h = draw_words(ui, value, words);
    if (is_outside) {
        h += ui.mm(band_gap_mm);
        h += draw_band(ui, value.by.empty() ? value.outside : noted(value),
                       {words.x, row.y + h, words.w, 0});
        if (!value.accepted_by.empty()) {
            h += ui.paragraph(words.x, row.y + h, words.w,
                              say("{1} let it stand.", value.accepted_by), Size::bold);
        } else if (asks) {
            const Box button{words.x, row.y + h, std::min(words.w, ui.mm(accept_w_mm)),
                             ui.mm(target_min)};
            accepts = ui.button("accept " + value.key, say("Let this stand"), button);
            h += button.h + ui.mm(gap_mm);
        }
    }
    return h + ui.mm(mark_gap_mm);
}

/// "12 values within practice", with the gap below; true when touched.
bool draw_within(Ui& ui, std::int64_t count, bool opened, Box row) {
    row.h -= ui.mm(gap_mm);
    return ui.button(
        "within practice",
        glued("✓ ", say_count("{1} value within practice", "{1} values within practice", count)),
        row, opened ? Look::chosen : Look::plain, Size::bold);
}

}  // namespace

Wished draw_values(Ui& ui, const State& state, const EdgeWork& work, ValuesDraft& draft, Box box) {
    const bool asks = state.way == Way::tick_off && status_on(state, work) == EdgeStatus::to_tick;
    std::vector<EdgeValue> values = values_on(state, work);
    const auto within = std::stable_partition(
        values.begin(), values.end(), [](const EdgeValue& one) { return !one.outside.empty(); });
    const auto count = static_cast<std::int64_t>(values.end() - within);
    Wished wish;
    Box list = ui.begin_scroll("values " + work.edge.id, box);
    const float top = list.y;
    for (auto value = values.begin(); value != values.end(); ++value) {
        if (value == within &&
            draw_within(ui, count, draft.within, take_top(list, ui.mm(line_mm)))) {
            draft.within = !draft.within;
        }
        if (value >= within && !draft.within) {
            break;
        }
        bool accepts = false;
        take_top(list, draw_value(ui, *value, asks, accepts, list));
        if (accepts) {
            wish = Keep{ValueAccepted{work.edge.id, value->key}, state.where};
        }
    }
    ui.end_scroll(list.y - top);
    return wish;
}

Action tick_action(const State& state, const EdgeWork& work) {
    const std::size_t left = not_accepted(values_on(state, work)).size();
    if (state.way != Way::tick_off) {
        return {"tick", say("Hand it to the foreman"), Look::primary};
    }
    return left == 0 ? Action{"tick", say("Check this edge off"), Look::primary}
                     : Action{"tick",
                              say_count("{1} exception to look at first",
                                        "{1} exceptions to look at first",
                                        static_cast<std::int64_t>(left)),
                              Look::off};
}

}  // namespace hemline
