// A piece on paper, or as a drawing for the shop.
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

struct Offer {
    const char* name;
    const char* label;
    Errand errand;
    bool prints;
};
constexpr Offer offers[] = {
    {"print card", phrase("Print the cut card"), Errand::print_card, true},
    {"print templates", phrase("Print templates of both ends"), Errand::print_templates, true},
    {"save svg", phrase("Drawing for the eye (SVG)"), Errand::give_svg, false},
    {"save dxf", phrase("Drawing for the cutter (DXF)"), Errand::give_dxf, false},
};

}  // namespace

Wished draw_papers(Ui& ui, const State& state, Drafts& drafts) {
    PapersDraft& draft = drafts.papers;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Frame frame = open_frame(
        ui, state, say("{1} · piece {2} · on paper", title_of(work->edge), state.where.piece),
        {{"card", say("Back to the card"), Look::primary}});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("papers", frame.body);
    const float top = body.y;
    for (std::size_t row = 0; row < 2; ++row) {
        const std::vector<Box> places = columns(take_top(body, ui.mm(16)), 2, ui.mm(3));
        for (std::size_t i = 0; i < 2; ++i) {
            const Offer& offer = offers[2 * row + i];
            const bool can = offer.prints ? state.can.prints : state.can.gives_files;
            if (ui.button(offer.name, say(offer.label), places[i], can ? Look::plain : Look::off)) {
                wish = offer.errand;
            }
        }
        take_top(body, ui.mm(3));
    }
    take_top(body, ui.mm(2));
    take_top(body, ui.paragraph(body.x, body.y, body.w, say("Paper in the printer"), Size::bold) +
                       ui.mm(2));
    const std::vector<Box> papers = columns(take_top(body, ui.mm(12)), 2, ui.mm(3));
    if (ui.button("letter", say("Letter, 8 1/2 x 11 in"), papers[0],
                  draft.a4 ? Look::plain : Look::chosen)) {
        draft.a4 = false;
    }
    if (ui.button("a4", say("A4, 210 x 297 mm"), papers[1],
                  draft.a4 ? Look::chosen : Look::plain)) {
        draft.a4 = true;
    }
    take_top(body, ui.mm(5));
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                say("Print templates at 100 %, \"actual size\". Measure the check "
                                    "bars on the paper before you cut by it: 4 in and 100 mm.")));
    ui.end_scroll(body.y - top);
    if (frame.tapped == "card") {
        wish = Go{at(state.where, Screen::card)};
    }
    return wish;
}

}  // namespace hemline
