#include "engine/panels/seam_layout.h"

#include <algorithm>

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

Length half_width(Length length) { return Length::of_nm(length.nm() / 2); }

/// Every line of the module through `one` that lies between the side lines.
std::vector<Length> seams_through(const SeamFrame& frame, Length one) {
    const Length first = one + round_down_to(frame.left.at - one, frame.module) + frame.module;
    std::vector<Length> seams;
    for (Length at = first; at < frame.right.at; at += frame.module) {
        seams.push_back(at);
    }
    return seams;
}

/// From a corner inward to the first seam, or to the line's other end.
Length piece_at(Length corner, Length other_end, Length seam, Length module) {
    const Length inward = other_end > corner ? seam - corner : corner - seam;
    const Length rest = inward - round_down_to(inward - nanometres(1), module);
    return std::min(rest, absolute(other_end - corner));
}

/// At the corners of eave and top, those at cut sides.
Length narrowest_piece(const SeamFrame& frame, Length seam) {
    Length least = frame.module;
    for (const LevelLine& line : {frame.eave, frame.top}) {
        if (line.to <= line.from) {
            continue;
        }
        if (!frame.left.square) {
            least = std::min(least, piece_at(line.from, line.to, seam, frame.module));
        }
        if (!frame.right.square) {
            least = std::min(least, piece_at(line.to, line.from, seam, frame.module));
        }
    }
    return least;
}

Length seam_between_cut_sides(const SeamFrame& frame) {
    const LevelLine& longer =
        frame.top.to - frame.top.from > frame.eave.to - frame.eave.from ? frame.top : frame.eave;
    const Length middle = longer.from + half_width(longer.to - longer.from);
    const Length beside = middle + half_width(frame.module);
    return narrowest_piece(frame, middle) >= narrowest_piece(frame, beside) ? middle : beside;
}

/// From the square side: its first pan.
Length first_pan_beside_cut_side(const SeamFrame& frame) {
    const Length eave = frame.eave.to - frame.eave.from, top = frame.top.to - frame.top.from;
    const bool by_top = top >= frame.module && top < eave;
    const LevelLine& line = by_top || eave <= Length() ? frame.top : frame.eave;
    const Length across = frame.left.square ? line.to - frame.left.at : frame.right.at - line.from;
    const Length rest = across - round_down_to(across, frame.module);
    const bool sliver = rest > Length() && rest < frame.end_least;
    const Length wider = std::max(Length(), frame.left.square ? -frame.lean : frame.lean);
    return std::min(sliver ? half_width(frame.module + rest) : frame.module, frame.module - wider);
}

/// With so many whole pans between two equal ends.
std::vector<Length> between_equal_ends(const SeamFrame& frame, std::int64_t whole) {
    const Length ends = frame.right.at - frame.left.at - frame.module * whole;
    return seams_through(frame, frame.left.at + half_width(ends));
}

/// As few as leave no end pan wider than the module, at its foot and its top.
std::int64_t whole_between_ends(const SeamFrame& frame) {
    const Length wide = frame.right.at - frame.left.at + absolute(frame.lean) * 2;
    return parts_to_cover(wide, frame.module) - 2;
}

bool is_hurt(std::span<const Length> seams, const KeepOff& one) {
    const auto distance = nearest_seam(seams, one.at);
    const bool lies_on_it = one.on_it && distance && *distance < same_place;
    return distance && *distance < one.off && !lies_on_it;
}

SeamLayout shifted_least(const SeamFrame& frame, const std::vector<Length>& balanced,
                         std::span<const KeepOff> keep_off) {
    std::optional<SeamLayout> best;
    const ShiftRoom room =
        balanced.empty() ? ShiftRoom{-nanometres(1), -nanometres(1)} : shift_room(frame, balanced);
    for (const Length shift : shifts_in(room)) {
        if (best && best->staying.empty()) {
            break;
        }
        std::vector<Length> seams = shifted_seams(frame, balanced, shift);
        std::vector<KeepOff> staying = conflicts_of(seams, keep_off);
        if (!best || staying.size() < best->staying.size()) {
            best = {std::move(seams), shift, std::move(staying), {}};
        }
    }
    return best ? *best : SeamLayout{balanced, {}, conflicts_of(balanced, keep_off), {}};
}

bool has_upright(const DeckPlane& plane, double x) {
    return std::any_of(plane.bounds.begin(), plane.bounds.end(), [&](const DeckBound& bound) {
        return bound.is_upright() && bound.from.x == x &&
               std::abs(bound.to.y - bound.from.y) > same_place_nm;
    });
}

void widen(std::optional<LevelLine>& line, const DeckBound& bound) {
    const Length from = nearest_nm(std::min(bound.from.x, bound.to.x));
    const Length to = nearest_nm(std::max(bound.from.x, bound.to.x));
    line =
        line ? LevelLine{std::min(line->from, from), std::max(line->to, to)} : LevelLine{from, to};
}

}  // namespace

SeamFrame seam_frame(const DeckPlane& plane, Length module, Length gap, Length end_least) {
    SeamFrame frame;
    frame.module = module;
    frame.lean = plane.lean;
    frame.end_least = std::min(end_least, half_width(module));
    frame.left = {nearest_nm(plane.left), has_upright(plane, plane.left)};
    frame.right = {nearest_nm(plane.right), has_upright(plane, plane.right)};
    frame.left.at += frame.left.square ? gap : Length();
    frame.right.at -= frame.right.square ? gap : Length();
    std::optional<LevelLine> eave, top;
    const double out_of_level = same_place_nm + static_cast<double>(absolute(plane.top_rise).nm());
    for (const DeckBound& bound : plane.bounds) {
        const double rise = std::abs(bound.to.y - bound.from.y);
        const bool level = rise <= out_of_level && rise < std::abs(bound.to.x - bound.from.x);
        if (level && bound.kind == EdgeKind::eave) {
            widen(eave, bound);
        } else if (level && plane.top - bound.to.y < out_of_level) {
            widen(top, bound);
        }
    }
    frame.eave = eave.value_or(LevelLine());
    frame.top = top.value_or(LevelLine());
    return frame;
}

std::vector<Length> balanced_seams(const SeamFrame& frame) {
    if (frame.right.at - frame.left.at <= frame.module) {
        return {};
    }
    if (frame.left.square && frame.right.square) {
        return between_equal_ends(frame, whole_between_ends(frame));
    }
    if (!frame.left.square && !frame.right.square) {
        return seams_through(frame, seam_between_cut_sides(frame));
    }
    const Length first = first_pan_beside_cut_side(frame);
    return seams_through(frame, frame.left.square ? frame.left.at + first : frame.right.at - first);
}

std::vector<Length> seams_with_one_more(const SeamFrame& frame) {
    const std::size_t fewest = balanced_seams(frame).size();
    if (!frame.left.square || !frame.right.square || fewest == 0) {
        return {};
    }
    std::vector<Length> more = between_equal_ends(frame, whole_between_ends(frame) + 1);
    const bool wide_enough =
        more.size() == fewest + 1 && more.front() - frame.left.at >= frame.end_least;
    return wide_enough ? more : std::vector<Length>();
}

ShiftRoom shift_room(const SeamFrame& frame, std::span<const Length> seams) {
    ShiftRoom room{half_width(frame.module), half_width(frame.module)};
    if (frame.left.square || frame.right.square) {
        room = {frame.module, frame.module};
    }
    if (frame.left.square) {
        const Length foot = seams.front() - frame.left.at, top = foot - frame.lean;
        room = {std::min(room.left, std::min(foot, top) - frame.end_least),
                std::min(room.right, frame.module - std::max(foot, top))};
    }
    if (frame.right.square) {
        const Length foot = frame.right.at - seams.back(), top = foot + frame.lean;
        room = {std::min(room.left, frame.module - std::max(foot, top)),
                std::min(room.right, std::min(foot, top) - frame.end_least)};
    }
    return room;
}

std::vector<Length> shifted_seams(const SeamFrame& frame, std::span<const Length> seams,
                                  Length shift) {
    return seams.empty() ? std::vector<Length>() : seams_through(frame, seams.front() + shift);
}

std::vector<Length> shifts_in(const ShiftRoom& room) {
    std::vector<Length> shifts;
    for (Length by; by <= std::max(room.left, room.right); by += panel_rule::shift_grid) {
        for (const Length shift : {by, -by}) {
            if (room.has(shift) && (by > Length() || shifts.empty())) {
                shifts.push_back(shift);
            }
        }
    }
    return shifts;
}

Length narrowest_end(const SeamFrame& frame, std::span<const Length> seams) {
    Length least = narrowest_piece(frame, seams.front());
    if (frame.left.square) {
        const Length foot = seams.front() - frame.left.at;
        least = std::min({least, foot, foot - frame.lean});
    }
    if (frame.right.square) {
        const Length foot = frame.right.at - seams.back();
        least = std::min({least, foot, foot + frame.lean});
    }
    return least;
}

SeamLayout lay_seams(const SeamFrame& frame, std::span<const KeepOff> keep_off) {
    SeamLayout layout = shifted_least(frame, balanced_seams(frame), keep_off);
    if (!layout.staying.empty()) {
        const SeamLayout other = shifted_least(frame, seams_with_one_more(frame), keep_off);
        if (other.staying.empty() && !other.seams.empty()) {
            layout.with_one_more = other.seams;
        }
    }
    return layout;
}

std::optional<SeamLayout> lay_seams(const SeamFrame& frame, std::span<const KeepOff> keep_off,
                                    const ChosenSeams& chosen) {
    const std::vector<Length> base =
        chosen.one_more ? seams_with_one_more(frame) : balanced_seams(frame);
    if (base.empty() || !shift_room(frame, base).has(chosen.shift)) {
        return {};
    }
    SeamLayout layout{shifted_seams(frame, base, chosen.shift), chosen.shift, {}, {}};
    layout.staying = conflicts_of(layout.seams, keep_off);
    return layout;
}

std::vector<KeepOff> conflicts_of(std::span<const Length> seams,
                                  std::span<const KeepOff> keep_off) {
    std::vector<KeepOff> hurt;
    std::copy_if(keep_off.begin(), keep_off.end(), std::back_inserter(hurt),
                 [&](const KeepOff& one) { return is_hurt(seams, one); });
    return hurt;
}

std::optional<Length> nearest_seam(std::span<const Length> seams, Length at) {
    std::optional<Length> least;
    const auto after = std::lower_bound(seams.begin(), seams.end(), at);
    if (after != seams.end()) {
        least = *after - at;
    }
    if (after != seams.begin()) {
        const Length before = at - *(after - 1);
        least = least ? std::min(*least, before) : before;
    }
    return least;
}

}  // namespace hemline
