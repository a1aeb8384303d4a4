// A length for the other tape, small beside the length for the job's tape. This tablet chooses
// whether it shows.
#pragma once

#include "engine/measure/length_text.h"
#include "engine/words/text.h"
#include "field/state/state.h"

namespace hemline {

/// Which tape a length is marked on, and whether the other tape is shown too.
struct Tapes {
    Marks marks = Marks::sixteenth;
    bool both = false;
};

inline Tapes tapes_of(const State& state) { return {state.marks, state.both_units}; }

/// "≈ 2572 mm" of 8 ft 5 1/4 in, "= 254 mm" of 10 in, "≈ 8 ft 5 1/4 in" of 2572 mm: to the nearest
/// millimeter or 1/16 in. Empty where only one tape is shown, and for 0.
Text on_other_tape(Length length, Tapes tapes);

/// "8 ft 5 1/4 in · ≈ 2572 mm", or the length alone.
Text length_on(Length length, Tapes tapes);

}  // namespace hemline
