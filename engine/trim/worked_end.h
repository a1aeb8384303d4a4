// An end of a piece, cut in a box where x counts inward from the end, whichever hand it is.
//
//      0            deep
//      ┌──┐╌╌╌╌╌╌╌╌╌┐     the inside of the box, at `deep`, is plain metal from edge to edge
//      ╎  └─────────┤
//      └────────────┘
#pragma once

#include "engine/trim/end_work.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct WorkedEnd {
    EndShape shape;
    std::int64_t deep = 0;  ///< the box reaches from 0 to here along the piece
    std::int64_t wide = 0;  ///< and from 0 to here across it
    FlatOutline outline;
};

/// The end with all its steps done. Problem: the cuts sever a part of the metal.
Result<WorkedEnd> work_end(const FlatLegs& legs, const std::vector<EndStep>& steps, Side side);

/// From the box's inner upper corner round by the end of the metal to its inner lower corner.
FlatOutline end_chain(const WorkedEnd& end);

/// The same for the part of a leg between its innermost fold and the inside of the box. Problem:
/// the cuts sever the leg.
Result<FlatOutline> main_chain(const WorkedEnd& end, const FlatLegs& legs, std::size_t leg,
                               Side side);

}  // namespace hemline
