// Makes a walk close for drawing, by least squares. Never for cutting.
#pragma once

#include <vector>

#include "engine/roof/outline_close.h"

namespace hemline {

/// The walk's places, the last on the first, with the smallest weighted changes of lengths (and of
/// corners that were stated to a decimal) that close it; each change is weighted by how far its
/// reading may be off. Unread sides take their implied lengths, which must be settled. Good to 1
/// nm; the digits past that may differ between platforms.
std::vector<PlanVector> adjusted_places(const Walk& walk, const Closing& closing);

}  // namespace hemline
