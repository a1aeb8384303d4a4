// The day sheet on the screen: what was done on a day, by whom; on paper where there is a printer.
#include <algorithm>

#include "engine/work/day_sheet.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/told.h"

namespace hemline {

namespace {

constexpr float day_wide_mm = 130,
                day_who_mm = 42;  // the names are at the right where there is room

/// The nearest time of an event before the day, or after it.
std::optional<std::int64_t> time_beside(const State& state, DaySpan day, bool before) {
    std::optional<std::int64_t> nearest;
    for (const Event& event : state.events) {
        const std::int64_t ms = wall_time(event).ms;
        const bool wanted = before ? ms < day.from_ms : ms >= day.to_ms;
        if (wanted && (!nearest || (before ? ms > *nearest : ms < *nearest))) {
            nearest = ms;
        }
    }
    return nearest;
}

/// A time on the last day on which anything was written; events of a wrong clock do not count.
std::int64_t last_day_ms(const State& state) {
    const auto told = [&](const Event& event) {
        return std::none_of(state.clocks.begin(), state.clocks.end(),
                            [&](const auto& doubt) { return is_about(doubt, event.id.device); });
    };
    const auto last = std::find_if(state.events.rbegin(), state.events.rend(), told);
    const auto any = state.events.rbegin();
    return state.events.empty() ? 0 : wall_time(last == state.events.rend() ? *any : *last).ms;
}

/// Returns the height used.
float draw_line(Ui& ui, const DayLine& line, Box box) {
    const std::string who = line.by.empty() ? "" : line.by + " " + clock_time(line.clock);
    const bool wide = !who.empty() && box.w >= ui.mm(day_wide_mm);
    const float w = box.w - (wide ? ui.mm(day_who_mm) : 0);
    float y = box.y + ui.paragraph(box.x, box.y, w, line.words);
    if (wide) {
        ui.text(box.right(), box.y + ui.mm(0.8F),
                ui.shortened(Text(who), Size::small, ui.mm(day_who_mm - 3)), Size::small,
                Align::right, ui.colours().soft);
    } else if (!who.empty()) {
        y += ui.paragraph(box.x, y, box.w, Text(who), Size::small, ui.colours().soft);
    }
    return y - box.y + ui.mm(1.5F);
}

void draw_sheet(Ui& ui, const State& state, DaySpan day, Box body) {
    Box list = ui.begin_scroll("day " + std::to_string(day.from_ms), body);
    const float top = list.y;
    for (const DayPart& part : parts_of(day_sheet(state.job, state.events, day), names_on(state))) {
        take_top(list, ui.paragraph(list.x, list.y, list.w, part.heading, Size::bold) + ui.mm(1));
        for (const DayLine& line : part.lines) {
            take_top(list, draw_line(ui, line, list));
        }
        take_top(list, ui.mm(2));
    }
    ui.end_scroll(list.y - top);
}

}  // namespace

Wished draw_day(Ui& ui, const State& state, Drafts& drafts) {
    DayDraft& draft = drafts.day;
    if (!draft.ms) {
        draft.ms = last_day_ms(state);
    }
    const DaySpan day = day_around(*draft.ms);
    const auto before = time_beside(state, day, true), after = time_beside(state, day, false);
    std::vector<Action> actions = {
        {"day before", say("The day before"), before ? Look::plain : Look::off},
        {"day after", say("The day after"), after ? Look::plain : Look::off}};
    if (state.can.prints) {
        actions.insert(actions.begin(), {"leave", say("Roof")});
        actions.push_back({"print day", say("Print it"), Look::primary});
    } else {
        actions.push_back({"leave", say("Back to the roof"), Look::primary});
    }
    const Frame frame =
        open_frame(ui, state, say("Day sheet · {1}", day_name({day.from_ms})), actions);
    Wished wish = frame.wish;
    draw_sheet(ui, state, day, frame.body);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "day before" && before) {
        draft.ms = before;
    } else if (frame.tapped == "day after" && after) {
        draft.ms = after;
    } else if (frame.tapped == "print day") {
        wish = Errand::print_day;
    }
    return wish;
}

}  // namespace hemline
