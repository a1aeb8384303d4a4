#include "engine/panels/laid_pans.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/roof/nearest.h"

namespace hemline {

namespace {

bool is_one_place(double a, double b) { return std::abs(a - b) < same_place_nm; }

bool is_cut(const DeckPiece& piece, double from, double to) {
    const DeckPart& first = piece.front();
    const bool whole = first.x1 == from && piece.back().x2 == to;
    return !whole || !std::all_of(piece.begin(), piece.end(), [&](const DeckPart& part) {
        return is_one_place(part.foot1, first.foot1) && is_one_place(part.foot2, first.foot1) &&
               is_one_place(part.top1, first.top1) && is_one_place(part.top2, first.top1);
    });
}

Length metal_of(const DeckPlane& plane, const DeckPiece& piece, const PanEnds& ends) {
    constexpr double far = std::numeric_limits<double>::infinity();
    double foot = far, top = -far;
    for (const DeckPart& part : piece) {
        const DeckBound &below = plane.bounds[part.foot], &above = plane.bounds[part.top];
        foot = std::min({foot, part.foot1 - past_foot(ends, below, part.x1),
                         part.foot2 - past_foot(ends, below, part.x2)});
        top = std::max({top, part.top1 + past_top(ends, above, part.x1),
                        part.top2 + past_top(ends, above, part.x2)});
    }
    return nearest_nm(top - foot);
}

/// Of the lowest and highest where several parts end at the side.
std::pair<Length, Length> foot_of(const DeckPiece& piece) {
    return {nearest_nm(piece.front().foot1), nearest_nm(piece.back().foot2)};
}
std::pair<Length, Length> top_of(const DeckPiece& piece) {
    return {nearest_nm(piece.front().top1), nearest_nm(piece.back().top2)};
}

/// What of a side line or seam a piece's parts end at.
struct Upright {
    double foot = 0, top = 0;
};
std::vector<Upright> uprights_at(std::span<const LaidPan> pans, double x, double DeckPart::*where,
                                 double DeckPart::*foot, double DeckPart::*top) {
    std::vector<Upright> all;
    for (const LaidPan& pan : pans) {
        for (const DeckPart& part : pan.flat) {
            if (part.*where == x) {
                all.push_back({part.*foot, part.*top});
            }
        }
    }
    return all;
}

/// A length to order: what rounding to the nanometer has added does not count.
Length to_order(Length exact, Length grid) { return round_up_to(exact - nanometres(1), grid); }

}  // namespace

std::vector<LaidPan> laid_pans(const DeckPlane& plane, const SeamFrame& frame,
                               std::span<const Length> seams, const PanEnds& ends) {
    std::vector<LaidPan> pans;
    Length from = frame.left.at;
    for (std::size_t i = 0; i <= seams.size(); ++i) {
        const bool last = i == seams.size();
        const Length to = last ? frame.right.at : seams[i];
        const bool at_left = i == 0 && frame.left.square, at_right = last && frame.right.square;
        const bool beside_square = at_left || at_right;
        const Length wider = (at_right ? frame.lean : Length()) - (at_left ? frame.lean : Length());
        const double x1 = static_cast<double>(from.nm()), x2 = static_cast<double>(to.nm());
        const std::vector<DeckPiece> pieces = deck_pieces(plane, x1, x2);
        for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
            LaidPan pan;
            pan.number = static_cast<int>(i) + 1;
            pan.piece = pieces.size() > 1 ? static_cast<int>(piece) + 1 : 0;
            pan.from = from;
            pan.width = to - from;
            pan.top_width = pan.width + wider;
            pan.flat = pieces[piece];
            pan.exact = metal_of(plane, pan.flat, ends);
            pan.length = to_order(pan.exact, ends.order_grid);
            pan.foot = foot_of(pan.flat);
            pan.top = top_of(pan.flat);
            pan.kind = is_cut(pan.flat, x1, x2) ? PanKind::cut
                       : beside_square && std::min(pan.width, pan.top_width) < frame.module
                           ? PanKind::end
                           : PanKind::full;
            if (beside_square) {
                pan.blank = std::max(pan.width, pan.top_width) + ends.seam_height;
            }
            pans.push_back(std::move(pan));
        }
        from = to;
    }
    return pans;
}

std::vector<LaidSeam> laid_seams(const DeckPlane& plane, std::span<const Length> seams,
                                 std::span<const LaidPan> pans, const ClipRules& rules) {
    std::vector<LaidSeam> laid;
    for (const Length at : seams) {
        const double x = nm_of(at);
        LaidSeam seam{at, {}, {}};
        for (const Upright& left :
             uprights_at(pans, x, &DeckPart::x2, &DeckPart::foot2, &DeckPart::top2)) {
            for (const Upright& right :
                 uprights_at(pans, x, &DeckPart::x1, &DeckPart::foot1, &DeckPart::top1)) {
                const double foot = std::max(left.foot, right.foot);
                const double top = std::min(left.top, right.top);
                if (top - foot > same_place_nm) {
                    seam.length += nearest_nm(top - foot);
                    const auto clips = clips_on(plane, {x, foot, top}, rules);
                    seam.clips.insert(seam.clips.end(), clips.begin(), clips.end());
                }
            }
        }
        std::sort(seam.clips.begin(), seam.clips.end());
        laid.push_back(std::move(seam));
    }
    return laid;
}

}  // namespace hemline
