// Does this trim, with these panels, suit this pitch? If not, which trim does?
#pragma once

#include <string>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/text.h"

namespace hemline {

struct Refusal {
    std::string id;  ///< trim id
    Text reason;     ///< a sentence
};

struct SeamVerdict {
    Seam seam = Seam::snap_lock;
    bool serves = false;
    Text reason;  ///< why not, with its source; empty when it serves
};

struct PitchCheck {
    std::vector<std::string> serves;  ///< ids of the main trims of this kind that may be used
    std::vector<Refusal> refused;
    std::vector<SeamVerdict> seams;
    /// Empty, or a sentence: the reading is closer to a limit than its possible error, measure
    /// again.
    Text measure_again;
};

/// Judges all main trims of `kind` against the pitch, the seam (unknown: a trim serves when some
/// seam that the code allows at this pitch suits it) and the code's least slope. Sources: IBC 2012
/// §1507.4.2, IRC R905.10.2; for trims the catalogue names them. The maker's printed limits go
/// before these.
PitchCheck check_pitch(Slope pitch, EdgeKind kind, Seam seam, const Catalogue& catalogue);

}  // namespace hemline
