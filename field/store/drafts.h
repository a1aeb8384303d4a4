// Drafts of whole files (whole_file.h) that a killed program left: the next one sweeps them up.
#pragma once

#include <filesystem>
#include <functional>
#include <string_view>

#include "field/store/disk.h"

namespace hemline {

/// locked: under a lock that every writer of these files holds, so all drafts are left ones.
/// shared: only those whose program no longer runs.
enum class Sweeping { locked, shared };

/// Whether a file of that name is such a draft; a synchroniser's own have no program's number.
bool is_draft(std::string_view name);

/// Removes the drafts in a folder that are of files `is_ours` names; a synchroniser's own never.
/// What cannot be removed stays. True when there were any.
bool sweep_drafts(Disk& disk, const std::filesystem::path& folder, Sweeping sweeping,
                  const std::function<bool(std::string_view name)>& is_ours);

/// What is written whole in a job's folder.
bool is_job_file(std::string_view name);

}  // namespace hemline
