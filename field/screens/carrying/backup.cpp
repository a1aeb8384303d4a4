// The job as a file: how old the last backup is, making a new one, and taking one in.
#include "field/screens/carrying/promise.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"

namespace hemline {

Wished draw_backup(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Frame frame = open_frame(
        ui, state, say("Backup · {1}", state.job.name),
        {{"leave", say("Roof")},
         {"choose file", say("Open a job file"), state.can.chooses_files ? Look::plain : Look::off},
         {"back up", say("Back up to a file"), Look::primary}});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("backup", frame.body);
    const float top = body.y;
    take_top(body, ui.paragraph(body.x, body.y, body.w, state.backed_up, Size::title) + ui.mm(4));
    take_top(body, ui.paragraph(
                       body.x, body.y, body.w,
                       say("A backup is one file with the whole record: readings, cuts, sign-offs. "
                           "Keep it off this tablet: send it, or carry it on a stick. Opened here "
                           "again, it brings back what is missing and takes nothing away.")) +
                       ui.mm(5));
    if (state.promised == Promised::refused) {
        take_top(body, draw_band(ui, promise_words(state.promised), body));
    } else if (state.promised != Promised::lasts) {
        take_top(body,
                 ui.paragraph(body.x, body.y, body.w, promise_words(state.promised)) + ui.mm(3));
    }
    if (state.promised == Promised::refused || state.promised == Promised::not_asked) {
        Box place = take_top(body, ui.mm(12));
        if (ui.button("ask promise", say("Ask the browser to keep it"),
                      take_left(place, std::min(place.w, ui.mm(80))))) {
            wish = Errand::ask_promise;
        }
    }
    ui.end_scroll(body.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "back up") {
        wish = Errand::back_up;
    } else if (frame.tapped == "choose file") {
        wish = Errand::choose_file;
    }
    return wish;
}

}  // namespace hemline
