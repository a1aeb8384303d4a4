// Moves the torn tail of a journal into another file, so that the next event comes right after the
// last whole event.
#pragma once

#include <filesystem>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"
#include "field/store/job_folder.h"

namespace hemline {

/// Copies the stretch to STEM-torn-OFFSET.bytes, syncs it, then cuts it off the journal. A stretch
/// that does not reach the end of the journal stays. Returns the file that holds the bytes now.
Result<std::filesystem::path> move_torn_tail(Disk& disk, const FileSetAside& set_aside);

}  // namespace hemline
