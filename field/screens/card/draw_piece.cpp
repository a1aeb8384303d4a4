#include "field/screens/card/draw_piece.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "engine/work/fixing.h"
#include "engine/work/mark_deeds.h"
#include "field/screens/card/draw_mitre.h"
#include "field/screens/card/mark_labels.h"

namespace hemline {

namespace {

constexpr float metal_mm_most = 34, metal_part_most = 0.4F;  // of the room, on a desk's screen
constexpr float screw_mm = 0.9F;                             // radius
constexpr float above_metal_mm = 2, below_tape_mm = 1;

/// Heights of the outline, in mm.
struct OutlineHeights {
    float metal_least, to_tape, tape;

    [[nodiscard]] float beside_metal() const {
        return above_metal_mm + to_tape + tape + below_tape_mm;
    }
};
constexpr OutlineHeights roomy_outline{13, 3, 8}, tight_outline{6.5F, 2, 7};

/// From a length along the piece to a pixel.
struct Along {
    float x0 = 0;
    float px_per_nm = 0;

    [[nodiscard]] float at(Length length) const {
        return x0 + static_cast<float>(static_cast<double>(length.nm()) * px_per_nm);
    }
};

float share_of(Length part, Length whole) {
    return static_cast<float>(static_cast<double>(part.nm()) / static_cast<double>(whole.nm()));
}

Length girth_of(const Card& card) {
    Length sum;
    for (const Leg& leg : card.legs) {
        sum += leg.width;
    }
    return sum;
}

float screw_line(const Card& card, Box metal, LegName leg);

/// The middle of the widest gap between screws that a name of that width fits into, as near to the
/// middle of the piece as possible; nothing where it would lie on a screw.
std::optional<float> clear_of_screws(const Card& card, const ScrewLine& line, const Along& along,
                                     float w) {
    std::optional<float> best;
    const float middle = along.at(card.cut) / 2 + along.x0 / 2;
    for (std::size_t i = 1; i < line.at.size(); ++i) {
        const float from = along.at(line.at[i - 1]);
        const float to = along.at(line.at[i]);
        const float mid = (from + to) / 2;
        if (to - from > w && (!best || std::abs(mid - middle) < std::abs(*best - middle))) {
            best = mid;
        }
    }
    return best;
}

ScrewLine screws_on(const Card& card, LegName leg) {
    for (const ScrewLine& line : card.screws) {
        if (line.leg == leg) {
            return line;
        }
    }
    return {leg, {}};
}

/// What a leg is called: the one that goes down over a channel kicks nothing out.
Text leg_words(const Card& card, LegName leg) {
    const bool down = leg == LegName::kick && !screws_on(card, leg).at.empty();
    return down ? say("leg down the channel") : leg_called(card, leg);
}

/// Legs from the one that lies away (top) toward you, with their names.
void draw_metal(Ui& ui, const Card& card, const Along& along, Box metal) {
    const Length girth = girth_of(card);
    const float right = along.at(card.cut);
    const float line = ui.line_height(Size::small);
    float y = metal.y;
    for (const Leg& leg : card.legs) {
        const float h = metal.h * share_of(leg.width, girth);
        const Colour fill =
            leg.name == LegName::flange ? ui.colours().metal : ui.colours().metal_low;
        ui.ink()->AddRectFilled({metal.x, y}, {right, y + h}, fill);
        ui.ink()->AddRect({metal.x, y}, {right, y + h}, ui.colours().ink, 0, 0, ui.mm(0.3F));
        const float words_y = y + (h - line) / 2;
        const ScrewLine screws = screws_on(card, leg.name);
        const float screws_y = screws.at.empty() ? y : screw_line(card, metal, leg.name);
        const float r = ui.mm(screw_mm + 0.5F);
        const bool crossed =
            !screws.at.empty() && screws_y + r > words_y && screws_y - r < words_y + line;
        const Text called = leg_words(card, leg.name);
        const float w = ui.text_width(called, Size::small) + 2 * r;
        const std::optional<float> clear = clear_of_screws(card, screws, along, w);
        const float below = screws_y + r;
        if (h > line && (!crossed || clear)) {
            ui.text(crossed ? *clear : (metal.x + right) / 2, words_y, called, Size::small,
                    Align::centre);
        } else if (h > line && below > y && below + line < y + h) {
            ui.text((metal.x + right) / 2, below, called, Size::small, Align::centre);
        }
        y += h;
    }
}

/// Top and bottom of a leg inside the metal's box.
Box leg_box(const Card& card, Box metal, LegName from, LegName to) {
    const Length girth = girth_of(card);
    float y = metal.y;
    float top = metal.bottom();
    float bottom = metal.y;
    for (const Leg& leg : card.legs) {
        const float h = metal.h * share_of(leg.width, girth);
        if (leg.name >= from && leg.name <= to) {
            top = std::min(top, y);
            bottom = std::max(bottom, y + h);
        }
        y += h;
    }
    return {metal.x, top, metal.w, std::max(0.0F, bottom - top)};
}

/// Screws go through flange or face near its outer edge, through the middle of a cleat or wrap and
/// of a leg that goes down over a channel.
float screw_line(const Card& card, Box metal, LegName leg) {
    const Box own = leg_box(card, metal, leg, leg);
    const bool flange = leg == LegName::flange;
    const LegName beside = flange ? LegName::face : LegName::flange;
    const Box other = leg_box(card, metal, beside, beside);
    if (card.role != TrimRole::main || leg == LegName::kick) {
        return own.mid_y();
    }
    // A clip stands over the hem, at the outer edge.
    const auto share = clips_hems(card) ? 0.0F : static_cast<float>(screw_line_share);
    const bool outer_edge_low = other.h > 0 && other.y < own.y;
    return own.y + own.h * (outer_edge_low ? 1 - share : share);
}

void draw_screw(const Ui& ui, float x, float y) {
    const float r = ui.mm(screw_mm);
    ui.ink()->AddCircle({x, y}, r, ui.colours().ink, 0, ui.mm(0.3F));
    ui.ink()->AddLine({x - r, y}, {x + r, y}, ui.colours().ink, ui.mm(0.3F));
}

void draw_clip(const Ui& ui, float x, float y) {
    const float r = ui.mm(screw_mm);
    ui.ink()->AddRectFilled({x - r, y - r}, {x + r, y + r}, ui.colours().ink);
}

void draw_beads(const Ui& ui, float x, Box band) {
    const float step = ui.mm(1.6F);
    for (float y = band.y + step / 2; y < band.bottom(); y += step) {
        ui.ink()->AddCircleFilled({x, y}, ui.mm(0.55F), ui.colours().ink);
    }
}

/// What is cut away of a leg or two between the mark and the end of the piece.
void draw_waste(Ui& ui, const Card& card, const Along& along, Box metal, const Mark& mark) {
    const float x = along.at(mark.at);
    const float end = mark.toward == Side::right ? along.at(card.cut) : metal.x;
    Box leg;
    switch (mark.kind) {
        case MarkKind::hem_notch:
            leg = leg_box(card, metal, LegName::hem, LegName::hem);
            break;
        case MarkKind::flange_cut:
            leg = leg_box(card, metal, LegName::flange, LegName::flange);
            break;
        case MarkKind::wrap_end:
            leg = leg_box(card, metal, LegName::face, LegName::face);
            break;
        case MarkKind::drip_clip_45:
            leg = leg_box(card, metal, LegName::kick, LegName::hem);
            break;
        default:
            return;
    }
    draw_hatching(ui, {std::min(x, end), leg.y, std::max(ui.mm(1), std::abs(end - x)), leg.h});
}

void draw_mitre(const Ui& ui, const Card& card, const Along& along, Box metal, const Mark& mark) {
    const Box flange = leg_box(card, metal, LegName::flange, LegName::flange);
    Length corner = mark.toward == Side::right ? card.cut : Length();
    for (const Mark& fold : card.marks) {
        if (fold.kind == MarkKind::tab_fold && fold.toward == mark.toward) {
            corner = fold.at;
        }
    }
    ui.ink()->AddLine({along.at(mark.at), flange.y}, {along.at(corner), flange.bottom()},
                      ui.colours().chalk, ui.mm(0.7F));
}

void draw_marks(Ui& ui, const Card& card, const Along& along, Box metal, float tape_top) {
    const DrawnCard drawn{card, leg_box(card, metal, LegName::flange, LegName::flange),
                          leg_box(card, metal, LegName::face, LegName::face),
                          [&along](Length at) { return along.at(at); }};
    for (const Mark& mark : card.marks) {
        draw_waste(ui, card, along, metal, mark);
    }
    draw_corner_waste(ui, drawn);
    draw_corner_lines(ui, drawn);
    for (const Mark& mark : card.marks) {
        const float x = along.at(mark.at);
        if (mark.kind == MarkKind::bead) {
            draw_beads(ui, x, leg_box(card, metal, LegName::flange, LegName::face));
        } else if (mark.kind == MarkKind::flange_mitre) {
            draw_mitre(ui, card, along, metal, mark);
        } else if (is_on_diagonal(mark.kind)) {
            ui.ink()->AddLine({x, metal.bottom()}, {x, tape_top}, ui.colours().chalk, ui.mm(0.7F));
        } else {
            ui.ink()->AddLine({x, metal.y - ui.mm(1.5F)}, {x, tape_top}, ui.colours().chalk,
                              ui.mm(0.7F));
        }
    }
    for (const ScrewLine& line : card.screws) {
        const float y = screw_line(card, metal, line.leg);
        for (const Length screw : line.at) {
            clips_hems(card) ? draw_clip(ui, along.at(screw), y)
                             : draw_screw(ui, along.at(screw), y);
        }
    }
}

/// The tape: ticks to scale, a figure at each foot (or half meter).
void draw_tape(Ui& ui, const Along& along, Length end, Marks marks, Box tape) {
    const float right = along.at(end);
    ui.ink()->AddRectFilled({tape.x, tape.y}, {right, tape.bottom()}, ui.colours().tape,
                            ui.mm(0.5F));
    ui.ink()->AddRect({tape.x, tape.y}, {right, tape.bottom()}, IM_COL32(0, 0, 0, 255), ui.mm(0.5F),
                      0, ui.mm(0.3F));
    const bool metric = marks == Marks::millimetre;
    const Length tick = metric ? millimetres(50) : inches(1);
    const std::int64_t ticks_a_figure = metric ? 10 : 12;
    const float figure_w =
        ui.text_width(metric ? Text("0000") : say("00 ft"), Size::small) + ui.mm(2);
    const float figure_step = along.at(tick * ticks_a_figure) - along.at(Length());
    // Every figure, or every second, third, …, so that they do not touch.
    const auto every = static_cast<std::int64_t>(std::ceil(figure_w / std::max(1.0F, figure_step)));
    for (std::int64_t i = 1; tick * i < end; ++i) {
        const float x = along.at(tick * i);
        const bool whole = i % ticks_a_figure == 0;
        const float h = whole ? tape.h * 0.5F : (i % 3 == 0 ? tape.h * 0.32F : tape.h * 0.2F);
        ui.ink()->AddLine({x, tape.y}, {x, tape.y + h}, IM_COL32(0, 0, 0, 255),
                          ui.mm(whole ? 0.5F : 0.2F));
        const Text figure =
            metric ? Text(std::to_string(i * 50)) : say("{1} ft", i / ticks_a_figure);
        if (i % (ticks_a_figure * every) == 0 && x + ui.text_width(figure, Size::small) < right) {
            ui.text(x + ui.mm(0.8F), tape.bottom() - ui.line_height(Size::small), figure,
                    Size::small, Align::left, IM_COL32(0, 0, 0, 255));
        }
    }
}

/// Where the lengths of the piece are on the screen.
struct Laid {
    OutlineHeights outline;
    Along along;
    Length stick_left;
    std::vector<MarkLabel> labels;
    LabelsLaid below;

    [[nodiscard]] float beside_metal(const Ui& ui) const {
        return below.rows.height + ui.mm(outline.beside_metal());
    }
    [[nodiscard]] float least(const Ui& ui) const {
        return beside_metal(ui) + ui.mm(outline.metal_least);
    }
};

/// What a bar takes of a list that scrolls.
constexpr float piece_bar_mm = 4;
constexpr float labels_mm_least = 15;  // of them that show at once

Laid laid_out(const Ui& ui, const Card& card, Tapes tapes, Box box, const OutlineHeights& outline) {
    Laid laid{outline, {}, {}, {}, {}};
    laid.stick_left = std::max(card.cut, card.stick_length - card.stick_from);
    laid.along = {box.x, static_cast<float>(static_cast<double>(box.w) /
                                            static_cast<double>(laid.stick_left.nm()))};
    laid.labels = labels_of(card);
    std::vector<float> places;
    for (const MarkLabel& label : laid.labels) {
        places.push_back(laid.along.at(label.at));
    }
    take_bottom(box, ui.mm(outline.metal_least + outline.beside_metal()));
    laid.below = lay_labels(ui, laid.labels, places, tapes, box);
    return laid;
}

}  // namespace

void draw_hatching(Ui& ui, Box box) {
    ImDrawList* const ink = ui.ink();
    ink->AddRectFilled({box.x, box.y}, {box.right(), box.bottom()}, ui.colours().waste_ground);
    ink->PushClipRect({box.x, box.y}, {box.right(), box.bottom()}, true);
    const float step = ui.mm(2.2F);
    for (float x = box.x - box.h; x < box.right(); x += step) {
        ink->AddLine({x, box.bottom()}, {x + box.h, box.y}, ui.colours().waste, ui.mm(0.4F));
    }
    ink->PopClipRect();
    ink->AddRect({box.x, box.y}, {box.right(), box.bottom()}, ui.colours().waste, 0, 0,
                 ui.mm(0.3F));
}

float piece_height(const Ui& ui, const Card& card, Tapes tapes, Box box) {
    return laid_out(ui, card, tapes, box, roomy_outline).least(ui);
}

bool has_room_for_heading(const Ui& ui, Box box) {
    return box.h >=
           ui.mm(tight_outline.metal_least + tight_outline.beside_metal() + labels_mm_least);
}

namespace {

/// The rest of the stick, hatched.
void draw_rest(Ui& ui, const Card& card, Box rest) {
    draw_hatching(ui, rest);
    const Text words = card.left_over >= inches(1) ? say("not this piece") : Text();
    if (rest.w > ui.text_width(words, Size::small) + ui.mm(4)) {
        const float w = ui.text_width(words, Size::small) + ui.mm(3);
        const float h = ui.line_height(Size::small) + ui.mm(1);
        ui.ink()->AddRectFilled({rest.mid_x() - w / 2, rest.mid_y() - h / 2},
                                {rest.mid_x() + w / 2, rest.mid_y() + h / 2}, ui.colours().paper);
        ui.text(rest.mid_x(), rest.mid_y() - h / 2 + ui.mm(0.5F), words, Size::small, Align::centre,
                ui.colours().ink);
    }
}

}  // namespace

void draw_piece(Ui& ui, const Card& card, Tapes tapes, Box box, std::string_view list,
                const Text& after) {
    const float after_h =
        after.empty() ? 0 : ui.mm(1) + ui.paragraph_height(box.w, after, Size::small);
    Laid laid = laid_out(ui, card, tapes, box, roomy_outline);
    if (box.h < laid.least(ui) + after_h) {
        box.w -= ui.mm(piece_bar_mm);
        laid = laid_out(ui, card, tapes, box, tight_outline);
    }
    const auto& [outline, along, stick_left, labels, below] = laid;
    Box metal = box;
    take_top(metal, ui.mm(above_metal_mm));
    metal.h = std::clamp(box.h - laid.beside_metal(ui) - after_h, ui.mm(outline.metal_least),
                         std::max(ui.mm(metal_mm_most), box.h * metal_part_most));
    const float cut_x = along.at(card.cut);
    if (stick_left > card.cut) {
        draw_rest(ui, card, {cut_x, metal.y, metal.right() - cut_x, metal.h});
    }
    draw_metal(ui, card, along, metal);
    const Box tape{metal.x, metal.bottom() + ui.mm(outline.to_tape), metal.w, ui.mm(outline.tape)};
    draw_marks(ui, card, along, metal, tape.y);
    draw_tape(ui, along, stick_left, tapes.marks, tape);
    // What is scrolled up ends at the tape's line.
    const Box view{box.x, tape.bottom() + ui.mm(0.3F), box.w + ui.mm(piece_bar_mm),
                   std::max(0.0F, box.bottom() - tape.bottom() - ui.mm(0.3F))};
    const Box moving = ui.begin_scroll(list, view);
    const float top = moving.y - ui.mm(0.3F);
    laid.below.rows.move_down(top - box.y);
    draw_labels(ui, labels, laid.below, tapes.marks, tape.bottom());
    const float labels_end = top + laid.below.rows.height;
    if (!after.empty()) {
        ui.paragraph(box.x, labels_end + ui.mm(1), box.w, after, Size::small);
    }
    // The last row, too, can be scrolled up to the tape.
    const bool fits = laid.below.rows.height + after_h <= view.h + 1;
    const float last = laid.below.rows.labels.empty() ? 0 : laid.below.rows.labels.back().box.y;
    ui.end_scroll(fits ? 0 : std::max(laid.below.rows.height + after_h, last - moving.y + view.h));
}

}  // namespace hemline
