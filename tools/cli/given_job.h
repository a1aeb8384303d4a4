// A job in place of a file: a folder of journals, or a journal in it.
#pragma once

#include <optional>
#include <string>

#include "engine/record/job.h"

namespace hemline {

/// Whether the word of the command line names a job and not a table.
bool is_job(const std::string& path);

/// The job as all its devices say it. None once stderr has the complaint.
std::optional<Job> read_given_job(const std::string& path, const Practice& practice);

}  // namespace hemline
