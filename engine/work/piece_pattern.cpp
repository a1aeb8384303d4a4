#include "engine/work/piece_pattern.h"

#include "engine/quote.h"

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
                                 {MarkKind::drip_clip_45, EndDeed::drip_clip}};

void add_plain(std::vector<EndStep>& steps, const EndMarks& marks) {
    for (const Plain& plain : plain_marks) {
        if (const auto in = marks.in(plain.kind)) {
            steps.push_back({plain.deed, *in, {}});
        }
    }
}

/// The flange's mitre meets the bend where the flange is cut square, else at the end of the metal.
void add_mitres(std::vector<EndStep>& steps, const EndMarks& marks) {
    if (const auto back = marks.in(MarkKind::flange_mitre)) {
        const Length line = marks.in(MarkKind::flange_cut).value_or(Length());
        steps.push_back({EndDeed::flange_mitre, line, *back - line});
    }
}

/// A tab of the face.
void add_tab(std::vector<EndStep>& steps, const EndMarks& marks, double degrees,
             const SnipSizes& sizes) {
    const auto fold = marks.in(MarkKind::tab_fold);
    if (!fold) {
        return;
    }
    steps.push_back({EndDeed::tab, *fold, {}, degrees});
    const bool wrap = marks.card.role == TrimRole::wrap;
    // A wrap's lower corner goes from as far up as the tab is long (common practice).
    steps.push_back(
        {wrap ? EndDeed::low_clip : EndDeed::tab_clip, {}, wrap ? *fold : sizes.tab_clip});
    if (wrap) {
        steps.push_back({EndDeed::relief, *fold, sizes.relief});
    }
}

double corner_at(const Edge& edge, Side side) {
    const auto udeg = side == Side::left ? edge.corner_left_udeg : edge.corner_right_udeg;
    return udeg ? static_cast<double>(*udeg) / 1e6 : 90;
}

}  // namespace

std::vector<EndStep> end_steps(const Card& card, Side side, double corner_degrees,
                               const SnipSizes& sizes) {
    const EndMarks marks{card, side};
    const EndWork work = side == Side::left ? card.left : card.right;
    const double degrees = work == EndWork::corner_tab ? 180 - corner_degrees : 90;
    std::vector<EndStep> steps;
    add_plain(steps, marks);
    add_mitres(steps, marks);
    add_tab(steps, marks, degrees, sizes);
    return steps;
}

Result<Section> section_of(const Card& card, const Sections& sections) {
    const Section* found = sections.find(card.trim);
    if (found == nullptr) {
        return Problem{"No cross-section is drawn for " + quoted(card.trim) + ".",
                       "Add its legs to the sections of the catalogue."};
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
                        end_steps(card, Side::left, corner_at(edge, Side::left), sizes),
                        end_steps(card, Side::right, corner_at(edge, Side::right), sizes));
}

}  // namespace hemline
