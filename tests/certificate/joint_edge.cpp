#include "tests/certificate/joint_edge.h"

#include <algorithm>
#include <cstdlib>

namespace certificate {

namespace {

constexpr Int sixteenth = 1'587'500;

Int metal_of(const JointEdge& edge) { return edge.length + edge.first + edge.last; }

std::vector<Int> cuts_of(const JointEdge& edge, const std::vector<Int>& covers) {
    std::vector<Int> cuts;
    for (std::size_t i = 0; i < covers.size(); ++i) {
        cuts.push_back(covers[i] + extra_of(edge, i, covers.size()));
    }
    return cuts;
}

bool is_lawful(const JointEdge& edge, const std::vector<Int>& covers) {
    const std::vector<Int> cuts = cuts_of(edge, covers);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (covers[i] <= 0 || cuts[i] > edge.stick || (cuts.size() > 1 && cuts[i] < edge.sliver)) {
            return false;
        }
    }
    return true;
}

Int differ(const std::vector<Int>& covers) { return std::abs(covers.front() - covers.back()); }

/// Every permitted division with whole sticks between the ends, the first cut on the grid or a
/// whole stick.
std::vector<std::vector<Int>> full_between(const JointEdge& edge, std::size_t pieces) {
    std::vector<std::vector<Int>> all;
    const Int full = edge.stick - edge.lap;
    for (Int cut = edge.grid; pieces > 1; cut = std::min(cut + edge.grid, edge.stick)) {
        std::vector<Int> covers(pieces, full);
        covers.front() = cut - extra_of(edge, 0, pieces);
        covers.back() = edge.length - static_cast<Int>(pieces - 2) * full - covers.front();
        if (is_lawful(edge, covers)) {
            all.push_back(covers);
        }
        if (cut >= edge.stick) {
            break;
        }
    }
    if (pieces == 1 && is_lawful(edge, {edge.length})) {
        all.push_back({edge.length});
    }
    return all;
}

}  // namespace

Int fewest_pieces(const JointEdge& edge) {
    Int fewest = 1;
    while (metal_of(edge) + (fewest - 1) * edge.lap > fewest * edge.stick) {
        ++fewest;
    }
    return fewest;
}

Int extra_of(const JointEdge& edge, std::size_t piece, std::size_t pieces) {
    return (piece == 0 ? edge.first : 0) + (piece + 1 == pieces ? edge.last : edge.lap);
}

bool is_balanced(const JointEdge& edge, const std::vector<Int>& covers) {
    for (std::size_t i = 1; i + 1 < covers.size(); ++i) {
        if (covers[i] != edge.stick - edge.lap) {
            return false;
        }
    }
    return differ(covers) <= sixteenth;
}

bool can_balance(const JointEdge& edge, std::size_t pieces) {
    const auto all = full_between(edge, pieces);
    return std::any_of(all.begin(), all.end(),
                       [&](const auto& covers) { return is_balanced(edge, covers); });
}

Divisions divisions_of(const JointEdge& edge, Int laps_most) {
    Divisions divisions;
    if (edge.taken) {
        divisions.listed.push_back({edge.taken->laps, edge.taken->unbalanced, edge.taken->uncut});
        return divisions;
    }
    for (Int laps = 0; laps <= laps_most; ++laps) {
        const Int pieces = fewest_pieces(edge) + laps;
        auto all = full_between(edge, static_cast<std::size_t>(pieces));
        const auto even = std::partition(
            all.begin(), all.end(), [&](const auto& covers) { return is_balanced(edge, covers); });
        const bool can = even != all.begin();
        for (auto own = all.begin(); own != even; ++own) {
            divisions.listed.push_back({laps, false, cuts_of(edge, *own)});
        }
        const Int metal = metal_of(edge) + (pieces - 1) * edge.lap;
        if (edge.is_free && pieces > 1) {
            if (metal >= pieces * edge.sliver) {
                divisions.any.push_back({laps, can, pieces, metal});
            }
        } else if (!can && laps == 0 && !all.empty()) {  // as near to balanced as so many can
            const Int least =
                differ(*std::min_element(all.begin(), all.end(), [](const auto& a, const auto& b) {
                    return differ(a) < differ(b);
                }));
            for (const std::vector<Int>& covers : all) {
                if (differ(covers) == least) {
                    divisions.listed.push_back({0, false, cuts_of(edge, covers)});
                }
            }
        }
    }
    return divisions;
}

int class_of(Int laps, bool unbalanced) {
    return static_cast<int>(2 * laps) + (unbalanced ? 1 : 0);
}

}  // namespace certificate
