// What the seams of a plane keep off: pipes, curbs, dormer walls, the tops of valleys and hips.
#pragma once

#include <string>
#include <vector>

#include "engine/panels/deck_plane.h"
#include "engine/quantity/length.h"
#include "engine/words/text.h"

namespace hemline {

struct Practice;

/// Through a plane, from its eave's left end and up its slope.
struct Penetration {
    enum class Kind { pipe, curb } kind = Kind::pipe;
    Length x, y;
    Length wide;  ///< of a pipe the base of its boot; of a curb its width along the eave
};

/// A line up the slope that no seam comes nearer to than `off`.
struct KeepOff {
    Text what;  ///< "the pipe at 3 ft 6 in", "the top of hip H"
    Length at, off;
    bool on_it = false;  ///< a seam exactly on it is fine: a hip's top
};

/// Pipes: half the base, practice's boot_clear and half a seam's foot. Walls, curbs, tops of
/// valleys and of hips 2 in. What lies on the plane's own left and right end counts for nothing.
/// Common practice, no published source.
std::vector<KeepOff> keep_offs(const DeckPlane& plane, const std::vector<Penetration>& through,
                               const Practice& practice);

}  // namespace hemline
