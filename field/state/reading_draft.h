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
    bool striking = false;     ///< the last reading: no key lies beside the touch that does it
    bool doubt_shown = false;  ///< the reading was questioned; keeping it again is on purpose
};

struct PitchDraft {
    std::string number;  ///< digits and a point
    SlopeNotation notation = SlopeNotation::rise_in_12;
};

/// The tablet's own sensor being read: samples that come in, and the two readings they make.
struct TiltDraft {
    bool taking = false;
    std::vector<TiltSample> coming, first, turned;
};

struct ReadingDrafts {
    ReadingDraft reading;
    PitchDraft pitch;
    TiltDraft tilt;
};

}  // namespace hemline
