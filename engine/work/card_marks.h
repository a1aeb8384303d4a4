// The marks of a piece, from what is done at its two ends.
#pragma once

#include <vector>

#include "engine/work/card.h"

namespace hemline {

struct Run;

/// Whether the stick is cut through at the piece's right end; not where the piece takes the whole
/// stick.
enum class EndCut { needed, none };

/// All marks of a piece `cut` long, in tape order from its left end; where marks share a place, in
/// the order of work: lines and beads, snips, folds, the end cut.
std::vector<Mark> card_marks(const EndMetal& left, const EndMetal& right, const Run& run,
                             const Trim& trim, Length cut, EndCut end_cut,
                             const Practice& practice);

}  // namespace hemline
