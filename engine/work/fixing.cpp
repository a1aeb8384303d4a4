// Fixing a run: screws kept out of laps and tabs, beads kept inside laps, sealant by volume.
#include "engine/work/fixing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"

namespace hemline {
namespace {

/// The least from a lap line to a screw: a head nearer than this pins the joint.
constexpr Length lap_margin_least = sixteenths(8);
/// 10.1 US fl oz; a US fluid ounce is 231/128 in³.
constexpr double cartridge_cubic_inches = 10.1 * 231.0 / 128.0;

/// From `first` to `last` every `spacing`. Where the last gap would be under a quarter of the
/// spacing, the last screw but one moves halfway: two screws side by side hold no more than one.
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

Length middle_of(Length from, Length to) {
    const Length middle = Length::of_nm(from.nm() + (to - from).nm() / 2);
    return std::clamp(nearest_on(middle, sixteenths(1)), from, to);
}

/// Across a lap the gap is lap + two margins: the margin gives way, so that the spacing holds.
Length lap_margin(Length lap, const Practice& practice) {
    const Length half = Length::of_nm((practice.screw_spacing - lap).nm() / 2);
    return std::max(lap_margin_least,
                    std::min(practice.screw_margin, round_down_to(half, sixteenths(1))));
}

}  // namespace

std::vector<Length> screws_of(Length cut, FreeEnd left, FreeEnd right, const Practice& practice) {
    // From the cut end the margin counts the tab in, but a screw stays half a margin off the fold.
    const Length half_margin = Length::of_nm(practice.screw_margin.nm() / 2);
    const auto past = [&](FreeEnd end) {
        return end.laps ? lap_margin(end.length, practice)
                        : std::max(practice.screw_margin - end.length, half_margin);
    };
    const Length from = left.length;
    const Length to = cut - right.length;
    if (to <= from) {
        return {};
    }
    const Length first = from + past(left);
    const Length last = to - past(right);
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
            return {run.lap, run.lap > Length()};
        }
        return {end_metal(edge, side, trim, practice).added(), false};
    };
    return {end(Side::left), end(Side::right)};
}

int screw_lines(EdgeKind kind, TrimRole role) {
    return role == TrimRole::main ? facts_of(kind).screw_lines : 1;
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
    // Too short for the gap: at its thirds, so that both beads stay inside the lap.
    return {Length::of_nm(lap.nm() / 3), Length::of_nm(lap.nm() * 2 / 3)};
}

FixingTally fixing_of(const Run& run, const Edge& edge, const Trim& trim,
                      const Practice& practice) {
    FixingTally tally;
    const std::size_t count = run.pieces.size();
    const bool laps = run.lap > Length();
    for (const PlannedPiece& piece : run.pieces) {
        const FreeEnds ends = free_ends_of(run, piece, edge, trim, practice);
        tally.screws += static_cast<std::int64_t>(
                            screws_of(piece.cut, ends.left, ends.right, practice).size()) *
                        screw_lines(edge.kind, run.role);
    }
    tally.laps = laps && count > 0 ? static_cast<std::int64_t>(count) - 1 : 0;
    const Length across = leg_width(trim, LegName::flange) + leg_width(trim, LegName::face);
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

Closures closures_of(const Edge& edge, Length length, const Practice& practice) {
    const Closed closed = facts_of(edge.kind).closed;
    if (closed == Closed::no_side || length <= Length()) {
        return {};
    }
    Closures closures;
    closures.each = practice.seam_spacing;
    const auto corner = roof_corner(edge, Side::left);
    if (stands_over_corner(edge.kind) && corner) {
        // Seams meet a hip on the skew: along it they stand spacing / (cos α·cos slope) apart.
        const Result<HipLine> hip = hip_line(*corner);
        const auto along = [&](double from_eave) {
            return static_cast<double>(practice.seam_spacing.nm()) /
                   (std::cos(radians_of(from_eave)) * std::cos(radians_of(hip->slope_degrees)));
        };
        if (hip) {
            const double nm =
                std::max(along(hip->from_eave1_degrees), along(hip->from_eave2_degrees));
            const auto most = static_cast<double>(longest_readable().nm());
            closures.each = round_up_to(Length::of_nm(std::llround(std::clamp(nm, 1.0, most))),
                                        practice.cut_grid);
        }
    }
    closures.count = parts_to_cover(length, closures.each) * (closed == Closed::both_sides ? 2 : 1);
    const std::int64_t from_one = std::max<std::int64_t>(
        1, (practice.stock + practice.kerf).nm() / (closures.each + practice.kerf).nm());
    closures.sticks = (closures.count + from_one - 1) / from_one;
    return closures;
}

}  // namespace hemline
