// A step's scene with this edge's piece in it.
#pragma once

#include <string_view>

#include "engine/work/step_pictures.h"

namespace hemline {

struct Run;

/// The run's piece that lies at that end of the edge; 0 where there is none.
int piece_at(const Run* run, const Edge& edge, Side side);

/// The scene by that name (scene_of()); nullopt: there is none, or no piece is planned.
std::optional<StepPictures> staged_pictures(const MeetingOf& of, const Step& step,
                                            std::string_view scene, const EdgeWork& work);

}  // namespace hemline
