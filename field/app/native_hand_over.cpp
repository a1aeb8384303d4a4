#include "field/app/native_hand_over.h"

#include "engine/words/result.h"
#include "field/store/crew_folder.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

Result<std::vector<JobInCrew>> jobs_named(const fs::path& crew) {
    const Result<std::vector<std::string>> ids = jobs_in_crew(crew);
    if (!ids) {
        return ids.problem();
    }
    std::vector<JobInCrew> found;
    for (const std::string& id : *ids) {
        const Result<Journals> journals = journals_in_crew(crew, id);
        const std::string name = journals ? name_of_job(*journals) : "";
        if (!name.empty()) {
            found.push_back({id, name});
        }
    }
    return found;
}

}  // namespace

HandOver native_hand_over(const fs::path& jobs_folder, std::uint64_t tablet,
                          const Practice& practice, const std::function<std::int64_t()>& wall_ms,
                          const std::shared_ptr<Disk>& disk) {
    HandOver here;
    here.put_into_file = [=](const fs::path& job, const fs::path& folder,
                             std::optional<EventId> refused, const PageWords& words) {
        return put_into_file(*disk, job, folder, practice, wall_ms(), refused, words);
    };
    here.take_file = [=](const fs::path& file, const std::vector<fs::path>& jobs) {
        const Result<Journals> journals = read_job_file(file);
        return journals ? take_in_journals(*disk, *journals, jobs, jobs_folder, tablet)
                        : Result<TakenIn>(journals.problem());
    };
    here.in_crew = jobs_named;
    here.join_crew_job = [=](const fs::path& crew, const std::string& job,
                             const std::vector<fs::path>& jobs) {
        const Result<Journals> journals = journals_in_crew(crew, job);
        return journals ? take_in_journals(*disk, *journals, jobs, jobs_folder, tablet)
                        : Result<TakenIn>(journals.problem());
    };
    here.go_on_in = [=](const fs::path& job, const fs::path& folder,
                        std::optional<EventId> refused) {
        return go_on_in(*disk, job, folder, tablet, refused);
    };
    here.keep = keep_folders;
    return here;
}

}  // namespace hemline
