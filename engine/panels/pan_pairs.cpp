#include "engine/panels/pan_pairs.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/panels/most_weight_matching.h"
#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

/// A pan that is cut straight across at one end and square at the other.
struct SlantCut {
    std::size_t pan = 0;
    bool at_top = false;
    double rise = 0;  ///< from its left side to its right
};

std::optional<SlantCut> slant_cut(std::span<const LaidPan> pans, std::size_t i) {
    const DeckPiece& flat = pans[i].flat;
    const DeckPart& part = flat.front();
    const double foot = part.foot2 - part.foot1, top = part.top2 - part.top1;
    const auto least = static_cast<double>(panel_rule::slant_least.nm());
    const bool slant_foot = std::abs(foot) > least, slant_top = std::abs(top) > least;
    const bool whole = flat.size() == 1 && nearest_nm(part.x2 - part.x1) == pans[i].width;
    if (!whole || slant_foot == slant_top) {
        return {};
    }
    return SlantCut{i, slant_top, slant_top ? top : foot};
}

/// What one length for both must have; none where their cuts do not lie together.
std::optional<PanPair> pair_of(std::span<const LaidPan> pans, const SlantCut& a, const SlantCut& b,
                               SeamLegs legs, Length order_grid) {
    const LaidPan &first = pans[a.pan], &second = pans[b.pan];
    const bool turned = a.at_top == b.at_top;
    if (first.width != second.width || std::abs(a.rise - b.rise) > same_place_nm ||
        (turned && legs == SeamLegs::of_two_kinds)) {
        return {};
    }
    PanPair pair{a.pan, b.pan, turned, {}, {}};
    pair.length = round_up_to(
        first.exact + second.exact - nearest_nm(std::abs(a.rise)) - nanometres(2), order_grid);
    pair.saved = first.length + second.length - pair.length;
    return pair;
}

}  // namespace

std::vector<PanPair> pan_pairs(std::span<const LaidPan> pans, SeamLegs legs, Length order_grid) {
    std::vector<SlantCut> cuts;
    for (std::size_t i = 0; i < pans.size(); ++i) {
        if (const auto cut = slant_cut(pans, i)) {
            cuts.push_back(*cut);
        }
    }
    std::vector<Match> matches;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        for (std::size_t k = i + 1; k < cuts.size(); ++k) {
            const auto pair = pair_of(pans, cuts[i], cuts[k], legs, order_grid);
            if (pair && pair->saved > Length()) {
                matches.push_back({i, k, pair->saved.nm()});
            }
        }
    }
    const auto mates = most_weight_matching(cuts.size(), matches);
    std::vector<PanPair> pairs;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (mates[i] && *mates[i] > i) {
            pairs.push_back(*pair_of(pans, cuts[i], cuts[*mates[i]], legs, order_grid));
        }
    }
    return pairs;
}

}  // namespace hemline
