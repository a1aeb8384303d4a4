// Edges that were taken off the job on one tablet while metal was cut for them on another: they are
// back on the job, and both tablets say so.
#pragma once

#include <set>
#include <span>
#include <string>

#include "engine/record/job.h"

namespace hemline {

/// Edges that the last word on them takes off, and that no metal was ever cut or counted for: they
/// will not be on the job. Of all events of the job, with what is struck and stands apart.
std::set<std::string> edges_that_go(const Job& job, std::span<const Event> events);

/// Adds a conflict for each of them, after those that are there. Of all events of the job, folded.
void add_edges_back(Job& job, std::span<const Event> events);

}  // namespace hemline
