#include "tools/cli/given_job.h"

#include <filesystem>

#include "engine/words/result.h"
#include "field/store/job_folder.h"
#include "tools/cli/complaint.h"

namespace hemline {

bool is_job(const std::string& path) {
    std::error_code unknown;
    return std::filesystem::is_directory(path, unknown) ||
           std::filesystem::path(path).extension() == ".journal";
}

std::optional<Job> read_given_job(const std::string& path, const Practice& practice) {
    const Result<JobRecord> record = read_job_folder(path);
    if (!record) {
        complain(path, 0, 0, record.problem());
        return {};
    }
    return replay(record->events, practice);
}

}  // namespace hemline
