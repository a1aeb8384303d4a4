// An end of a card's piece folded up, to compare with the metal in hand.
#pragma once

#include "engine/trim/solid.h"
#include "engine/work/card.h"

namespace hemline {

/// The way a kind's far leg falls on the page, for folding it up.
Falls falls_on(EdgeKind kind);
/// The end with more work, which is looked at first.
Side end_worked(const Card& card);
/// How much of the end to show: as far as its marks reach, and some plain metal.
Length reach_of(const Card& card, Side side);
/// The facets of that end as it lies on the roof behind the edge, with its folds turned that far;
/// at least so much of it.
std::vector<Facet> folded_end(const Card& card, const Edge& edge, const FlatPattern& pattern,
                              Side side, const FoldProgress& progress, Length least = {});

}  // namespace hemline
