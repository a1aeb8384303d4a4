// Fastens a run: screws kept out of laps and tabs, beads kept inside laps, sealant by volume.
#include "engine/work/fixing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"
#include "engine/trim/hem_clearance.h"
#include "engine/work/pan_screws.h"

namespace hemline {
namespace {

/// 10.1 US fl oz; a US fluid ounce is 231/128 in³.
constexpr double cartridge_cubic_inches = 10.1 * 231.0 / 128.0;

/// From `first` to `last` every `spacing`. Where the last gap would be under a quarter of the
/// spacing, the second to last screw moves halfway: two screws side by side hold no more than one.
std::vector<Length> centres_between(Length first, Length last, Length spacing) {
    spacing = std::max(spacing, sixteenths(1));
    std::vector<Length> centres;
    for (Length at = first; at < last; at += spacing) {
        centres.push_back(at);
    }
    const std::size_t count = centres.size();
    if (count >= 2 && (last - centres.back()) * 4 < spacing) {
        const Length before = centres[count - 2];
        centres.back() =
            before + round_down_to(Length::of_nm((last - before).nm() / 2), sixteenths(1));
    }
    centres.push_back(last);
    return centres;
}

/// From the end of the metal to where a head lies whole behind the line that a leg is cut or folded
/// along: `at_bend` from the end at the bend, `back` farther at the leg's outer edge.
///
///      outer edge ─────────╱────────
///                         ╱ ⊙           ⊙ head on the screws' line, touching
///      bend ────────────╱───────────
Length clear_of_line(Length at_bend, Length back, Length width) {
    const auto nm = [](Length length) { return static_cast<double>(length.nm()); };
    const double slant = std::hypot(nm(width), nm(back)) / nm(width);
    const double on_line = nm(at_bend) + nm(back) * (1 - nm(screw_line_of(width)) / nm(width));
    return Length::of_nm(std::llround(std::ceil(on_line + nm(screw_head_radius) * slant)));
}

Length middle_of(Length from, Length to) {
    const Length middle = Length::of_nm(from.nm() + (to - from).nm() / 2);
    return std::clamp(nearest_on(middle, sixteenths(1)), from, to);
}

/// Across a lap the gap is lap + two margins: the margin gets smaller so that the gap keeps to the
/// spacing.
Length lap_margin(Length lap, const Practice& practice) {
    const Length half = Length::of_nm((practice.screw_spacing - lap).nm() / 2);
    return std::max(lap_margin_least,
                    std::min(practice.screw_margin, round_down_to(half, sixteenths(1))));
}

/// Where screws may stand on a piece on closures: out of laps and tabs, whole heads in metal.
Stretch room_for_screws(Length cut, const FreeEnds& ends, const Practice& practice) {
    const auto in = [&](const FreeEnd& end) {
        const Length past =
            end.laps ? lap_margin_least : Length::of_nm(practice.screw_margin.nm() / 2);
        return std::max(end.metal, end.length + past);
    };
    return {in(ends.left), cut - in(ends.right)};
}

/// How far the metal's left end lies from the left end of the edge; below 0 where it runs past it.
Length begins_on(const Run& run, const PlannedPiece& piece, const Edge& edge, const Trim& trim,
                 const Practice& practice) {
    const Side first = first_fitted(edge);
    const bool outermost = piece.number == run.pieces.front().number;
    const Length from =
        outermost ? piece.begins - end_metal(edge, first, trim, practice).added() : piece.begins;
    return first == Side::left ? from : covered_by(run) - from - piece.cut;
}

/// Two screws a pan along each line, each by the pans of its own roof.
void put_on_pans(std::vector<ScrewLine>& lines, const Run& run, const PlannedPiece& piece,
                 const Edge& edge, const Trim& trim, const Practice& practice) {
    const FreeEnds ends = free_ends_of(run, piece, edge, trim, practice);
    const Length length = covered_by(run);
    const Closures closures = closures_of(edge, length, practice);
    const Length begins = begins_on(run, piece, edge, trim, practice);
    for (std::size_t i = 0; i < lines.size() && i < closures.sides.size(); ++i) {
        const ClosureSide& side = closures.sides[i];
        lines[i].at = side.count == 0
                          ? screws_of(piece.cut, ends.left, ends.right, practice)
                          : pan_screws(side, length, begins,
                                       room_for_screws(piece.cut, ends, practice), practice);
    }
}

/// How far from an underlap's end a clip finds the hem again.
Length past_notch(const Run& run, const Edge& edge, const Practice& practice) {
    const MetalFamily family = metal_family(metal_of(edge, practice.site));
    return run.lap + hem_clearance(family, run.lap, practice) + clip_half_width;
}

void mirror(std::vector<ScrewLine>& lines, Length cut) {
    for (ScrewLine& line : lines) {
        std::reverse(line.at.begin(), line.at.end());
        for (Length& screw : line.at) {
            screw = cut - screw;
        }
    }
}

}  // namespace

bool clips_hems(EdgeKind kind, TrimRole role) {
    return kind == EdgeKind::valley && role == TrimRole::main;
}

bool is_riveted_down(EdgeKind kind, const Trim& trim) {
    return kind == EdgeKind::sidewall && trim.role == TrimRole::main && trim.panels == Panels::over;
}

Length screw_line_of(Length leg) {
    const double nm = static_cast<double>(leg.nm()) * screw_line_share;
    return nearest_on(Length::of_nm(std::llround(nm)), sixteenths(2));
}

FreeEnd free_end(const EndMetal& end, EdgeKind kind, const Trim& trim, const Practice& practice) {
    const bool clips = clips_hems(kind, trim.role);
    FreeEnd free{end.added(), false, end.added() + (clips ? clip_half_width : screw_head_radius)};
    const auto behind = [&](std::optional<Length> back, LegName leg) {
        const Length width = leg_width(trim, leg);
        if (back && width > Length()) {
            free.metal = std::max(free.metal, clips ? end.added() + *back + clip_half_width
                                                    : clear_of_line(end.added(), *back, width));
        }
    };
    behind(end.near_back, LegName::flange);
    if (trim.role == TrimRole::main && facts_of(kind).screw_lines > 1) {
        behind(end.far_back, LegName::face);
    }
    if (is_riveted_down(kind, trim) && end.work == EndWork::corner_tab) {
        // The kick is clipped at 45° past the tab.
        free.metal = std::max(free.metal, end.added() + leg_width(trim, LegName::kick));
    }
    free.metal = round_up_to(free.metal, practice.cut_grid);
    return free;
}

std::vector<Length> screws_of(Length cut, FreeEnd left, FreeEnd right, const Practice& practice) {
    // From the cut end the margin includes the tab, but a screw stays half a margin away from the
    // fold.
    const Length half_margin = Length::of_nm(practice.screw_margin.nm() / 2);
    const auto past = [&](FreeEnd end) {
        return end.laps ? lap_margin(end.length, practice)
                        : std::max(practice.screw_margin - end.length, half_margin);
    };
    const Length from = std::max(left.length, left.metal);
    const Length to = std::min(cut - right.length, cut - right.metal);
    if (to <= from) {
        return {};
    }
    const Length first = std::max(from, left.length + past(left));
    const Length last = std::min(to, cut - right.length - past(right));
    if (last <= first) {
        return {middle_of(from, to)};
    }
    return centres_between(first, last, practice.screw_spacing);
}

FreeEnds free_ends_of(const Run& run, const PlannedPiece& piece, const Edge& edge, const Trim& trim,
                      const Practice& practice) {
    const Side first = first_fitted(edge);
    const auto end = [&](Side side) -> FreeEnd {
        const PlannedPiece& outermost = side == first ? run.pieces.front() : run.pieces.back();
        if (piece.number != outermost.number) {
            const bool hem_off = side != first && clips_hems(edge.kind, run.role);
            return {run.lap, run.lap > Length(),
                    hem_off ? past_notch(run, edge, practice) : Length()};
        }
        return free_end(end_metal(edge, side, trim, practice, run.tabs), edge.kind,
                        fitted_to(trim, edge), practice);
    };
    return {end(Side::left), end(Side::right)};
}

std::vector<LegName> fastened_legs(EdgeKind kind, const Trim& trim) {
    if (trim.role != TrimRole::main) {
        return {LegName::face};
    }
    if (facts_of(kind).screw_lines > 1) {
        return {LegName::flange, LegName::face};
    }
    if (trim.panels == Panels::over && kind == EdgeKind::gable) {
        return {};
    }
    if (is_riveted_down(kind, trim)) {
        return {LegName::kick};
    }
    return {kind == EdgeKind::transition ? LegName::face : LegName::flange};
}

ScrewedTo screwed_to(EdgeKind kind, TrimRole role) {
    // A transition's upper leg is fastened, and that lies on the deck.
    const bool stands = role == TrimRole::main && facts_of(kind).closed != Closed::no_side &&
                        kind != EdgeKind::transition;
    return stands ? ScrewedTo::closures : ScrewedTo::deck;
}

std::int64_t count_of(const std::vector<ScrewLine>& lines) {
    std::int64_t count = 0;
    for (const ScrewLine& line : lines) {
        count += static_cast<std::int64_t>(line.at.size());
    }
    return count;
}

std::vector<ScrewLine> screw_lines_of(const Run& run, const PlannedPiece& piece, const Edge& edge,
                                      const Trim& trim, const Practice& practice, Side metal_left) {
    std::vector<ScrewLine> lines;
    for (const LegName leg : fastened_legs(edge.kind, trim)) {
        lines.push_back({leg, {}});
    }
    if (screwed_to(edge.kind, run.role) == ScrewedTo::closures) {
        put_on_pans(lines, run, piece, edge, trim, practice);
        if (metal_left == Side::right) {
            mirror(lines, piece.cut);
        }
        return lines;
    }
    FreeEnds ends = free_ends_of(run, piece, edge, trim, practice);
    if (metal_left == Side::right) {
        std::swap(ends.left, ends.right);
    }
    for (ScrewLine& line : lines) {
        line.at = screws_of(piece.cut, ends.left, ends.right, practice);
    }
    return lines;
}

std::optional<Length> cleat_line(const Trim& trim, const Trim& cleat, const Practice& practice) {
    const Length raised = trim.panels == Panels::over ? practice.seam_height : Length();
    const Length below =
        leg_width(trim, LegName::face) - leg_width(cleat, LegName::face) - sixteenths(1) - raised;
    return below > Length() ? std::optional(below) : std::nullopt;
}

bool is_sealed(const Run& run) { return run.role == TrimRole::main && run.lap > Length(); }

std::vector<Length> bead_offsets(Length lap, const Practice& practice) {
    if (lap <= Length()) {
        return {};
    }
    const Length first =
        round_down_to(Length::of_nm((lap - practice.bead_gap).nm() / 2), sixteenths(1));
    if (practice.bead_gap > Length() && first >= practice.bead_width) {
        return {first, first + practice.bead_gap};
    }
    // The lap is too short for the gap: beads at its thirds, so that both stay inside the lap.
    return {Length::of_nm(lap.nm() / 3), Length::of_nm(lap.nm() * 2 / 3)};
}

Length covered_by(const Run& run) {
    Length length;
    for (const PlannedPiece& piece : run.pieces) {
        length += piece.covers;
    }
    return length;
}

FixingTally fixing_of(const Run& run, const Edge& edge, const Trim& trim,
                      const Practice& practice) {
    FixingTally tally;
    const std::size_t count = run.pieces.size();
    const bool laps = run.lap > Length();
    for (const PlannedPiece& piece : run.pieces) {
        tally.screws += count_of(screw_lines_of(run, piece, edge, trim, practice));
    }
    tally.laps = laps && count > 0 ? static_cast<std::int64_t>(count) - 1 : 0;
    const bool down = is_riveted_down(edge.kind, trim);
    const Length across = leg_width(trim, LegName::flange) + leg_width(trim, LegName::face) +
                          (down ? leg_width(trim, LegName::kick) : Length());
    const auto beads = static_cast<std::int64_t>(bead_offsets(run.lap, practice).size());
    tally.bead = is_sealed(run) ? across * (beads * tally.laps) : Length();
    const auto in_inches = [](Length length) {
        return static_cast<double>(length.nm()) / static_cast<double>(inches(1).nm());
    };
    const double width = in_inches(practice.bead_width);
    const double section = std::numbers::pi / 4 * width * width;
    tally.cartridges = in_inches(tally.bead) * section / cartridge_cubic_inches;
    return tally;
}

}  // namespace hemline
