// A folder as it is shown to someone who chooses one: what folders lie in it, and whether there is
// room.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace hemline {

struct FolderView {
    std::filesystem::path folder;
    std::vector<std::filesystem::path> inside;  ///< folders, by name; hidden ones are left out
    bool can_write = false;
    std::optional<std::uint64_t> free_bytes;
};

/// Reads it anew. A folder that cannot be read has nothing inside.
FolderView look_into(const std::filesystem::path& folder);

/// Where to begin: the home folder, and the disks and sticks that are plugged in.
std::vector<std::filesystem::path> places_here();

}  // namespace hemline
