// Replaces the files of a job's folder together. Whatever interrupts it, every frame and every
// stretch of damage is in a file that was read back.
//
//   all written beside ─▶ new names in place, synced ─▶ the others replaced, synced ─▶ all read
//   back ─▶ what has no place any more removed
#pragma once

#include <filesystem>
#include <map>
#include <optional>

#include "engine/record/bytes.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

using Files = std::map<std::filesystem::path, Bytes>;

/// All of a job's files, by name: journals, and bytes set aside. A link is not followed: its target
/// is not part of the job. Problem: there is no job, or a file cannot be read.
Result<Files> read_files(const std::filesystem::path& job);

/// `before`: the files there; `files`: the files to be there, with all frames and damage of
/// `before`. Call it under the job's lock. Problem: nothing is lost, but files of both may be
/// there.
std::optional<Problem> put_files_in_place(Disk& disk, const std::filesystem::path& folder,
                                          const Files& before, const Files& files);

}  // namespace hemline
