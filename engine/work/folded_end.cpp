#include "engine/work/folded_end.h"

#include "engine/roof/edge_shape.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr Length shown_past = inches(4);  // plain metal past the end's work
constexpr Length shown_least = inches(9);

/// The roof behind the edge. A wrap or a cleat has no leg on the roof, and its face is plumb.
Slope slope_under(const Edge& edge, const Card& card) {
    constexpr Slope plumb{SlopeNotation::degrees, 89'999'999};
    return card.role == TrimRole::main ? edge.pitch.value_or(rise_in_12(6)) : plumb;
}

}  // namespace

Falls falls_on(EdgeKind kind) { return is_cap(kind) ? Falls::up_page : Falls::down_page; }

Side end_worked(const Card& card) {
    const bool left_plain = card.left == EndWork::square || card.left == EndWork::overlap;
    return left_plain ? Side::right : Side::left;
}

Length reach_of(const Card& card, Side side) {
    Length reach;
    for (const Mark& mark : card.marks) {
        if (mark.toward == side && mark.kind != MarkKind::end_cut) {
            reach = std::max(reach, side == Side::left ? mark.at : card.cut - mark.at);
        }
    }
    return std::min(card.cut, std::max(shown_least, reach + shown_past));
}

std::vector<Facet> folded_end(const Card& card, const Edge& edge, const FlatPattern& pattern,
                              Side side, const FoldProgress& progress, Length least) {
    const Length reach = std::min(card.cut, std::max(least, reach_of(card, side)));
    const FlatPattern end = near_end(pattern, side, reach);
    const std::int64_t broken = side == Side::left ? reach.nm() : pattern.length.nm() - reach.nm();
    const Placing root = resting(end, slope_under(edge, card), falls_on(card.kind));
    return facets_of(end, fold_up(end, progress, root), broken);
}

}  // namespace hemline
