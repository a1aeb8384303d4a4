// The record: every event in order, struck ones crossed out, and undo.
#include <imgui.h>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/told.h"

namespace hemline {

Wished draw_history(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const bool can_undo = state.undo_target.has_value();
    const Frame frame =
        open_frame(ui, state, say("Record · the latest first"),
                   {{"leave", say("Roof")},
                    {"undo", say("Undo the last"), can_undo ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    const float line = ui.line_height(Size::small);
    const float row = 2 * line + ui.mm(3);
    const Box list =
        ui.begin_scroll("events", frame.body, row * static_cast<float>(state.events.size()));
    float y = list.y;
    for (auto event = state.events.rbegin(); event != state.events.rend(); ++event) {
        const bool on_page = y + row > frame.body.y && y < frame.body.bottom();
        if (!on_page) {
            y += row;
            continue;
        }
        const bool struck = state.job.struck.count(event->id) > 0;
        const Text said = ui.shortened(told(state, event->fact), Size::body, list.w);
        const float w = ui.text(list.x, y, said, Size::body, Align::left,
                                struck ? ui.colours().soft : ui.colours().ink);
        if (struck) {
            const float middle = y + ui.line_height(Size::body) / 2;
            ui.ink()->AddLine({list.x, middle}, {list.x + w, middle}, ui.colours().ink,
                              ui.mm(0.3F));
        }
        ui.text(list.x, y + ui.line_height(Size::body),
                glued(clock_time(wall_time(*event)), "  ", event->by,
                      struck ? say("  crossed out") : Text()),
                Size::small, Align::left, ui.colours().soft);
        y += row;
    }
    ui.end_scroll();
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "undo") {
        wish = UndoLast{};
    }
    return wish;
}

}  // namespace hemline
