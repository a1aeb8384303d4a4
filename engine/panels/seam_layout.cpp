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

Length narrowest_piece(const SeamFrame& frame, Length seam) {
    Length least = frame.module;
    for (const LevelLine& line : {frame.eave, frame.top}) {
        if (line.to > line.from) {
            least = std::min({least, piece_at(line.from, line.to, seam, frame.module),
                              piece_at(line.to, line.from, seam, frame.module)});
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
    const bool sliver = rest > Length() && rest < panel_rule::end_pan_least;
    return sliver ? half_width(frame.module + rest) : frame.module;
}

/// With so many whole pans between two equal ends.
std::vector<Length> between_equal_ends(const SeamFrame& frame, std::int64_t whole) {
    const Length ends = frame.right.at - frame.left.at - frame.module * whole;
    return seams_through(frame, frame.left.at + half_width(ends));
}

std::int64_t whole_between_ends(const SeamFrame& frame) {
    return parts_to_cover(frame.right.at - frame.left.at, frame.module) - 2;
}

/// How far the seams may be shifted to the right and to the left.
struct Room {
    Length left, right;
};
Room room_of(const SeamFrame& frame, std::span<const Length> seams) {
    Room room{half_width(frame.module), half_width(frame.module)};
    if (frame.left.square || frame.right.square) {
        room = {frame.module, frame.module};
    }
    if (frame.left.square) {
        const Length end = seams.front() - frame.left.at;
        room = {std::min(room.left, end - panel_rule::end_pan_least),
                std::min(room.right, frame.module - end)};
    }
    if (frame.right.square) {
        const Length end = frame.right.at - seams.back();
        room = {std::min(room.left, frame.module - end),
                std::min(room.right, end - panel_rule::end_pan_least)};
    }
    return room;
}

bool is_hurt(std::span<const Length> seams, const KeepOff& one) {
    const auto distance = nearest_seam(seams, one.at);
    const bool lies_on_it = one.on_it && distance && *distance < same_place;
    return distance && *distance < one.off && !lies_on_it;
}

SeamLayout shifted_least(const SeamFrame& frame, const std::vector<Length>& balanced,
                         std::span<const KeepOff> keep_off) {
    SeamLayout best{balanced, {}, conflicts_of(balanced, keep_off), {}};
    if (balanced.empty()) {
        return best;
    }
    const Room room = room_of(frame, balanced);
    const Length most = std::max(room.left, room.right);
    for (Length by = panel_rule::shift_grid; by <= most && !best.staying.empty();
         by += panel_rule::shift_grid) {
        for (const Length shift : {by, -by}) {
            if (shift > room.right || -shift > room.left) {
                continue;
            }
            std::vector<Length> seams = seams_through(frame, balanced.front() + shift);
            std::vector<KeepOff> staying = conflicts_of(seams, keep_off);
            if (staying.size() < best.staying.size()) {
                best = {std::move(seams), shift, std::move(staying), {}};
            }
        }
    }
    return best;
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

SeamFrame seam_frame(const DeckPlane& plane, Length module, Length gap) {
    SeamFrame frame;
    frame.module = module;
    frame.left = {nearest_nm(plane.left), has_upright(plane, plane.left)};
    frame.right = {nearest_nm(plane.right), has_upright(plane, plane.right)};
    frame.left.at += frame.left.square ? gap : Length();
    frame.right.at -= frame.right.square ? gap : Length();
    std::optional<LevelLine> eave, top;
    for (const DeckBound& bound : plane.bounds) {
        const bool level = std::abs(bound.to.y - bound.from.y) < same_place_nm;
        if (level && bound.kind == EdgeKind::eave) {
            widen(eave, bound);
        } else if (level && plane.top - bound.to.y < same_place_nm) {
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

SeamLayout lay_seams(const SeamFrame& frame, std::span<const KeepOff> keep_off) {
    SeamLayout layout = shifted_least(frame, balanced_seams(frame), keep_off);
    if (layout.staying.empty() || !frame.left.square || !frame.right.square ||
        layout.seams.empty()) {
        return layout;
    }
    const std::vector<Length> more = between_equal_ends(frame, whole_between_ends(frame) + 1);
    if (more.size() == layout.seams.size() + 1 &&
        more.front() - frame.left.at >= panel_rule::end_pan_least) {
        const SeamLayout other = shifted_least(frame, more, keep_off);
        if (other.staying.empty()) {
            layout.with_one_more = other.seams;
        }
    }
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
