// Seams of the two planes of a ridge that meet there, so that they look like one.
//
//      |    |    |    |     x of the one plane
//    ==+====+====+====+==   ridge: the planes' x run opposite ways, and add up to the same
//      |    |    |    |     x of the other, from its own eave's left end
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/panels/seam_layout.h"

namespace hemline {

/// The seams of a plane, before they are laid.
struct SeamTask {
    SeamFrame frame;
    std::vector<KeepOff> keep_off;
    std::optional<ChosenSeams> chosen;
};

/// A ridge of two planes: a place on it lies at x in the one and at sum − x in the other.
struct SharedRidge {
    std::size_t a = 0, b = 0;
    Length sum;
    std::string edge;
};

struct MeetingSeams {
    std::vector<SeamLayout> layouts;  ///< as the tasks
    std::vector<bool> met;            ///< as the ridges
    std::vector<bool> fits;           ///< whether a plane's seams lie as chosen; true: none chosen
};

/// Of each plane the seams that lay_seams() gives, but planes that share a ridge are shifted
/// together, wherever no more conflicts stay than would if each were laid for itself: by the shift
/// whose largest is least, then whose sum is; of two alike the first plane's to the right. Every
/// shift of the first on the 1/16 in grid is tried. Ridges count in their order: one that does not
/// meet beside those before it is left. Planes of two modules do not meet.
MeetingSeams meeting_seams(std::span<const SeamTask> planes, std::span<const SharedRidge> ridges);

}  // namespace hemline
