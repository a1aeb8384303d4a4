// What a cut waits for: readings, earlier pieces, and for a run's last piece its fixed neighbor.
#pragma once

#include <string>
#include <string_view>

#include "engine/quantity/length.h"
#include "engine/trim/catalogue.h"

namespace hemline {

struct CutPiece;
struct DoneStep;
struct EdgeWork;
struct PlannedPiece;
struct Practice;
struct Run;

/// Id in the procedures of the step that fastens a trim piece for good. The reading for the last
/// piece waits for it.
constexpr std::string_view fasten_step = "fasten";

/// Id in the procedures of the step that says on which side of a sloped edge its foot is; it is
/// answered with the word of a side.
constexpr std::string_view hand_step = "hand";

/// The side of the foot, seen from outside: left until the step says right. The metal for one side
/// is the mirror image of that for the other.
Side foot_of(const EdgeWork& work);
/// An edge's left is its foot: its pieces lie the other way round where that is at the right.
bool lies_mirrored(const EdgeWork& work);

/// What is needed before anything is cut on the edge: an agreed length, the pitch, and a pick where
/// two tablets disagree. A sentence that says what to do; empty when all is there.
Text reading_missing(const EdgeWork& work, const Practice& practice);

/// True when the last piece of the main run is cut to what is left beside its fixed neighbor.
bool needs_remainder(const Run& run, int piece);

/// The cut that stands of that piece; nullptr when it is not cut.
const CutPiece* find_cut(const EdgeWork& work, TrimRole role, int piece);

/// Work on a piece counts only for the metal it was done on: not without the piece, and not from
/// before the piece was cut again (told by the sequence of a device; the order between two devices
/// is unknown).
bool stands(const DoneStep& done, const CutPiece* cut);

/// True when the trim piece's fastening is recorded.
bool is_fastened(const EdgeWork& work, int piece);

/// Why the remainder of the run's last piece is not known: its neighbor is not fastened, there is
/// no reading, or the reading is older than the fastening. Empty when it is known.
Text remainder_missing(const EdgeWork& work, const Run& run);

/// Why the piece cannot be cut yet, and what to do. Empty when it can be cut or is cut already.
Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Practice& practice);
/// The same for a caller who already has the answer of reading_missing().
Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Text& reading);

/// The piece of that number; nullptr when the run has none.
const PlannedPiece* find_piece(const Run& run, int piece);

}  // namespace hemline
