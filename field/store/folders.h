// Where things lie on this device: jobs, its own number, and the assets.
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

#include "engine/words/result.h"

namespace hemline {

/// …/hemline, not created. A relative XDG_DATA_HOME is passed over, as the XDG base directory
/// specification (0.8) says. Problem: neither it nor HOME is set.
Result<std::filesystem::path> hemline_folder();

/// …/hemline/jobs, not created.
Result<std::filesystem::path> jobs_folder();

/// The folders in `jobs` that hold a journal, by name, and those of which the disk does not say:
/// opening one says why. Empty where there is no such folder; what begins with a dot is no job yet.
/// Problem: the disk does not say what lies in `jobs`.
Result<std::vector<std::filesystem::path>> list_jobs(const std::filesystem::path& jobs);

/// A folder in `jobs` for a new job of that name: not there yet, not created, or left by a program
/// that was stopped before it saved the first event. What a file name cannot hold becomes "-"; a
/// name that is taken gets "-2", "-3", …. Problem: the disk does not say which are taken.
Result<std::filesystem::path> new_job_folder(const std::filesystem::path& jobs,
                                             std::string_view name);

/// The job's folder: from a .journal file in it, else what was named, whatever its name. Problem:
/// the disk does not say which of them it is.
Result<std::filesystem::path> job_folder(const std::filesystem::path& job);

/// This device's number (never 0), from …/hemline/device; drawn at random and written there once,
/// for its owner's eyes only; drawn anew when it was copied here from another tablet or put back
/// from a backup. Problem: it cannot be read or written, or is no such number.
Result<std::uint64_t> device_id();

/// The assets: HEMLINE_ASSETS, else beside the program (./assets, ../../assets,
/// ../share/hemline/assets). Problem: none of them is there.
Result<std::filesystem::path> assets_folder();

}  // namespace hemline
