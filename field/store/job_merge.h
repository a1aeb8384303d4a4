// Jobs put together on disk: every journal of every folder, into one folder with one journal for
// each device.
#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <vector>

#include "engine/record/merge.h"
#include "engine/result.h"
#include "field/store/disk.h"

namespace hemline {

/// All that the folders' journals hold, and the damaged stretches moved aside in them. Problem: one
/// of them is no job, or cannot be read.
Result<Journals> gather_journals(std::span<const std::filesystem::path> jobs);

/// Writes OUT/DEVICE.journal for each device and OUT/damage-CRC-SIZE.bytes for each stretch of
/// damage, each whole or not at all. A job that is in OUT already is taken in, so that nothing is
/// lost; a new OUT is written under a device number of its own from then on. `tablet`: this
/// tablet's number. Problem: OUT is open in another program, or cannot be written.
std::optional<Problem> merge_into(Disk& disk, const std::filesystem::path& out, Journals journals,
                                  std::uint64_t tablet);

}  // namespace hemline
