// The record: every event, what is outside practice first, struck ones crossed out; a touched one
// is crossed out or put back.
#include <imgui.h>

#include <algorithm>

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

void draw_entry(Ui& ui, const State& state, const Event& event, bool chosen, Box row) {
    const Palette& p = ui.colours();
    const Box inner = inset(row, ui.mm(2), ui.mm(1));
    if (chosen) {
        ui.ink()->AddRectFilled({row.x, row.y}, {row.right(), row.bottom()}, p.chalk, ui.mm(1));
    }
    const bool struck = state.job.struck.count(event.id) > 0;
    const Colour ink = chosen ? p.chalk_ink : struck ? p.soft : p.ink;
    const Text said = ui.shortened(told(state, event.fact), Size::body, inner.w);
    const float w = ui.text(inner.x, inner.y, said, Size::body, Align::left, ink);
    if (struck) {
        const float middle = inner.y + ui.line_height(Size::body) / 2;
        ui.ink()->AddLine({inner.x, middle}, {inner.x + w, middle}, ink, ui.mm(0.3F));
    }
    ui.text(
        inner.x, inner.y + ui.line_height(Size::body),
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
    const Frame frame =
        open_frame(ui, state, say("Record · the latest first"), actions_of(state, touched));
    Wished wish = frame.wish;
    Box body = frame.body;
    if (touched != nullptr) {
        take_top(body, draw_band(ui, undoing_of(state, *touched).words, body, Band::news));
    }
    const float row = std::max(ui.line_height(Size::body) + ui.line_height(Size::small) + ui.mm(3),
                               ui.mm(target_min));
    const RecordShown shown = record_shown(state);
    const float heading = shown.outside > 0 ? ui.line_height(Size::small) + ui.mm(2) : 0;
    const Box list = ui.begin_scroll("events", body,
                                     row * static_cast<float>(shown.entries.size()) + 2 * heading);
    float y = list.y;
    for (std::size_t i = 0; i < shown.entries.size(); ++i) {
        if (heading > 0 && (i == 0 || i == shown.outside)) {
            ui.text(list.x, y + ui.mm(1),
                    i == 0 ? say("Outside practice, noted by name") : say("All else"), Size::small);
            y += heading;
        }
        const Event* const event = shown.entries[i];
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
