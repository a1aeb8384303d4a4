// Moving the torn tail of a journal into a file of its own, so that the next event stands right
// after the last whole one.
#pragma once

#include <filesystem>

#include "engine/words/result.h"
#include "field/store/disk.h"
#include "field/store/job_folder.h"

namespace hemline {

/// Copies the stretch to STEM-torn-OFFSET.bytes, syncs it, then cuts it off the journal. A stretch
/// that does not reach the journal's end stays. Returns the file that holds the bytes now.
Result<std::filesystem::path> move_torn_tail(Disk& disk, const FileSetAside& set_aside);

}  // namespace hemline
