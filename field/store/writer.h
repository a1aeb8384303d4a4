// The number a tablet writes under in one job's folder: its own, or a new one where the folder is a
// copy, so that no two journals ever share a number.
//
//   JOB/.device-TABLET     "WRITER INODE": the number, and the inode of this very file; a copy has
//                          another inode, and so is known for one
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// Whether a file keeps its inode for as long as it lies there. A browser lays its files anew each
/// time the page opens, and its store is not copied file by file.
#ifdef __EMSCRIPTEN__
constexpr bool inodes_last = false;
#else
constexpr bool inodes_last = true;
#endif

/// A number drawn at random, never 0; none where the system gives no random numbers.
std::optional<std::uint64_t> draw_device();

/// The number this tablet has in the folder; its own where the folder says nothing. Writes nothing.
std::uint64_t writer_in(const std::filesystem::path& folder, std::uint64_t tablet);

/// The same, written down as well as may be. A folder that was copied gets a number of its own.
/// Called under the job's lock.
/// Problem: it needs a number of its own, and that cannot be written.
Result<std::uint64_t> claim_writer(const std::filesystem::path& folder, std::uint64_t tablet);

/// The file that holds the number.
std::filesystem::path writer_file(const std::filesystem::path& folder, std::uint64_t tablet);

/// A new number for this tablet in the folder, whatever it had before: the one it had turned out to
/// be used elsewhere too.
Result<std::uint64_t> new_writer(Disk& disk, const std::filesystem::path& folder,
                                 std::uint64_t tablet);

}  // namespace hemline
