// The screen's scale: lay a bank card or the tape on it, and move a mark to its other end.
//
//    ├──────── the card ────────┤      [ much shorter ] [ shorter ] [ longer ] [ much longer ]
#include <imgui.h>

#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

// ISO/IEC 7810:2019, ID-1: 85.60 mm by 53.98 mm.
constexpr float card_mm = 85.60F, card_low_mm = 53.98F;
constexpr float tape_mm = 76.2F;  // 3 in, by definition of the inch
constexpr float edge_mm = 2;
constexpr float scale_least = 2, scale_most = 40;
constexpr float fine = 0.0025F, coarse = 0.03F;  // of the scale: about a pixel, and about 2 mm

struct Nudge {
    const char* name;
    const char* label;
    float by;
};
constexpr Nudge nudges[] = {{"much shorter", phrase("much shorter"), -coarse},
                            {"shorter", phrase("shorter"), -fine},
                            {"longer", phrase("longer"), fine},
                            {"much longer", phrase("much longer"), coarse}};

/// The thing laid on the screen, from its left edge to the mark; upright where the page is.
void draw_thing(Ui& ui, bool card, float scale, Box box) {
    const float across = (card ? card_mm : tape_mm) * scale;
    const Box thing{box.x, box.y, across, std::min(box.h, (card ? card_low_mm : 25) * scale)};
    ImDrawList* const ink = ui.ink();
    ink->AddRectFilled({thing.x, thing.y}, {thing.right(), thing.bottom()},
                       card ? ui.colours().metal : ui.colours().tape);
    ink->AddRect({thing.x, thing.y}, {thing.right(), thing.bottom()}, ui.colours().ink, 0, 0,
                 ui.mm(0.3F));
    for (const float x : {thing.x, thing.right()}) {
        ink->AddLine({x, thing.y}, {x, box.bottom()}, ui.colours().chalk, ui.mm(0.7F));
    }
    const float y = thing.mid_y() - ui.line_height(Size::body) / 2;
    ui.text(thing.mid_x(), y, card ? say("bank card, the long way") : say("0 to 3 in of the tape"),
            Size::body, Align::centre, card ? ui.colours().ink : IM_COL32_BLACK);
}

void draw_things(Ui& ui, bool& card, Box row) {
    const std::vector<Box> places = columns(row, 2, ui.mm(3));
    if (ui.button("lay card", say("Bank card"), places[0], card ? Look::chosen : Look::plain)) {
        card = true;
    }
    if (ui.button("lay tape", say("Tape, 3 in"), places[1], card ? Look::plain : Look::chosen)) {
        card = false;
    }
}

void draw_nudges(Ui& ui, float& scale, float scale_fits, Box row) {
    const std::vector<Box> places = columns(row, 4, ui.mm(3));
    const Size largest =
        ui.label_size({say(nudges[0].label), say(nudges[3].label)}, places.front());
    for (std::size_t i = 0; i < 4; ++i) {
        if (ui.button(nudges[i].name, say(nudges[i].label), places[i], Look::plain, largest)) {
            scale = std::clamp(scale * (1 + nudges[i].by), scale_least, scale_fits);
        }
    }
}

}  // namespace

Wished draw_calibrate(Ui& ui, const State&, Drafts& drafts) {
    CalibrateDraft& draft = drafts.calibrate;
    const Frame frame = open_frame(ui, State(), say("How large is this screen?"),
                                   {{"leave", say("Jobs")},
                                    way_back({"later", say("Not now")}),
                                    {"keep scale", say("It fits"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    float& scale = draft.px_per_mm;
    if (scale == 0) {
        scale = ui.mm(1);
    }
    take_top(body,
             ui.paragraph(body.x, body.y, body.w,
                          draft.lay_card ? say("Lay a bank card on the box, its left edge on the "
                                               "left mark. Move the right mark to its right edge.")
                                         : say("Lay the tape along the box, 0 on the left mark. "
                                               "Move the right mark to 3 in.")) +
                 ui.mm(3));
    draw_things(ui, draft.lay_card, take_top(body, ui.mm(11)));
    take_top(body, ui.mm(3));
    const Box page = ui.page();
    const float w = page.w - 2 * ui.mm(edge_mm);  // a card nearly fills a 7 in page's width
    const float scale_fits = std::min(scale_most, w / (draft.lay_card ? card_mm : tape_mm));
    draw_nudges(ui, scale, scale_fits, take_bottom(body, ui.mm(14)));
    take_bottom(body, ui.mm(3));
    draw_thing(ui, draft.lay_card, std::min(scale, scale_fits),
               {page.x + ui.mm(edge_mm), body.y, w, body.h});
    if (frame.tapped == "leave") {
        wish = Go{{Screen::jobs, {}}};
    } else if (frame.tapped == "later") {
        wish = PutOffScale{};
    } else if (frame.tapped == "keep scale") {
        wish = ScaleScreen{scale / ui.mm(1)};
    }
    return wish;
}

}  // namespace hemline
