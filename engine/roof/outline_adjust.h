// A walk that does not quite close, made to close for the eye: least squares. Never for cutting.
#pragma once

#include <vector>

#include "engine/roof/outline_close.h"

namespace hemline {

/// The walk's places, the last on the first, with the smallest weighted changes of lengths (and of
/// corners that were stated to a decimal) that close it; each change is weighed by what its reading
/// may be off. Unread sides take their implied lengths, which must be settled. Good to 1 nm for the
/// eye; the digits past that may differ between platforms.
std::vector<PlanVector> adjusted_places(const Walk& walk, const Closing& closing);

}  // namespace hemline
