// One program at a time in a job's folder.
#pragma once

#include <filesystem>

#include "engine/words/result_declared.h"

namespace hemline {

/// The open, locked JOB/.lock; closing it lets the next program in. Problem: the job is open in
/// another copy of the program, or the folder cannot be written.
Result<int> lock_job(const std::filesystem::path& folder);

/// Whether no other program has the job open, so that it can go on elsewhere without going on in
/// two places.
bool is_free(const std::filesystem::path& folder);

}  // namespace hemline
