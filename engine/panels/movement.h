// How far a panel moves between the coldest and the hottest its metal gets, and what its lower end
// is bent to so that it neither jams nor lets go.
//
//   ridge  ▪ pinned           lip ______
//          │ length                     │ gap ⊃ hem     fixed at the ridge the hem moves on the
//          ▼ free                 ‾‾‾‾‾‾‾‾‾‾‾‾‾‾        lip; fixed at the eave the upper end moves
#pragma once

#include <optional>
#include <vector>

#include "engine/measure/temperature.h"
#include "engine/quantity/length.h"
#include "engine/trim/metal_family.h"
#include "engine/trim/practice.h"
#include "engine/words/result.h"

namespace hemline {

/// Of the metal, not of the air.
struct MetalTemperatures {
    Temperature now, coldest, hottest;
};

struct MovementAsked {
    MetalFamily metal = MetalFamily::galvanized;
    Length length;  ///< from the fixed line to the free end
    MetalTemperatures at;
    FixedLine fixed = FixedLine::ridge;
    Length lip = Practice().panel_lip;  ///< to bend at least
};

/// Shrink and grow to the nearest nanometer; what is bent, up to 1/16 in.
struct Movement {
    Length shrink, grow;
    Length gap;        ///< between the lip's edge and the hem's fold, to be left now
    Length hem;        ///< turned under the lip
    Length lip_least;  ///< takes the hem in the cold
    Length lip;        ///< to bend: that, and never under what is asked
    Length top_room;   ///< above the panel's upper end, at least: fixed at the eave
    Length cover;      ///< of cap or headwall leg past the closure, at least: fixed at the eave
    std::vector<Problem> refused;  ///< a hem that is not bent
};

/// Fixed at the ridge: gap = up(shrink + 1/16), hem = up(gap + grow + 3/8), lip = up(hem − gap +
/// shrink), at least as asked. Fixed at the eave: the foot stands still, gap 1/4 in, hem 1 in, lip
/// 3/4 in. Common practice, no published source; expansion_of() for the metals. Problem: a metal
/// that is not known, no length, temperatures in the wrong order.
Result<Movement> movement_of(const MovementAsked& asked);

/// Of a lip that does not take the hem in the cold.
std::optional<Problem> lip_jams(const Movement& movement, Length lip);

/// How a clip with a sliding tab is set, `from_line` from the fixed line: the tab's room on either
/// side.
struct ClipMark {
    Length away;    ///< from the fixed line, for growing
    Length toward;  ///< it, for shrinking
};
/// What is left of the travel is shared alike. Problem: the panel moves farther than the clip.
Result<ClipMark> clip_mark(const Movement& movement, Length length, Length from_line,
                           Length travel);

}  // namespace hemline
