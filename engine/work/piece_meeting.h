// What a piece's end meets: the next piece of its run in a lap, or the neighbour edge's piece round
// an outside corner, both folded up and put together.
#pragma once

#include "engine/trim/meeting.h"
#include "engine/trim/solid.h"
#include "engine/work/piece_pattern.h"
#include "engine/work/roof_outline.h"

namespace hemline {

struct Job;
struct Plan;

/// What is needed to say which metal meets where.
struct MeetingOf {
    const Job& job;
    const Plan& plan;
    const Catalogue& catalogue;
    const Sections& sections;
    const RoofOutline* outline = nullptr;  ///< says which edge comes next round a corner
};

/// The two ends as facets to draw, the fitted pieces' own faults, and who the other one is.
struct ShownMeeting {
    std::vector<Facet> own, other;
    std::vector<FoldFault> faults;
    Text other_name;  ///< "piece 2 of eave A"
};

/// The card's end with what it meets, to `reach` from it. Problem: why there is nothing to show: it
/// meets no other piece, or the neighbour is not read yet.
Result<ShownMeeting> piece_meeting(const MeetingOf& of, const Card& card, Side side, Length reach);

}  // namespace hemline
