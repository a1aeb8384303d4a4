// A folder as shown to somebody who chooses a folder: the folders in it, and whether there is room.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

struct FolderView {
    std::filesystem::path folder;
    std::vector<std::filesystem::path> inside;  ///< folders, by name; hidden ones are left out
    bool can_write = false;
    std::optional<std::uint64_t> free_bytes;
    std::optional<Problem> problem;  ///< why its contents cannot be shown
};

/// Reads the folder from the disk.
FolderView look_into(const std::filesystem::path& folder);

/// Where to begin: the home folder, and the disks and sticks that are plugged in, as far as that is
/// known.
struct StartingFolders {
    std::vector<std::filesystem::path> folders;
    std::optional<Problem> problem;  ///< why there may be more
};
StartingFolders starting_folders();

}  // namespace hemline
