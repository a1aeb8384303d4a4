// How this device sends and receives jobs: what the app asks of its folders and files.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/state/outside.h"
#include "field/store/job_carrying.h"

namespace hemline {

/// How this device sends and receives jobs; all empty where it has no folders to choose from.
/// `refused`: JournalFile::refused() of that job. `words`: what its page for people is written in.
struct HandOver {
    std::function<Result<FilePut>(const std::filesystem::path& job,
                                  const std::filesystem::path& folder,
                                  std::optional<EventId> refused, const PageWords& words)>
        put_into_file;
    /// Takes it into the job it belongs to, or as a new job.
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
    /// Saves on this device which folders it uses.
    std::function<std::optional<Problem>(const KeptFolders&)> keep;
};

}  // namespace hemline
