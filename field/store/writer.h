// The number that a tablet writes under in a job's folder: the tablet's number, or a new number
// where the folder is a copy, so that two journals never share a number.
//
//   JOB/.device-TABLET "WRITER INODE": the number, and the inode of this very file; a copy has
//                          another inode, and so is recognized
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Whether a file keeps its inode as long as it exists. A browser makes its files again each time
/// the page opens, and its store is not copied file by file.
#ifdef __EMSCRIPTEN__
constexpr bool inodes_last = false;
#else
constexpr bool inodes_last = true;
#endif

/// A number drawn at random, never 0; none where the system gives no random numbers.
std::optional<std::uint64_t> draw_device();

/// The number this tablet has in the folder; the tablet's number where the folder says nothing.
/// Writes nothing.
std::uint64_t writer_in(const std::filesystem::path& folder, std::uint64_t tablet);

/// The same, and saves it if possible. A folder that was copied gets a new number. Called under the
/// job's lock.
/// Problem: it needs a new number, and that cannot be written.
Result<std::uint64_t> claim_writer(const std::filesystem::path& folder, std::uint64_t tablet);

/// The file that holds the number.
std::filesystem::path writer_file(const std::filesystem::path& folder, std::uint64_t tablet);

/// A new number for this tablet in the folder, because its old number turned out to be used
/// elsewhere too.
Result<std::uint64_t> new_writer(Disk& disk, const std::filesystem::path& folder,
                                 std::uint64_t tablet);

}  // namespace hemline
