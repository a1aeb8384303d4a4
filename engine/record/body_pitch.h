// A pitch said once for a body holds for all its edges.
#pragma once

#include <optional>

#include "engine/record/job.h"

namespace hemline {

/// The pitch of the roof that rises from a side: its own edges', else that of the edge it has it
/// from. What was only stated counts for working out alone.
std::optional<Slope> pitch_over(const Job& job, const SideWalked& side);

/// Gives the edges of bodies whose pitch nobody said that of the sides they lie on: an eave that of
/// its own side, a ridge, hip or valley those of both.
void share_pitches(Job& job);

}  // namespace hemline
