// What lies outside the open job, as the screens of handing over show it, and what a touch there
// asks for: the crew folder, job files, and folders to choose from.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/words/result.h"
#include "field/store/folder_view.h"
#include "field/store/job_carrying.h"
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
    Text crew_said;  ///< one sentence: what was carried last, or why nothing is
    bool crew_failed = false;
    std::int64_t crew_new = 0;       ///< events that came in since the roof was looked at
    std::vector<JobInCrew> in_crew;  ///< jobs that are not on this tablet
    std::vector<std::filesystem::path> files;
    Text done;  ///< what the last touch here did
    Choosing choosing = Choosing::hand_over;
    FolderView view;  ///< the folder that is looked into
    std::vector<std::filesystem::path> places;
    std::optional<std::filesystem::path> stuck;  ///< a job that its disk does not take
};

struct OutsideWish {
    enum class Deed {
        put_into_file,
        take_file,
        join_crew_job,
        choose,       ///< begin to choose a folder
        look_into,    ///< another folder, while choosing
        use,          ///< the folder that is looked into
        leave,        ///< choose none
        forget_crew,  ///< use no crew folder any more
    };
    Deed deed = Deed::leave;
    std::filesystem::path path;  ///< of a file or a folder
    std::string job;             ///< in the crew folder
    Choosing choosing = Choosing::hand_over;
};

/// How this device hands over; all empty where it has no folders to choose from. `refused`:
/// JournalFile::refused() of that job.
struct HandOver {
    std::function<Result<FilePut>(const std::filesystem::path& job,
                                  const std::filesystem::path& folder,
                                  std::optional<EventId> refused)>
        put_into_file;
    /// Into the one of the jobs that it is of, or as a new one.
    std::function<Result<TakenIn>(const std::filesystem::path& file,
                                  const std::vector<std::filesystem::path>& jobs)>
        take_file;
    /// Which jobs the crew folder holds.
    std::function<Result<std::vector<JobInCrew>>(const std::filesystem::path& crew)> in_crew;
    std::function<Result<TakenIn>(const std::filesystem::path& crew, const std::string& job,
                                  const std::vector<std::filesystem::path>& jobs)>
        join_crew_job;
    std::function<Result<WentOn>(const std::filesystem::path& job,
                                 const std::filesystem::path& folder,
                                 std::optional<EventId> refused)>
        go_on_in;
    /// Keeps on this device which folders it uses.
    std::function<std::optional<Problem>(const KeptFolders&)> keep;
};

}  // namespace hemline
