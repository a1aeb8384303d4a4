// Folders besides the folder of jobs that this device uses: a setting of the device, not part of a
// job.
//
//   …/hemline/folders    "crew /home/x/crew", "hand-over /home/x/Documents", "job /media/s/Roof"
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

struct KeptFolders {
    std::optional<std::filesystem::path> crew;       ///< what the synchronizer carries
    std::optional<std::filesystem::path> hand_over;  ///< where job files go and come from
    std::vector<std::filesystem::path> jobs;         ///< jobs that went on elsewhere

    bool operator==(const KeptFolders&) const = default;
};

/// What the file says; empty where there is no file. Problem: it cannot be read, or has any other
/// line.
Result<KeptFolders> read_kept_folders();

/// Writes the file, whole or not at all. Problem: it cannot be written, or a path has a line end.
std::optional<Problem> keep_folders(const KeptFolders& folders);

}  // namespace hemline
