// The files of a job's folder replaced together, so that whatever stops it, every frame and every
// stretch of damage lies in a file that was read back.
//
//   all written beside ─▶ new names in place, synced ─▶ the others replaced, synced ─▶ all read
//   back ─▶ what has no place any more removed
#pragma once

#include <filesystem>
#include <map>
#include <optional>

#include "engine/record/bytes.h"
#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

using Files = std::map<std::filesystem::path, Bytes>;

/// All of a job's files, by name: journals, and bytes moved aside. A link is not followed: what it
/// leads to is no part of the job. Problem: there is no job, or one cannot be read.
Result<Files> read_files(const std::filesystem::path& job);

/// `before`: all that lies there; `files`: what is to, with all frames and damage of `before`.
/// Under the job's lock. Problem: nothing is lost; files of both may be there.
std::optional<Problem> put_files_in_place(Disk& disk, const std::filesystem::path& folder,
                                          const Files& before, const Files& files);

}  // namespace hemline
