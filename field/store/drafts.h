// Drafts of whole files (whole_file.h) left by a killed program: the next program removes them.
#pragma once

#include <filesystem>
#include <functional>
#include <string_view>

#include "field/store/disk.h"

namespace hemline {

/// locked: under a lock that every writer of these files holds, so every draft is a leftover.
/// shared: only drafts whose program no longer runs are leftovers.
enum class Sweeping { locked, shared };

/// Whether a file of that name is such a draft; drafts of a synchronizer have no process number.
bool is_draft(std::string_view name);

/// Removes the drafts in a folder of files for which `is_ours` is true; never those of a
/// synchronizer. What cannot be removed stays. True when there were any.
bool sweep_drafts(Disk& disk, const std::filesystem::path& folder, Sweeping sweeping,
                  const std::function<bool(std::string_view name)>& is_ours);

/// Files of a job's folder that are written as a whole.
bool is_job_file(std::string_view name);

}  // namespace hemline
