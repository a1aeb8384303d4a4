// Fixing a run: screws kept out of laps and tabs, beads kept inside laps, sealant by volume.
#include "engine/work/fixing.h"

#include <algorithm>
#include <numbers>

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

/// The piece's tab, as its own numbers tell: what is cut and neither covers nor laps. Of one piece
/// that closes both ends only the sum is known, so the longest tab in practice limits it.
Length tab_of(const PlannedPiece& piece, bool laps_left, bool laps_right, Length lap,
              const Practice& practice) {
    const bool carries_lap =
        (laps_left && laps_right) || (piece.number == 1 && (laps_left || laps_right));
    const Length tab = piece.cut - piece.covers - (carries_lap ? lap : Length());
    const Length longest = std::max({practice.tab_gable, practice.tab_corner_out,
                                     practice.tab_corner_in, practice.tab_wall, practice.tab_open});
    return std::clamp(tab, Length(), std::max(Length(), longest));
}

}  // namespace

std::vector<Length> screw_centres(Length from, Length to, Length margin, Length spacing) {
    if (to <= from) {
        return {};
    }
    if (to - from <= margin * 2) {
        return {middle_of(from, to)};
    }
    return centres_between(from + margin, to - margin, spacing);
}

std::vector<Length> screws_of(const PlannedPiece& piece, bool laps_left, bool laps_right,
                              Length lap, const Practice& practice) {
    const Length tab = tab_of(piece, laps_left, laps_right, lap, practice);
    // From the cut end the margin counts the tab in, but a screw stays half a margin off the fold.
    const Length half_margin = Length::of_nm(practice.screw_margin.nm() / 2);
    const Length past_tab = std::max(practice.screw_margin - tab, half_margin);
    const Length past_lap = lap_margin(lap, practice);
    const Length from = laps_left ? lap : tab;
    const Length to = piece.cut - (laps_right ? lap : tab);
    if (to <= from) {
        return {};
    }
    const Length first = from + (laps_left ? past_lap : past_tab);
    const Length last = to - (laps_right ? past_lap : past_tab);
    if (last <= first) {
        return {middle_of(from, to)};
    }
    return centres_between(first, last, practice.screw_spacing);
}

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

FixingTally fixing_of(const Run& run, const Trim& trim, const Practice& practice) {
    FixingTally tally;
    const std::size_t count = run.pieces.size();
    const bool laps = run.lap > Length();
    for (std::size_t i = 0; i < count; ++i) {
        tally.screws += static_cast<std::int64_t>(
            screws_of(run.pieces[i], laps && i > 0, laps && i + 1 < count, run.lap, practice)
                .size());
    }
    tally.laps = laps && count > 0 ? static_cast<std::int64_t>(count) - 1 : 0;
    const Length across = leg_width(trim, LegName::flange) + leg_width(trim, LegName::face);
    const auto beads = static_cast<std::int64_t>(bead_offsets(run.lap, practice).size());
    tally.bead = across * (beads * tally.laps);
    const auto in_inches = [](Length length) {
        return static_cast<double>(length.nm()) / static_cast<double>(inches(1).nm());
    };
    const double width = in_inches(practice.bead_width);
    const double section = std::numbers::pi / 4 * width * width;
    tally.cartridges = in_inches(tally.bead) * section / cartridge_cubic_inches;
    return tally;
}

}  // namespace hemline
