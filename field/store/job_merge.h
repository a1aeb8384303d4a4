// Jobs put together on disk: every journal of every folder, into one folder with one journal for
// each device.
//
//   drafts written, synced, read back ─▶ moved into place ─▶ all read back ─▶ old files removed
//
// A new folder is built beside its name (FolderDraft). Stopped anywhere, all that was there is
// there, and the same again makes it whole.
#pragma once

#include <filesystem>
#include <span>
#include <vector>

#include "engine/record/merge.h"
#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// All that the folders' journals hold, and the damaged stretches moved aside in them. Problem: one
/// of them is no job, or cannot be read.
Result<Journals> gather_journals(std::span<const std::filesystem::path> jobs);

struct Merged {
    Text said;  ///< of an earlier try's remains that were cleaned away; most often nothing
};

/// Writes OUT/DEVICE.journal for each device and OUT/damage-CRC-SIZE.bytes for each stretch of
/// damage. A job that is in OUT already is taken in; a new OUT is written under a device number of
/// its own from then on. No file is replaced or removed whose frames and damage have not been read
/// back from what takes its place. `tablet`: this tablet's number. Problem: OUT is open in another
/// program, or cannot be read or written; nothing is lost.
Result<Merged> merge_into(Disk& disk, const std::filesystem::path& out, const Journals& journals,
                          std::uint64_t tablet);

}  // namespace hemline
