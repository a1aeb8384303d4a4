// Merges jobs on disk: every journal of every folder goes into a single folder with one journal for
// each device.
//
//   drafts written, synced, read back ─▶ moved into place ─▶ all read back ─▶ old files removed
//
// A new folder is built beside its name (FolderDraft). Wherever it is stopped, everything is still
// there, and running it again completes it.
#pragma once

#include <filesystem>
#include <span>
#include <vector>

#include "engine/record/merge.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Everything in the folders' journals, and the damaged stretches set aside in them. Problem: one
/// of them is not a job, or cannot be read.
Result<Journals> gather_journals(std::span<const std::filesystem::path> jobs);

struct Merged {
    Text said;  ///< about remains of an earlier try that were removed; mostly empty
};

/// Writes OUT/DEVICE.journal for each device and OUT/damage-CRC-SIZE.bytes for each stretch of
/// damage. A job that is in OUT already is taken in; this tablet writes to a new OUT under a new
/// device number. No file is replaced or removed before its frames and damage have been read back
/// from what replaces it. `tablet`: this tablet's number. Problem: OUT is open in another program,
/// or cannot be read or written; nothing is lost.
Result<Merged> merge_into(Disk& disk, const std::filesystem::path& out, const Journals& journals,
                          std::uint64_t tablet);

}  // namespace hemline
