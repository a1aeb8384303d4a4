// What is being keyed in on the screens of reading: a length, a pitch, a tilt.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/measure/tilt.h"
#include "field/state/length_draft.h"

namespace hemline {

struct ReadingDraft {
    LengthDraft length;
    std::optional<LengthDraft> cleared;  ///< what "start again" took off, to be put back
    bool striking = false;               ///< a reading, by a separate touch
    std::string which;         ///< of those that stand, its number; empty: the one in doubt
    bool doubt_shown = false;  ///< the reading was questioned; saving it again is on purpose
};

struct PitchDraft {
    std::string number;  ///< digits and a point
    SlopeNotation notation = SlopeNotation::rise_in_12;
};

/// The tablet's sensor being read: samples that come in, and the two readings they make.
struct TiltDraft {
    bool taking = false;
    std::vector<TiltSample> coming, first, turned;
};

/// Readings from a list, one a line; each is shown before it is kept.
struct PastedDraft {
    std::string lines;     ///< those not kept yet
    int number = 1;        ///< in the list, of the first of them
    bool on_page = false;  ///< the first of them is in the fields
};

struct ReadingDrafts {
    ReadingDraft reading;
    PastedDraft pasted;
    PitchDraft pitch;
    TiltDraft tilt;
};

}  // namespace hemline
