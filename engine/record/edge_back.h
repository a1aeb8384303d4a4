// Edges that were taken off the job on one tablet while metal was cut for them on another: they are
// back on the job, and both tablets say so.
#pragma once

#include <span>

#include "engine/record/job.h"

namespace hemline {

/// Adds a conflict for each of them, after those that are there. Of all events of the job, folded.
void add_edges_back(Job& job, std::span<const Event> events);

}  // namespace hemline
