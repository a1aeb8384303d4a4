#include "field/store/lasting.h"

#include <fcntl.h>

#include "engine/words/result.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

std::optional<Problem> make_last(Disk& disk, const fs::path& journal) {
    // Without O_NONBLOCK a pipe of that name would wait for ever.
    const OpenFile opened(disk.open(journal, O_RDONLY | O_NONBLOCK));
    if (opened.is_open() && disk.sync(opened.get()) == 0) {
        return {};
    }
    const Result<Bytes> bytes = read_file(journal, file_size_most, Links::refused);
    return bytes ? write_whole_file(disk, journal, *bytes) : bytes.problem();
}

}  // namespace

std::optional<Problem> make_journals_last(Disk& disk, const fs::path& folder) {
    const Result<std::vector<fs::path>> journals = journals_in(folder);
    if (!journals) {
        return journals.problem();
    }
    std::optional<Problem> problem;
    for (const fs::path& journal : *journals) {
        problem = problem ? problem : make_last(disk, journal);
    }
    problem = problem ? problem : sync_folder(disk, folder);
    if (problem) {
        problem->what =
            say("What this job holds may be lost if the power goes. {1}", problem->what);
    }
    return problem;
}

}  // namespace hemline
