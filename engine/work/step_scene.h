// The pictures of a step that folds no metal: what comes to its place, is fastened, measured or
// looked at, before, during and done.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "engine/words/text.h"
#include "engine/work/scenery.h"

namespace hemline {

/// A picture: what lies around the piece, and where that is from its place; none: not there yet.
struct Shot {
    Text says;
    std::optional<Space> piece_at;
    Props props;
};
using Shots = std::array<Shot, 3>;

/// By the id of the step in the procedures; nullopt: it has no scene.
std::optional<Shots> scene_of(std::string_view step, const Scenery& stage);

}  // namespace hemline
