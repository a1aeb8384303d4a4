// What lies outside the open job, for the screens that send and back up: the crew folder, job
// files, and folders to choose from.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/text.h"
#include "field/store/folder_view.h"
#include "field/store/kept_folders.h"

namespace hemline {

/// What a folder is chosen for.
enum class Choosing { crew, hand_over, go_on };

struct JobInCrew {
    std::string id;  ///< its folder in the crew folder
    std::string name;
};

struct Outside {
    bool there = false;  ///< this device has folders to choose from; a browser has none
    KeptFolders kept;
    Text crew_said;  ///< a sentence: what was sent or received last, or why nothing is
    bool crew_failed = false;
    std::int64_t crew_new = 0;       ///< events that came in since the roof was looked at
    std::vector<JobInCrew> in_crew;  ///< jobs that are not on this tablet
    std::vector<std::filesystem::path> files;
    Text done;  ///< what the last touch on this screen did
    Choosing choosing = Choosing::hand_over;
    FolderView view;  ///< the folder being shown
    std::vector<std::filesystem::path> places;
    std::optional<std::filesystem::path> stuck;  ///< a job whose disk takes nothing more
};

}  // namespace hemline
