#include "field/screens/roof/draw_roof_plan.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

#include "engine/work/roof_solid.h"
#include "field/screens/card/draw_solid.h"
#include "field/screens/page/frame.h"
#include "field/screens/roof/closer_sheet.h"
#include "field/screens/roof/roof_lines.h"
#include "field/screens/roof/roof_words.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float around_mm = 7.5F;  // the lengths outside the eaves
constexpr float row_mm = 12;
constexpr float whole_roof_mm = 40;
constexpr float cut_off_mm = 2;  // words of a part of the roof stay clear of where it is cut off
constexpr float turned_mm = 5;   // dragged farther, it is seen from a corner
constexpr std::size_t suspects_most = 3, offered_most = 4;

/// The longest first, eaves before what is inside: they get their letters and lengths first.
std::vector<std::size_t> in_turn_of(const RoofSheet& sheet) {
    std::vector<std::size_t> order(sheet.lines.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const SheetLine &one = sheet.lines[a], &other = sheet.lines[b];
        return one.outer != other.outer ? one.outer : one.length > other.length;
    });
    return order;
}

}  // namespace

std::vector<LetterDrawn> draw_sheet(Ui& ui, const RoofSheet& sheet, Box page) {
    draw_planes(ui, sheet);
    draw_roof_lines(ui, sheet);
    RoofWords words(ui, sheet, page, sheet.marks);
    std::vector<LetterDrawn> letters;
    const std::vector<std::size_t> order = in_turn_of(sheet);
    for (const std::size_t i : order) {
        const SheetLine& line = sheet.lines[i];
        if (const auto mark = line.letter.empty() ? std::nullopt : words.mark(line)) {
            letters.push_back({&line, *mark});
        }
    }
    for (const SheetGap& gap : sheet.gaps) {
        ui.ink()->AddCircleFilled(gap.from, ui.mm(1.6F), ui.colours().chalk);
        words.beside(gap.from, say("next side, from here"));
    }
    for (const std::size_t i : order) {
        words.length(sheet.lines[i]);
    }
    for (const SheetPlane& plane : sheet.planes) {
        words.fall(plane);
    }
    return letters;
}

namespace {

/// Whether it is seen from a corner: dragged aside, until it is dragged back or touched.
bool draw_turned(Ui& ui, const State& state, RoofDraft& draft, Box box) {
    draft.drag_mm += ui.dragged(box).x / ui.mm(1);
    const float far = std::abs(draft.drag_mm);
    const std::vector<Facet> solid =
        far < turned_mm ? std::vector<Facet>() : roof_solid(state.bodies);
    if (solid.empty()) {
        return false;
    }
    const float line = ui.line_height(Size::small);
    ui.text(box.mid_x(), box.bottom() - line, say("Touch it: from above again."), Size::small,
            Align::centre);
    box.h -= line + ui.mm(1);
    std::vector<SolidPart> parts(2);
    for (const Facet& facet : solid) {
        parts[facet.leg].facets.push_back(facet);
    }
    parts[0].fill = ui.colours().metal;
    parts[1].fill = ui.colours().waste_ground;
    const double raised = std::max(30.0, 90 - 2.5 * far);
    draw_solid(ui, parts, {}, {-draft.drag_mm * 0.8, raised}, inset(box, ui.mm(4)));
    return true;
}

/// A button below the drawing.
struct Offer {
    std::string name;
    Text label;
};

/// The edges that the last touch may have meant, to choose from or to be looked at closer, and the
/// way back to the whole roof.
std::vector<Offer> offers_of(const State& state, const RoofDraft& draft) {
    std::vector<Offer> offers;
    for (const std::string& edge : draft.near) {
        if (const EdgeWork* const work = edge_of(state, edge)) {
            offers.push_back({"near " + edge, title_of(work->edge)});
        }
    }
    if (!offers.empty() && draft.closer.times < closer_times_most) {
        offers.push_back({"closer", say("Closer")});
    }
    if (draft.closer.times > 0) {
        offers.push_back({"whole roof", say("Whole roof")});
    }
    return offers;
}

/// Cuts the buttons off the bottom of the box; returns the name of the one touched, or empty.
std::string draw_offers(Ui& ui, const std::vector<Offer>& offers, Box& box) {
    if (offers.empty()) {
        return {};
    }
    const float gap = ui.mm(gap_mm);
    float least = ui.mm(target_min);
    for (const Offer& offer : offers) {
        least = std::max(least, ui.label_width(offer.label));
    }
    const auto room = static_cast<std::size_t>((box.w + gap) / (least + gap));
    const std::size_t wide = std::clamp(room, std::size_t{1}, offers.size());
    const std::size_t rows = (offers.size() + wide - 1) / wide;
    std::string touched;
    Box below = take_bottom(box, static_cast<float>(rows) * ui.mm(row_mm + gap_mm) - gap);
    take_bottom(box, gap);
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (i % wide == 0 && i > 0) {
            take_top(below, ui.mm(row_mm) + gap);
        }
        Box row = below;
        row.h = ui.mm(row_mm);
        Box place = columns(row, static_cast<int>(wide), gap)[i % wide];
        place.w = offers.size() == 1 ? std::min(place.w, ui.mm(whole_roof_mm)) : place.w;
        if (ui.button(offers[i].name, offers[i].label, place)) {
            touched = offers[i].name;
        }
    }
    return touched;
}

/// A drag moves what is looked at closer.
void move_look(const Ui& ui, CloserLook& look, Box box) {
    const Ui::Moved moved = ui.dragged(box);
    look.x_mm += moved.x / ui.mm(1);
    look.y_mm += moved.y / ui.mm(1);
}

/// What a touch meant: one edge, which it returns, several to choose from, or more than can be
/// offered, which are looked at closer.
std::string take_touch(const Ui& ui, const RoofSheet& whole, const RoofReach& reach,
                       std::vector<std::string> meant, Box box, RoofDraft& draft) {
    draft.near.clear();
    if (meant.empty()) {
        return {};
    }
    if (meant.size() == 1) {
        return meant.front();
    }
    const ImVec2 touch = ImGui::GetIO().MousePos;
    draft.if_closer = closer_look(ui, whole, draft.closer, box, reach.nearest(meant, touch), touch);
    if (reach.unlettered(meant) > offered_most && draft.closer.times < closer_times_most) {
        draft.closer = draft.if_closer;
        return {};
    }
    meant.resize(std::min(meant.size(), offered_most));
    draft.near = std::move(meant);
    return {};
}

/// The letters, and all that lies beside them; returns the edge touched, or empty.
std::string draw_touched(Ui& ui, const RoofSheet& whole, const RoofSheet& sheet, RoofDraft& draft,
                         Box box) {
    const bool is_closer = draft.closer.times > 0;
    const Box page = is_closer ? inset(box, ui.mm(cut_off_mm)) : box;
    ImGui::PushClipRect({box.x, box.y}, {box.right(), box.bottom()}, true);
    const RoofReach reach(ui, sheet, letters_touched(ui, draw_sheet(ui, sheet, page)));
    ImGui::PopClipRect();
    std::optional<std::vector<std::string>> meant;
    for (const LetterTouch& letter : reach.letters()) {
        const Edge& edge = letter.line->work->edge;
        if (ui.area("roof " + edge.id, letter.box, title_of(edge))) {
            meant = reach.at_letter(letter);
        }
    }
    if (ui.area("roof plan", box,
                is_closer ? say("A part of the roof, larger") : say("The roof from above")) &&
        !meant) {
        meant = reach.beside_letters(ImGui::GetIO().MousePos);
    }
    return meant ? take_touch(ui, whole, reach, *meant, box, draft) : std::string();
}

}  // namespace

std::string draw_roof_plan(Ui& ui, const State& state, RoofDraft& draft, const std::string& next,
                           Box box) {
    if (draft.closer.times == 0 && draw_turned(ui, state, draft, box)) {
        draft.drag_mm =
            ui.area("roof plan", box, say("The roof from a corner")) ? 0 : draft.drag_mm;
        return {};
    }
    const float around = ui.mm(around_mm);
    const Box all = inset(box, around);
    const std::string offered = draw_offers(ui, offers_of(state, draft), box);
    RoofSheet whole = fitted_sheet(roof_sheet(ui, state, all), all, inset(box, around));
    whole.now = next;
    if (draft.closer.times > 0) {
        move_look(ui, draft.closer, box);
    }
    std::string touched = draw_touched(
        ui, whole, draft.closer.times > 0 ? closer_sheet(ui, whole, draft.closer, box) : whole,
        draft, box);
    if (offered == "closer") {
        draft.closer = draft.if_closer;
    } else if (offered == "whole roof") {
        draft.closer = {};
    } else if (!offered.empty()) {
        touched = offered.substr(offered.find(' ') + 1);
    }
    if (!touched.empty() || !offered.empty()) {
        draft.near.clear();
    }
    return touched;
}

float draw_roof_words(Ui& ui, const State& state, Box box) {
    const Outline& outline = state.outline->outline;
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, state_words(outline), Size::bold);
    if (outline.state == OutlineState::misses) {
        y += ui.paragraph(box.x, y, box.w,
                          outline.suspects.empty()
                              ? say("No single correction closes it: read the lengths again.")
                              : say("One of these would close it; measure there again:"),
                          Size::small);
        for (std::size_t i = 0; i < std::min(suspects_most, outline.suspects.size()); ++i) {
            y += ui.paragraph(box.x, y, box.w, suspect_words(outline.suspects[i]), Size::bold);
        }
    }
    for (const OutlineNote& note : outline.notes) {
        y += ui.paragraph(box.x, y, box.w, note.what, Size::small);
    }
    std::string beside;
    for (const std::string& id : state.outline->beside) {
        beside += (beside.empty() ? "" : ", ") + id;
    }
    if (!beside.empty()) {
        y += ui.paragraph(box.x, y, box.w, say("Not on this outline: {1}.", beside), Size::small,
                          ui.colours().soft);
    }
    return y - box.y;
}

}  // namespace hemline
