#include "engine/work/piece_pattern.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/cut_offset.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The marks of an end, measured inward from it.
struct EndMarks {
    const Card& card;
    Side side;

    [[nodiscard]] std::optional<Length> in(MarkKind kind) const {
        for (const Mark& mark : card.marks) {
            if (mark.kind == kind && mark.toward == side) {
                return side == Side::left ? mark.at : card.cut - mark.at;
            }
        }
        return {};
    }
    [[nodiscard]] bool has(MarkKind kind) const { return in(kind).has_value(); }
};

/// A mark that by itself says what is done there.
struct Plain {
    MarkKind kind;
    EndDeed deed;
};
constexpr Plain plain_marks[] = {{MarkKind::hem_notch, EndDeed::hem_notch},
                                 {MarkKind::hem_clip_45, EndDeed::hem_clip},
                                 {MarkKind::flange_cut, EndDeed::flange_cut},
                                 {MarkKind::drip_clip_45, EndDeed::drip_clip},
                                 {MarkKind::turn_up, EndDeed::turn_up}};

void add_plain(std::vector<EndStep>& steps, const EndMarks& marks) {
    for (const Plain& plain : plain_marks) {
        if (const auto in = marks.in(plain.kind)) {
            steps.push_back({plain.deed, *in, {}});
        }
    }
}

/// The corner line: where the flange's miter meets the bend.
Length corner_line(const EndMarks& marks) {
    if (const auto top = marks.in(MarkKind::corner_top)) {
        return *top;
    }
    return marks.in(MarkKind::face_cut).value_or(marks.in(MarkKind::flange_cut).value_or(Length()));
}

void add_mitres(std::vector<EndStep>& steps, const EndMarks& marks) {
    if (const auto back = marks.in(MarkKind::flange_mitre)) {
        const Length line = corner_line(marks);
        steps.push_back({EndDeed::flange_mitre, line, *back - line});
    }
}

/// Both legs to the same corner point: cut along the two lines, or, where a tab is left past them,
/// folded along them and cut a tab's length further out.
void add_corner(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds) {
    const auto point = marks.in(MarkKind::corner_point);
    if (!point) {
        return;
    }
    const bool tab = marks.has(MarkKind::tab_end);
    const auto near = marks.in(MarkKind::mitre_near), far = marks.in(MarkKind::mitre_far);
    // The outermost of the three places lies a tab's length in from the end.
    const Length left =
        tab ? std::min({*point, near.value_or(*point), far.value_or(*point)}) : Length();
    const auto add = [&](const std::optional<Length>& back, EndDeed cut, EndDeed fold,
                         double degrees) {
        const Length run = back.value_or(*point) - *point;
        steps.push_back({cut, *point - left, run});
        if (left > Length()) {
            steps.push_back({fold, *point, run, degrees});
        }
    };
    add(near, EndDeed::flange_mitre, EndDeed::flange_tab, folds.near);
    add(far, EndDeed::face_mitre, EndDeed::face_tab, folds.far);
}

/// A line across the face that is not square to the piece: plumb, or where two faces meet.
struct Slanted {
    std::optional<Length> top, low;
};
Slanted slanted_line(const EndMarks& marks) {
    const bool corner = marks.has(MarkKind::corner_top);
    return {marks.in(corner ? MarkKind::corner_top : MarkKind::plumb_top),
            marks.in(corner ? MarkKind::corner_low : MarkKind::plumb_foot)};
}

/// A tab of the face: its fold runs along the plumb line where there is one.
void add_tab(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds,
             const SnipSizes& sizes) {
    const auto fold = marks.in(MarkKind::tab_fold);
    if (!fold) {
        return;
    }
    const Slanted line = slanted_line(marks);
    const Length top = line.top.value_or(*fold);
    steps.push_back({EndDeed::tab, *fold, top - line.low.value_or(*fold), folds.tab});
    if (folds.lean > 0) {
        // Folded along the leaning line, the tab's upper edge would run through the neighbor's
        // flange.
        steps.push_back({EndDeed::face_clear, top, top, folds.lean});
    }
    const bool wrap = marks.card.role == TrimRole::wrap;
    // A wrap's lower corner is cut from a tab's length up (common practice).
    steps.push_back(
        {wrap ? EndDeed::low_clip : EndDeed::tab_clip, {}, wrap ? top : sizes.tab_clip});
    if (const auto relief = marks.in(MarkKind::relief)) {
        steps.push_back({EndDeed::relief, *relief, sizes.relief});
    }
}

/// The face is cut off: square at an inside corner, along the plumb line at a peak or at a foot
/// without a tab. At a peak the flange runs on and is folded over.
void add_face_cut(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds) {
    const auto [top, low] = slanted_line(marks);
    if (top && low && !marks.has(MarkKind::tab_fold)) {
        steps.push_back({EndDeed::face_slant, *low, *top - *low});
        steps.push_back({EndDeed::drip_cut, *low, {}});
    } else if (const auto in = marks.in(MarkKind::face_cut)) {
        steps.push_back({EndDeed::face_cut, *in, {}});
    }
    if (const auto fold = marks.in(MarkKind::end_fold)) {
        const bool flange_alone = marks.has(MarkKind::face_cut);
        steps.push_back(
            {flange_alone ? EndDeed::flange_fold : EndDeed::fold_down, *fold, {}, folds.end});
    }
}

/// A wall leg wrapped round the corner of its wall: plumb there, and clear of the roof below it.
void add_wrap(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds) {
    const auto fold = marks.in(MarkKind::wrap_fold);
    if (!fold) {
        return;
    }
    const Length slant = marks.in(MarkKind::wrap_top).value_or(*fold) - *fold;
    steps.push_back({EndDeed::face_tab, *fold, slant, folds.tab});
    if (const auto end = marks.in(MarkKind::wrap_end)) {
        steps.push_back({EndDeed::face_off, *end, {}});
        steps.push_back({EndDeed::face_clear, *fold, *fold - *end, folds.rise});
    }
}

/// The flange that runs on past the corner line lies on the other roof beyond the valley.
void add_valley_fold(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds) {
    const auto line = marks.in(MarkKind::face_cut), outer = marks.in(MarkKind::valley_fold);
    if (line && outer && folds.valley != 0) {
        steps.push_back({EndDeed::flange_fold, *line, *outer - *line, -folds.valley});
    }
}

}  // namespace

/// Between square-cut fascias: bent less than at plumb ones, and along a line that leans.
void lean_folds(TabFolds& folds, const Edge& edge, Side side) {
    auto corner = roof_corner(edge, side);
    if (!corner || edge.kind != EdgeKind::eave) {
        return;
    }
    folds.tab = square_faces_bend_degrees(*corner);
    for (int run = 0; run < 2; ++run) {
        const auto lean = square_face_setback(feet(1), *corner);
        const double tangent = lean ? static_cast<double>(lean->nm()) / feet(1).nm() : 0;
        folds.lean += degrees_in(std::atan(tangent));
        std::swap(corner->pitch1, corner->pitch2);
    }
}

TabFolds tab_folds(const Card& card, const Edge& edge, Side side) {
    const EndWork work = side == Side::left ? card.left : card.right;
    const Side on_edge = card.edge_left == Side::left ? side : other(side);
    TabFolds folds;
    const Angle corner = stated_corner(edge, on_edge).value_or(square_out);
    if (work == EndWork::corner_tab || work == EndWork::apron_corner ||
        work == EndWork::wall_foot) {
        folds.tab = degrees_of(half_turn - corner);
    }
    if (work == EndWork::corner_tab && edge.fascia == Fascia::square_cut) {
        lean_folds(folds, edge, on_edge);
    }
    const Slope pitch = edge.pitch.value_or(rise_in_12(6));
    const double near = degrees_of(pitch), far = degrees_of(edge.pitch2.value_or(pitch));
    // The wall round a corner climbs the roof by what of it runs up the slope.
    folds.rise = degrees_in(std::atan(std::tan(radians_of(near)) * std::sin(radians_of(corner))));
    if (work == EndWork::eave_foot) {
        folds.near = 90 - near;
        folds.far = 90 - far;
    } else if (work == EndWork::top_mitre) {
        folds.near = 2 * near;
        folds.far = 2 * far;
    } else if (work == EndWork::peak) {
        const End end = end_at(edge, on_edge);
        folds.end = end == End::ridge ? near + far : end == End::eave ? 90 + near : near;
    } else if (work == EndWork::corner_in) {
        const auto corner = roof_corner(edge, on_edge);
        folds.valley = corner ? bend_across_degrees(*corner) : 0;
    }
    return folds;
}

std::vector<EndStep> end_steps(const Card& card, Side side, const TabFolds& folds,
                               const SnipSizes& sizes) {
    const EndMarks marks{card, side};
    std::vector<EndStep> steps;
    add_plain(steps, marks);
    add_mitres(steps, marks);
    add_corner(steps, marks, folds);
    add_tab(steps, marks, folds, sizes);
    add_face_cut(steps, marks, folds);
    add_valley_fold(steps, marks, folds);
    add_wrap(steps, marks, folds);
    if (const auto kick = marks.in(MarkKind::kick_fold)) {
        steps.push_back({EndDeed::kick_out, *kick, {}, degrees_of(sizes.kick_out)});
    }
    return steps;
}

Result<Section> section_of(const Card& card, const Sections& sections) {
    const Section* found = sections.find(card.trim);
    if (found == nullptr) {
        return Problem{say("No cross-section is drawn for {1}.", quoted(card.trim)),
                       say("Add its legs to the sections of the catalogue.")};
    }
    Section section = *found;
    for (SectionLeg& leg : section.legs) {
        for (const Leg& width : card.legs) {
            leg.width = width.name == leg.name ? width.width : leg.width;
        }
    }
    return section;
}

Result<FlatPattern> piece_pattern(const Card& card, const Edge& edge, const Sections& sections,
                                  const SnipSizes& sizes) {
    const Result<Section> section = section_of(card, sections);
    if (!section) {
        return section.problem();
    }
    const Result<std::vector<double>> bends = bends_of(*section, roof_at(edge));
    if (!bends) {
        return bends.problem();
    }
    return flat_pattern(*section, *bends, card.cut,
                        end_steps(card, Side::left, tab_folds(card, edge, Side::left), sizes),
                        end_steps(card, Side::right, tab_folds(card, edge, Side::right), sizes));
}

}  // namespace hemline
