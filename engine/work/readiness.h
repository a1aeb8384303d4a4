// What a cut waits for: readings, earlier pieces, and for a run's last piece its fixed neighbour.
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

/// The step that fixes a trim piece for good, by its id in the procedures: what the last piece's
/// reading waits for.
constexpr std::string_view fasten_step = "fasten";

/// The step which says at which side of a sloped edge its foot is, by its id in the procedures; it
/// is answered with a word of the sides.
constexpr std::string_view hand_step = "hand";

/// The side of the foot, seen from outside: left until the step says right. The metal of one is the
/// mirror of the other's.
Side foot_of(const EdgeWork& work);
/// An edge's left is its foot: its pieces lie the other way round where that is at the right.
bool lies_mirrored(const EdgeWork& work);

/// What must be read before anything is cut on the edge: an agreed length, the pitch, and a pick
/// between what two tablets wrote apart. One
/// sentence that says what to do; empty when all is there.
Text reading_missing(const EdgeWork& work, const Practice& practice);

/// True when the last piece of the main run is cut to what is left beside its fixed neighbour.
bool needs_remainder(const Run& run, int piece);

/// The cut that stands of that piece; nullptr when it is not cut.
const CutPiece* find_cut(const EdgeWork& work, TrimRole role, int piece);

/// Work on a piece counts only for the metal it was done on: none without the piece, and none from
/// before the piece was cut anew (told by one device's own sequence; two devices' order is
/// unknown).
bool stands(const DoneStep& done, const CutPiece* cut);

/// True when the trim piece's fastening is recorded.
bool is_fastened(const EdgeWork& work, int piece);

/// Why the remainder of the run's last piece is not known: its neighbour is not fastened, there is
/// no reading, or the reading is older than the fastening. Empty when it stands.
Text remainder_missing(const EdgeWork& work, const Run& run);

/// Why the piece cannot be cut yet, with the mend. Empty when it can, and when it is cut already.
Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Practice& practice);
/// The same where what reading_missing() says of the edge is known.
Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Text& reading);

/// The piece of that number; nullptr when the run has none.
const PlannedPiece* find_piece(const Run& run, int piece);

}  // namespace hemline
