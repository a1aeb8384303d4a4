// The record: every event, what is outside practice first, struck ones crossed out; a touched one
// is crossed out or put back.
#include <imgui.h>

#include <algorithm>
#include <numeric>
#include <vector>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/record_view.h"
#include "field/state/told.h"

namespace hemline {

namespace {

/// What may be done with the entry that was touched, or else with the last.
std::vector<Action> actions_of(const State& state, const Event* touched) {
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (touched == nullptr) {
        actions.push_back(
            {"undo", say("Undo the last"), state.undo_target ? Look::primary : Look::off});
        return actions;
    }
    actions.push_back({"let go", say("Leave it so")});
    const Undoing undoing = undoing_of(state, *touched);
    actions.push_back({"undo", undoing.puts_back ? say("Put it back") : say("Cross it out"),
                       undoing.strike ? Look::primary : Look::off});
    return actions;
}

constexpr std::size_t whole_most = 50;  // of a list that is longer each entry has a line
constexpr float bar_mm = 8;             // of a list that scrolls, and the margins of an entry

/// How high each entry is: one outside practice is told whole, with its value.
std::vector<float> heights_of(const Ui& ui, const State& state, const RecordShown& shown, float w) {
    const float small = ui.line_height(Size::small) + ui.mm(3);
    const float least = std::max(ui.line_height(Size::body) + small, ui.mm(target_min));
    std::vector<float> heights(shown.entries.size(), least);
    for (std::size_t i = 0; i < shown.outside && shown.outside <= whole_most; ++i) {
        const Text words = told(state, shown.entries[i]->fact);
        heights[i] =
            std::max(least, ui.paragraph_height(w - ui.mm(bar_mm), words, Size::body) + small);
    }
    return heights;
}

void draw_entry(Ui& ui, const State& state, const Event& event, bool chosen, Box row) {
    const Palette& p = ui.colours();
    const Box inner = inset(row, ui.mm(2), ui.mm(1));
    if (chosen) {
        ui.ink()->AddRectFilled({row.x, row.y}, {row.right(), row.bottom()}, p.chalk, ui.mm(1));
    }
    const bool struck = state.job.struck.count(event.id) > 0;
    const Colour ink = chosen ? p.chalk_ink : struck ? p.soft : p.ink;
    const bool whole = row.h > ui.line_height(Size::body) * 2 + ui.line_height(Size::small);
    const Text words = told(state, event.fact);
    float w = inner.w, h = ui.line_height(Size::body);
    if (whole) {
        h = ui.paragraph(inner.x, inner.y, inner.w, words, Size::body, ink);
    } else {
        w = ui.text(inner.x, inner.y, ui.shortened(words, Size::body, inner.w), Size::body,
                    Align::left, ink);
    }
    if (struck) {
        const float middle = inner.y + ui.line_height(Size::body) / 2;
        ui.ink()->AddLine({inner.x, middle}, {inner.x + w, middle}, ink, ui.mm(0.3F));
    }
    ui.text(
        inner.x, inner.y + h,
        glued(clock_time(wall_time(event)), "  ", event.by, struck ? say("  crossed out") : Text()),
        Size::small, Align::left, chosen ? p.chalk_ink : p.soft);
    ui.ink()->AddLine({row.x, row.bottom()}, {row.right(), row.bottom()}, p.hairline, ui.mm(0.2F));
}

}  // namespace

Wished draw_history(Ui& ui, const State& state, Drafts& drafts) {
    std::optional<EventId>& entry = drafts.history.entry;
    const auto found = std::find_if(state.events.rbegin(), state.events.rend(),
                                    [&](const Event& event) { return entry == event.id; });
    const Event* const touched = found == state.events.rend() ? nullptr : &*found;
    const RecordShown shown = record_shown(state);
    const Frame frame =
        open_frame(ui, state, shown.outside > 0 ? say("Record") : say("Record · the latest first"),
                   actions_of(state, touched));
    Wished wish = frame.wish;
    Box body = frame.body;
    if (touched != nullptr) {
        take_top(body, draw_band(ui, undoing_of(state, *touched).words, body, Band::news));
    }
    const std::vector<float> heights = heights_of(ui, state, shown, body.w);
    const float heading = shown.outside > 0 ? ui.line_height(Size::small) + ui.mm(2) : 0;
    const Box list = ui.begin_scroll("events", body,
                                     std::accumulate(heights.begin(), heights.end(), 2 * heading));
    float y = list.y;
    for (std::size_t i = 0; i < shown.entries.size(); ++i) {
        if (heading > 0 && (i == 0 || i == shown.outside)) {
            ui.text(
                list.x, y + ui.mm(1),
                i == 0 ? say("Outside practice, noted by name") : say("All else, the latest first"),
                Size::small);
            y += heading;
        }
        const Event* const event = shown.entries[i];
        const float row = heights[i];
        const Box place{list.x, y, list.w, row};
        y += row;
        // A row more, and the ends, so that a keyboard's focus can go on to them.
        const bool is_end = i == 0 || i + 1 == shown.entries.size();
        const bool is_near = place.bottom() >= body.y - row && place.y <= body.bottom() + row;
        if (!is_end && !is_near) {
            continue;
        }
        const std::string name = "entry " + print_event_id(event->id);
        if (ui.area(name, place, told(state, event->fact))) {
            entry = entry == event->id ? std::nullopt : std::optional(event->id);
        }
        draw_entry(ui, state, *event, entry == event->id, place);
    }
    ui.end_scroll();
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "let go") {
        entry.reset();
    } else if (frame.tapped == "undo" && touched == nullptr) {
        wish = UndoLast{};
    } else if (frame.tapped == "undo") {
        wish = undo_of(undoing_of(state, *touched), state.where);
    }
    return wish;
}

}  // namespace hemline
