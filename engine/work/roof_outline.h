// The outline of a job's roof as read so far: which edges are part of it, and what is wrong with
// it, in plain words.
//
//   job's edges:  A B C D E   F G H      the walk comes full circle after E: those are drawn;
//                 └────────┘  └───┘      the others, of a dormer or a lean-to, are listed
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/record/job.h"
#include "engine/roof/outline.h"

namespace hemline {

struct RoofOutline {
    Outline outline;
    std::vector<std::string> beside;  ///< ids of the eaves and gables that are not on it
};

/// The longest list of the job's eaves and gables, in the order added, whose turns come full
/// circle; all of them where there is none. Lengths: what two readings agree on, else the latest
/// that stands. None: no edge to walk along, or too many.
std::optional<RoofOutline> outline_of(const Job& job);

/// One or two sentences: whether it closes, and by how much it fails to.
Text state_words(const Outline& outline);
/// "Eave D: 24 ft 8 1/4 in, not 25 ft 8 1/4 in (misread foot)" would close it.
Text suspect_words(const Suspect& suspect);

}  // namespace hemline
