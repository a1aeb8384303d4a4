#include "engine/work/piece_pattern.h"

#include <algorithm>

#include "engine/roof/hip.h"
#include "engine/words/quote.h"

namespace hemline {

namespace {

/// The marks of one end, measured inward from it.
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

/// A mark that alone says what is done there.
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

/// The corner line: where the flange's mitre meets the bend.
Length corner_line(const EndMarks& marks) {
    return marks.in(MarkKind::face_cut).value_or(marks.in(MarkKind::flange_cut).value_or(Length()));
}

void add_mitres(std::vector<EndStep>& steps, const EndMarks& marks) {
    if (const auto back = marks.in(MarkKind::flange_mitre)) {
        const Length line = corner_line(marks);
        steps.push_back({EndDeed::flange_mitre, line, *back - line});
    }
}

/// Both legs to one corner point: cut along the two lines, or, where a tab is left past them,
/// folded along them and cut as far out as the tab is long.
void add_corner(std::vector<EndStep>& steps, const EndMarks& marks, const TabFolds& folds) {
    const auto point = marks.in(MarkKind::corner_point);
    if (!point) {
        return;
    }
    const bool tab = marks.has(MarkKind::tab_end);
    const auto near = marks.in(MarkKind::mitre_near), far = marks.in(MarkKind::mitre_far);
    // The outermost of the three places lies as far in as the tab is long.
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

/// A tab of the face: its fold runs along the plumb line where there is one.
void add_tab(std::vector<EndStep>& steps, const EndMarks& marks, double degrees,
             const SnipSizes& sizes) {
    const auto fold = marks.in(MarkKind::tab_fold);
    if (!fold) {
        return;
    }
    const Length slant = marks.in(MarkKind::plumb_top).value_or(*fold) -
                         marks.in(MarkKind::plumb_foot).value_or(*fold);
    steps.push_back({EndDeed::tab, *fold, slant, degrees});
    const bool wrap = marks.card.role == TrimRole::wrap;
    // A wrap's lower corner goes from as far up as the tab is long (common practice).
    steps.push_back(
        {wrap ? EndDeed::low_clip : EndDeed::tab_clip, {}, wrap ? *fold : sizes.tab_clip});
    if (const auto relief = marks.in(MarkKind::relief)) {
        steps.push_back({EndDeed::relief, *relief, sizes.relief});
    }
}

/// A face cut away: square at an inside corner, along the plumb line at a peak or a foot without a
/// tab. At a peak the flange runs on and is folded over.
void add_face_cut(std::vector<EndStep>& steps, const EndMarks& marks) {
    const auto top = marks.in(MarkKind::plumb_top), low = marks.in(MarkKind::plumb_foot);
    const bool plumb = top && low && !marks.has(MarkKind::tab_fold);
    if (plumb) {
        steps.push_back({EndDeed::face_slant, *low, *top - *low});
        steps.push_back({EndDeed::drip_cut, *low, {}});
    } else if (const auto in = marks.in(MarkKind::face_cut)) {
        steps.push_back({EndDeed::face_cut, *in, {}});
    }
    if (const auto fold = marks.in(MarkKind::end_fold)) {
        const bool flange_alone = marks.has(MarkKind::face_cut);
        steps.push_back({flange_alone ? EndDeed::flange_fold : EndDeed::fold_down, *fold, {}});
    }
}

}  // namespace

TabFolds tab_folds(const Card& card, const Edge& edge, Side side) {
    const EndWork work = side == Side::left ? card.left : card.right;
    TabFolds folds;
    if (work == EndWork::corner_tab) {
        folds.tab = degrees_of(half_turn - stated_corner(edge, side).value_or(square_out));
    }
    const Slope pitch = edge.pitch.value_or(rise_in_12(6));
    const double near = degrees_of(pitch), far = degrees_of(edge.pitch2.value_or(pitch));
    if (work == EndWork::eave_foot) {
        folds.near = 90 - near;
        folds.far = 90 - far;
    } else if (work == EndWork::top_mitre) {
        folds.near = 2 * near;
        folds.far = 2 * far;
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
    add_tab(steps, marks, folds.tab, sizes);
    add_face_cut(steps, marks);
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
