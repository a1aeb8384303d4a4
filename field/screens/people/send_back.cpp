// The foreman sends an edge back: one of the usual reasons, or his own words. It becomes the
// installer's next step.
#include <array>

#include "field/screens/page/frame.h"
#include "field/screens/page/letters.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

// What a foreman looks for. Common practice, no published source.
constexpr std::array<const char*, 6> usual = {
    phrase("lap too short"), phrase("hem not hooked"),    phrase("bead missing"),
    phrase("screw missing"), phrase("face not straight"), phrase("metal scratched")};

/// The usual reasons in so many columns, in a list that scrolls; the one touched, or empty.
std::string draw_usual(Ui& ui, int wide, Box box) {
    std::string touched;
    const float gap = ui.mm(3);
    Box list = ui.begin_scroll("reasons", box);
    const float top = list.y;
    for (std::size_t i = 0; i < usual.size();) {
        for (const Box& place : columns(take_top(list, ui.mm(11)), wide, gap)) {
            if (ui.button("reason " + std::string(usual[i]), say(usual[i]), place)) {
                touched = usual[i];
            }
            ++i;
        }
        take_top(list, gap);
    }
    ui.end_scroll(list.y - top - gap);
    return touched;
}

}  // namespace

Wished draw_send_back(Ui& ui, const State& state, Drafts& drafts) {
    SendBackDraft& draft = drafts.send_back;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const bool ready = !draft.reason.letters.empty();
    const Frame frame = open_frame(
        ui, state, say("{1} · what is to fix?", title_of(work->edge)),
        {{"leave", say("Back")}, {"send", say("Send it back"), ready ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    Box body = frame.body;
    const bool upright = ui.portrait();
    const Box reasons = upright ? take_top(body, ui.mm(39)) : take_left(body, body.w * 0.38F);
    take_top(body, upright ? ui.mm(3) : 0);
    take_left(body, upright ? 0 : ui.mm(5));
    std::string reason = draw_usual(ui, upright ? 2 : 1, reasons);
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                ready ? Text(draft.reason.letters) : say("or your words: …"),
                                Size::bold) +
                       ui.mm(2));
    draw_letter_keys(ui, draft.reason, body);
    if (frame.tapped == "leave") {
        wish = Go{state.way == Way::tick_off ? opened(state, *work)
                                             : Where{Screen::steps, work->edge.id}};
    } else if (frame.tapped == "send" && ready) {
        reason = draft.reason.letters;
    }
    if (!reason.empty()) {
        wish = Keep{EdgeSentBack{work->edge.id, reason}, Where{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
