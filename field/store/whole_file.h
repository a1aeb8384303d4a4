// A file that is there whole or not at all: written beside its name, synced, and moved into place.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>

#include <sys/stat.h>

#include "engine/record/event_bytes.h"
#include "engine/result.h"
#include "field/store/disk.h"

namespace hemline {

/// `bytes_for` is given what the system says of the new file (its inode stays the same when it is
/// moved). A file of that name is replaced. Problem: the file is as it was.
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const std::function<Bytes(const struct stat&)>& bytes_for);
std::optional<Problem> write_whole_file(Disk& disk, const std::filesystem::path& file,
                                        const Bytes& bytes);

}  // namespace hemline
