// Where things are on this device: jobs, the device's number, and the assets.
//
//   $XDG_DATA_HOME or ~/.local/share
//   └─ hemline/
//      ├─ device              this device's number, sixteen hex digits
//      ├─ device-place        the machine and inode it was drawn on: a copy is known by it
//      └─ jobs/NAME/          one job: DEVICE.journal of each device, .lock, torn tails
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

/// …/hemline, not created. A relative XDG_DATA_HOME is ignored, as the XDG base directory
/// specification (0.8) says. Problem: neither it nor HOME is set.
Result<std::filesystem::path> hemline_folder();

/// …/hemline/jobs, not created.
Result<std::filesystem::path> jobs_folder();

/// The folders in `jobs` that hold a journal, by name, and those that cannot be read: opening one
/// says why. Empty where there is no such folder; a name that begins with a dot is not a job yet.
/// Problem: `jobs` cannot be listed.
Result<std::vector<std::filesystem::path>> list_jobs(const std::filesystem::path& jobs);

/// A folder in `jobs` for a new job of that name: not there yet and not created here, or left by a
/// program that was stopped before it saved the first event. What a file name cannot hold becomes
/// "-"; a name that is taken gets "-2", "-3", …. Problem: it cannot be told which names are taken.
Result<std::filesystem::path> new_job_folder(const std::filesystem::path& jobs,
                                             std::string_view name);

/// The job's folder: the folder of a .journal file, else the path that was given. Problem: it
/// cannot be told which of the two the path is.
Result<std::filesystem::path> job_folder(const std::filesystem::path& job);

/// This device's number (never 0), from …/hemline/device; drawn at random and written there once,
/// readable by its owner only; drawn again when it was copied here from another tablet or restored
/// from a backup. Problem: it cannot be read or written, or is not such a number.
Result<std::uint64_t> device_id();

/// The assets: HEMLINE_ASSETS, else beside the program (./assets, ../../assets,
/// ../share/hemline/assets). Problem: none of them is there.
Result<std::filesystem::path> assets_folder();

}  // namespace hemline
