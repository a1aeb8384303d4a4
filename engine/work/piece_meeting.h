// What a piece's end meets: the next piece of its run in a lap, or the piece of the neighbor edge
// around an outside corner, both folded up and put together.
#pragma once

#include "engine/trim/meeting.h"
#include "engine/trim/solid.h"
#include "engine/work/piece_pattern.h"
#include "engine/work/roof_outline.h"

namespace hemline {

struct Job;
struct Plan;

/// What is needed to tell which pieces meet where.
struct MeetingOf {
    const Job& job;
    const Plan& plan;
    const Catalogue& catalogue;
    const Sections& sections;
    const RoofOutline* outline = nullptr;  ///< says which edge comes next around a corner
};

/// The two ends as facets to draw, the faults where they are fitted, and what the other piece is.
struct ShownMeeting {
    std::vector<Facet> own, other;
    std::vector<FoldFault> faults;
    Text other_name;  ///< "piece 2 of eave A"
};

/// The card's end with what it meets, to `reach` from it. Problem: why there is nothing to show: it
/// meets no other piece, or the neighbor is not read yet.
Result<ShownMeeting> piece_meeting(const MeetingOf& of, const Card& card, Side side, Length reach);

}  // namespace hemline
