// Folders outside the jobs' own that this device uses: its own setting, part of no job.
//
//   …/hemline/folders    "crew /home/x/crew", "hand-over /home/x/Documents", "job /media/s/Roof"
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

struct KeptFolders {
    std::optional<std::filesystem::path> crew;       ///< what the synchroniser carries
    std::optional<std::filesystem::path> hand_over;  ///< where job files go and come from
    std::vector<std::filesystem::path> jobs;         ///< jobs that went on elsewhere

    bool operator==(const KeptFolders&) const = default;
};

/// What the file says; nothing where there is none. Problem: it cannot be read, or a line is none
/// of these.
Result<KeptFolders> read_kept_folders();

/// Writes the file, whole or not at all. Problem: it cannot be written, or a path has a line end.
std::optional<Problem> keep_folders(const KeptFolders& folders);

}  // namespace hemline
