// Writes a file so that it is there completely or not at all: written beside its name, synced, read
// back, and moved into place.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string_view>

#include <sys/stat.h>

#include "engine/record/bytes.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// A name that file synchronizers skip: the one that Syncthing gives to files it has not received
/// completely.
std::string draft_name(std::string_view name);
/// `bytes_for` gets the status of the new file (its inode stays the same when it is moved).
using BytesFor = std::function<Bytes(const struct stat&)>;

/// Writes the bytes beside the file under a name that it returns, and reads them back. Problem:
/// nothing of it is left there.
Result<std::filesystem::path> write_draft(Disk& disk, const std::filesystem::path& file,
                                          const BytesFor& bytes_for);

/// Replaces a file of that name. Problem: the file is as it was.
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const BytesFor& bytes_for);
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const Bytes& bytes);

}  // namespace hemline
