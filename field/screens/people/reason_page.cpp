#include "field/screens/people/reason_page.h"

#include "field/screens/page/frame.h"
#include "field/screens/page/letters.h"

namespace hemline {

namespace {

/// The usual reasons in so many columns, in a list that scrolls; returns the reason touched, or
/// empty.
std::string draw_usual(Ui& ui, const std::vector<const char*>& usual, std::size_t wide, Box box) {
    std::string touched;
    const float gap = ui.mm(3);
    Box list = ui.begin_scroll("reasons", box);
    const float top = list.y;
    for (std::size_t from = 0; from < usual.size(); from += wide) {
        const auto places = columns(take_top(list, ui.mm(11)), static_cast<int>(wide), gap);
        for (std::size_t i = from; i < usual.size() && i < from + wide; ++i) {
            if (ui.button("reason " + std::string(usual[i]), say(usual[i]), places[i - from])) {
                touched = usual[i];
            }
        }
        take_top(list, gap);
    }
    ui.end_scroll(list.y - top - gap);
    return touched;
}

}  // namespace

ReasonGiven ask_reason(Ui& ui, const State& state, const ReasonAsked& asked, NameDraft& words) {
    const bool ready = !words.letters.empty();
    const Frame frame = open_frame(
        ui, state, asked.title,
        {{"leave", say("Back")}, {"send", asked.send, ready ? Look::primary : Look::off}});
    Box body = frame.body;
    const bool upright = ui.portrait();
    ReasonGiven given{"", frame.tapped == "leave", frame.wish};
    if (!asked.usual.empty()) {
        const Box reasons = upright ? take_top(body, ui.mm(39)) : take_left(body, body.w * 0.38F);
        take_top(body, upright ? ui.mm(3) : 0);
        take_left(body, upright ? 0 : ui.mm(5));
        given.reason = draw_usual(ui, asked.usual, upright ? 2 : 1, reasons);
    }
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                ready ? Text(words.letters) : say("or your words: …"), Size::bold) +
                       ui.mm(2));
    draw_letter_keys(ui, words, body);
    if (frame.tapped == "send" && ready) {
        given.reason = words.letters;
    }
    return given;
}

}  // namespace hemline
