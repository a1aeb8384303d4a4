#include "engine/work/end_cap.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/space.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/girth.h"
#include "engine/trim/practice.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/work/mark_deeds.h"

namespace hemline {

namespace {

double cap_mm(Length length) { return static_cast<double>(length.nm()) / 1e6; }

Space turned_flat(const Space& a, double degrees) {
    const double c = std::cos(radians_of(degrees)), s = std::sin(radians_of(degrees));
    return {a.x * c - a.y * s, a.x * s + a.y * c, 0};
}

/// The flange and the face beside it, and the bend between them.
struct CornerLegs {
    std::size_t flange = 0;
    double bend = 0;
};

std::optional<CornerLegs> legs_of_cap(const Section& section, const std::vector<double>& bends) {
    for (std::size_t i = 0; i + 1 < section.legs.size(); ++i) {
        if (section.legs[i].name == LegName::flange && section.legs[i + 1].name == LegName::face &&
            std::abs(bends[i]) < 175) {
            return CornerLegs{i, std::abs(bends[i])};
        }
    }
    return {};
}

/// `beside`: the leg past its free edge, where there is one.
CapLeg leg_of(const SectionLeg& leg, const SectionLeg* beside, bool on_seams,
              const Practice& practice) {
    CapLeg own{leg.width, {}, {}, {}};
    if (beside != nullptr && beside->hem != Hem::none) {
        own.clear = beside->width + practice.hem_notch_clear;
    }
    if (on_seams && leg.lies == LiesOn::deck) {
        own.down = end_fold_least(practice);
    }
    return own;
}

/// A leg as it lies on the page: from the bend to its free edge, and into the plate.
struct LegLine {
    Space along, inward;
};

/// Flange to the left of the bend, y up, both legs below it, the lower edge level.
struct CapLies {
    LegLine flange, face;
    std::vector<Space> plate;  ///< from the flange's lower corner over the bend
};

/// A leg below which the plate cannot go down is told so: its `down` becomes 0.
CapLies lay(EndCap& cap) {
    CapLies lies;
    lies.flange = {{-1, 0, 0}, {0, -1, 0}};
    lies.face.along = turned_flat(lies.flange.along, cap.corner_degrees);
    lies.face.inward = turned_flat(lies.face.along, -90);
    const Space left = lies.flange.along * cap_mm(cap.flange.width);
    const Space right = lies.face.along * cap_mm(cap.face.width);
    const auto go_down = [&](CapLeg& leg, const LegLine& line, const Space& edge) {
        const Space down = edge + line.inward * cap_mm(leg.down);
        if (leg.down > Length() && cross(right - left, down - left).z < 0) {
            lies.plate.push_back(down);
        } else {
            leg.down = Length();  // the plate between the legs reaches further
        }
    };
    go_down(cap.flange, lies.flange, left);
    lies.plate.insert(lies.plate.end(), {left, {0, 0, 0}, right});
    go_down(cap.face, lies.face, right);
    const Space lower = lies.plate.back() - lies.plate.front();
    const double level = -degrees_in(std::atan2(lower.y, lower.x));
    for (Space& p : lies.plate) {
        p = turned_flat(p, level);
    }
    for (LegLine* line : {&lies.flange, &lies.face}) {
        *line = {turned_flat(line->along, level), turned_flat(line->inward, level)};
    }
    return lies;
}

/// The lip outside that side of the plate, its foot cut at 45°: beside the bend, there further out,
/// and back at its foot.
std::vector<Space> lip_along(const CapLeg& leg, const LegLine& line) {
    const double from = cap_mm(cap_relief), to = cap_mm(leg.width - leg.clear);
    const double wide = cap_mm(cap_lip);
    const Space out = line.inward * -wide;
    return {line.along * from, line.along * from + out, line.along * (to - wide) + out,
            line.along * to};
}

Length in_lengths(double mm) { return Length::of_nm(std::llround(mm * 1e6)); }

void lay_out(EndCap& cap, const Practice& practice) {
    CapLies lies = lay(cap);
    std::vector<Space> flange = lip_along(cap.flange, lies.flange);
    const std::vector<Space> face = lip_along(cap.face, lies.face);
    cap.lower = nearest_on(in_lengths(length_of(lies.plate.back() - lies.plate.front())),
                           practice.cut_grid);
    std::reverse(flange.begin(), flange.end());
    const std::ptrdiff_t bend = cap.flange.down > Length() ? 2 : 1;
    std::vector<Space>& all = lies.plate;
    all.insert(all.begin() + bend + 1, face.begin(), face.end());
    all.insert(all.begin() + bend, flange.begin(), flange.end());
    const auto across = std::minmax_element(
        all.begin(), all.end(), [](const Space& a, const Space& b) { return a.x < b.x; });
    const auto up = std::minmax_element(all.begin(), all.end(),
                                        [](const Space& a, const Space& b) { return a.y < b.y; });
    const double left = across.first->x, top = up.second->y;
    const auto on_metal = [&](const Space& p) {
        return FlatPoint{in_lengths(p.x - left).nm(), in_lengths(top - p.y).nm()};
    };
    for (const Space& p : all) {
        cap.outline.push_back(on_metal(p));
    }
    cap.bend = on_metal({});
    cap.flange.fold = {on_metal(flange.back()), on_metal(flange.front())};
    cap.face.fold = {on_metal(face.front()), on_metal(face.back())};
    cap.wide = round_up_to(in_lengths(across.second->x - left), practice.cut_grid);
    cap.high = round_up_to(in_lengths(top - up.first->y), practice.cut_grid);
    const CapLeg &a = cap.flange, &b = cap.face;
    cap.fits_both_ends = a.width == b.width && a.clear == b.clear && a.down == b.down;
}

Text leg_named(LegName leg, const Edge& edge) {
    Card card;
    card.kind = edge.kind;
    if (has_two_pitches(edge)) {
        card.pitches = {*edge.pitch, *edge.pitch2};
    }
    return leg_called(card, leg);
}

}  // namespace

bool takes_end_cap(EdgeKind kind) { return is_cap(kind) || kind == EdgeKind::high_eave; }

std::vector<Side> capped_ends(const Edge& edge) {
    std::vector<Side> ends;
    for (const Side side : {Side::left, Side::right}) {
        if (takes_end_cap(edge.kind) && end_at(edge, side) == End::open) {
            ends.push_back(side);
        }
    }
    return ends;
}

Result<EndCap> end_cap_of(const Edge& edge, const Trim* trim, const Sections& sections,
                          const Practice& practice) {
    const Section* const found = trim == nullptr ? nullptr : sections.find(trim->id);
    if (found == nullptr) {
        return Problem{say("No cross-section is drawn for {1}.",
                           quoted(trim == nullptr ? edge.trim : trim->id)),
                       say("Add its legs to the sections of the catalogue.")};
    }
    const Section section = fitted_to(*found, edge);
    const auto bends = bends_of(section, roof_at(edge));
    if (!bends) {
        return bends.problem();
    }
    const auto legs = legs_of_cap(section, *bends);
    if (!legs) {
        return Problem{say("An end cap closes the corner of flange and face, and this trim has "
                           "none."),
                       say("Choose another trim, or fit a cap to that end by hand.")};
    }
    const SectionLeg* const all = section.legs.data();
    const std::size_t i = legs->flange;
    const bool on_seams = facts_of(edge.kind).closed != Closed::no_side;
    EndCap cap;
    cap.flange = leg_of(all[i], i == 0 ? nullptr : &all[i - 1], on_seams, practice);
    cap.face =
        leg_of(all[i + 1], i + 2 < section.legs.size() ? &all[i + 2] : nullptr, on_seams, practice);
    cap.corner_degrees = 180 - legs->bend;
    for (const CapLeg* leg : {&cap.flange, &cap.face}) {
        if (leg->width - leg->clear < cap_relief + cap_lip + cap_lip) {
            return Problem{say("A leg of {1} leaves no room for an end cap's lip.", leg->width),
                           say("Close that end with a wider trim.")};
        }
    }
    lay_out(cap, practice);
    return cap;
}

EndCap cap_for(const EndCap& cap, Side end) {
    EndCap own = cap;
    if (end == Side::right) {
        const auto other_hand = [&](FlatPoint& p) { p.x = cap.wide.nm() - p.x; };
        std::for_each(own.outline.begin(), own.outline.end(), other_hand);
        for (FlatPoint* p : {&own.bend, &own.flange.fold.a, &own.flange.fold.b, &own.face.fold.a,
                             &own.face.fold.b}) {
            other_hand(*p);
        }
    }
    return own;
}

std::vector<Text> cap_lines(const EndCap& cap, const Edge& edge) {
    const Text flange = leg_named(LegName::flange, edge), face = leg_named(LegName::face, edge);
    std::vector<Text> lines = {
        say("Cut it from flat metal {1} wide and {2} high.", cap.wide, cap.high),
        say("Plate: {1} along the {2}, {3} along the {4}, {5} between them, {6} below.",
            cap.flange.width, flange, cap.face.width, face, fold_words(cap.corner_degrees),
            cap.lower)};
    if (cap.flange.down > Length()) {
        lines.push_back(
            cap.face.down > Length()
                ? say("Below both legs' edges it goes down {1}, square to the leg, to the pans.",
                      cap.flange.down)
                : say("Below the {1}'s edge it goes down {2}, square to the leg, to the pans.",
                      flange, cap.flange.down));
    }
    lines.push_back(
        say("Lips {1} wide along both legs; a wider one is cut at that mark.", cap_lip));
    const Length clear = std::max(cap.flange.clear, cap.face.clear);
    lines.push_back(
        clear > Length()
            ? say("Clip each lip at 45°, {1} from a hemmed edge, and end it {2} "
                  "before the bend.",
                  clear, cap_relief)
            : say("Clip each lip's foot at 45°, and end it {1} before the bend.", cap_relief));
    lines.push_back(say("Fold both lips 90° into the piece, away from you as it is drawn."));
    return lines;
}

}  // namespace hemline
