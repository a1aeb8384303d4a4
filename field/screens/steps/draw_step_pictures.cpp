#include "field/screens/steps/draw_step_pictures.h"

#include <algorithm>

#include "engine/words/result.h"
#include "engine/work/mark_deeds.h"
#include "engine/work/procedure_words.h"
#include "field/screens/card/draw_solid.h"

namespace hemline {

namespace {

constexpr float narrow_mm = 90, row_mm = 32, picture_gap_mm = 4;
constexpr float beside_mm = 33, beside_part = 0.26F, words_mm = 24;
constexpr double raised = 28, turned = 38;
constexpr const char* headings[] = {phrase("Before"), phrase("During"), phrase("Done")};

Painted painted_on(const State& state, const std::string& trim) {
    const Section* const section = state.sections.find(trim);
    return section == nullptr ? Painted::none : section->painted;
}

Colour colour_of(const Palette& p, Stuff stuff) {
    switch (stuff) {
        case Stuff::sealant:
        case Stuff::fastener:
        case Stuff::person:
            break;
        case Stuff::wood:
            return p.waste_ground;
        case Stuff::membrane:
            return p.soft;
        case Stuff::panel:
            return p.metal_low;
        case Stuff::strip:
            return p.good;
        case Stuff::film:
            return p.chalk;
        case Stuff::gauge:
            return p.tape;
    }
    return p.ink;
}

/// The parts of a picture, or of all three.
void add_parts(std::vector<SolidPart>& parts, const StepPicture& picture, Painted painted,
               const Palette& palette) {
    if (!picture.own.empty()) {
        parts.push_back({picture.own, painted, false, true});
    }
    if (!picture.other.empty()) {
        parts.push_back({picture.other, painted, true, false});
    }
    for (const Prop& prop : picture.props) {
        parts.push_back({prop.facets, Painted::both, false, false, colour_of(palette, prop.stuff)});
    }
}

void draw_metal(Ui& ui, const State& state, const StepPictures& pictures, std::size_t i, Box box) {
    const Painted painted = painted_on(state, pictures.trim);
    std::vector<SolidPart> parts, all;
    add_parts(parts, pictures.before_during_done[i], painted, ui.colours());
    for (const StepPicture& picture : pictures.before_during_done) {
        add_parts(all, picture, painted, ui.colours());
    }
    const double from = pictures.side == Side::right ? turned : -turned;
    draw_solid(ui, parts, {}, {from, raised}, box, all);
}

/// Returns the height used.
float draw_words(Ui& ui, std::size_t i, const StepPicture& picture, Box box) {
    float y = box.y + ui.paragraph(box.x, box.y, box.w, say(headings[i]), Size::bold);
    y += ui.paragraph(box.x, y, box.w, picture.says, Size::small);
    return y - box.y;
}

}  // namespace

void draw_finished_piece(Ui& ui, const State& state, const EdgeWork& work, const Step& step,
                         Box box) {
    if (step.piece == 0) {
        return;
    }
    const Result<Card> card = make_card(state.job, state.plan, state.catalogue, work.edge.id,
                                        role_of(step.rule->each), step.piece);
    const auto pattern = card ? piece_pattern(*card, work.edge, state.sections)
                              : Result<FlatPattern>(card.problem());
    if (!pattern) {
        return;
    }
    const Side side = end_worked(*card);
    const std::vector<Facet> facets =
        folded_end(*card, work.edge, *pattern, side, step_of(FoldStep::finished));
    draw_solid(ui, {{facets, painted_on(state, card->trim), false, true}},
               legs_called(*card, pattern->legs.names),
               {side == Side::right ? turned : -turned, raised}, box);
}

float draw_step_pictures(Ui& ui, const State& state, const StepPictures& pictures, float room,
                         Box box) {
    const auto& all = pictures.before_during_done;
    if (box.w < ui.mm(narrow_mm)) {
        float used = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            Box row{box.x, box.y + used, box.w, ui.mm(row_mm)};
            draw_metal(ui, state, pictures, i, take_left(row, row.w / 2));
            take_left(row, ui.mm(picture_gap_mm));
            used += std::max(ui.mm(row_mm), draw_words(ui, i, all[i], row)) + ui.mm(picture_gap_mm);
        }
        return used;
    }
    const float h =
        std::min(std::max(ui.mm(beside_mm), room - ui.mm(words_mm)), box.w * beside_part);
    float words = 0;
    const std::vector<Box> places =
        columns({box.x, box.y, box.w, h}, static_cast<int>(all.size()), ui.mm(picture_gap_mm));
    for (std::size_t i = 0; i < all.size(); ++i) {
        draw_metal(ui, state, pictures, i, places[i]);
        words = std::max(
            words, draw_words(ui, i, all[i], {places[i].x, places[i].bottom(), places[i].w, 0}));
    }
    return h + words + ui.mm(picture_gap_mm);
}

}  // namespace hemline
