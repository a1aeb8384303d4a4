// A file that is there whole or not at all: written beside its name, synced, read back, and moved
// into place.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string_view>

#include <sys/stat.h>

#include "engine/record/bytes.h"
#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// A name that file synchronisers pass over, Syncthing's own for what it has not whole yet.
std::string draft_name(std::string_view name);
/// `bytes_for` is given what the system says of the new file (its inode stays the same when it is
/// moved).
using BytesFor = std::function<Bytes(const struct stat&)>;

/// Writes the bytes beside the file, under a name that it gives back, and has read them back from
/// there. Problem: they are not there, and nothing else of the file.
Result<std::filesystem::path> write_draft(Disk& disk, const std::filesystem::path& file,
                                          const BytesFor& bytes_for);

/// A file of that name is replaced. Problem: the file is as it was.
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const BytesFor& bytes_for);
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const Bytes& bytes);

}  // namespace hemline
