// One end of a card's piece folded up, as it is compared with the metal in hand.
#pragma once

#include "engine/trim/solid.h"
#include "engine/work/card.h"

namespace hemline {

/// The end with more work: the one to look at first.
Side end_worked(const Card& card);
/// As much of the end as its marks reach, and some plain metal.
Length reach_of(const Card& card, Side side);
/// That end's facets, as it lies on the roof behind the edge, its folds turned so far.
std::vector<Facet> folded_end(const Card& card, const Edge& edge, const FlatPattern& pattern,
                              Side side, const FoldProgress& progress);

}  // namespace hemline
