// Where the clips of a seam stand, nearer together in the zones of high wind.
//
//   foot |<-6->o-----24-----o-----24-----o--12--o--12--o<-6->| top      zone: so far from an eave,
//                                       |<--- zone -------->|           gable, hip or ridge
#pragma once

#include <vector>

#include "engine/panels/deck_plane.h"
#include "engine/quantity/length.h"

namespace hemline {

struct Practice;

struct ClipRules {
    Length spacing, end;        ///< at most; from a stretch's end to its first clip
    Length zone, zone_spacing;  ///< no zone: nobody said one
};
ClipRules clip_rules(const Practice& practice);

/// Of a seam, between two heights on the deck.
struct SeamStretch {
    double x = 0, foot = 0, top = 0;
};

/// From the foot: one at each end of what lies in a zone and what does not, and evenly between; a
/// stretch with no room for two has one in its middle. Common practice, no published source; the
/// engineer and the maker's tested table go first.
std::vector<Length> clips_on(const DeckPlane& plane, const SeamStretch& stretch,
                             const ClipRules& rules);

}  // namespace hemline
