// Edges that were taken off the job on one tablet while metal was cut for them on another. Such an
// edge is back on the job, and both tablets say so.
#pragma once

#include <set>
#include <span>
#include <string>

#include "engine/record/job.h"

namespace hemline {

/// Edges whose last event takes them off, and for which no metal was ever cut or counted: they will
/// not be on the job. From all events of the job, and what of them is struck or disagrees.
std::set<std::string> edges_that_go(const Job& job, std::span<const Event> events);

/// Adds a disagreement for each of them, after those already there. From all events of the job,
/// folded.
void add_edges_back(Job& job, std::span<const Event> events);

}  // namespace hemline
