#include "field/store/kept_folders.h"

#include <sstream>
#include <string>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/settings_file.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

}  // namespace

Result<KeptFolders> read_kept_folders() {
    const Result<fs::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    KeptFolders kept;
    const fs::path file = *home / "folders";
    const Result<There> there = what_is(file);
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        return kept;
    }
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    std::istringstream lines(std::string(bytes->begin(), bytes->end()));
    for (std::string line; std::getline(lines, line);) {
        const std::size_t space = line.find(' ');
        const std::string word = line.substr(0, space);
        const fs::path path = space == std::string::npos ? "" : line.substr(space + 1);
        if (path.empty() || (word != "crew" && word != "hand-over" && word != "job")) {
            return Problem{say("{1} has a line that names no folder: \"{2}\".", shown(file), line),
                           say("Choose the folders again under Hand over.")};
        }
        if (word == "job") {
            kept.jobs.push_back(path);
        } else {
            (word == "crew" ? kept.crew : kept.hand_over) = path;
        }
    }
    return kept;
}

std::optional<Problem> keep_folders(const KeptFolders& folders) {
    std::string text;
    bool one_line = true;
    const auto put = [&](const char* word, const fs::path& path) {
        one_line = one_line && path.string().find('\n') == std::string::npos;
        text += std::string(word) + " " + path.string() + "\n";
    };
    if (folders.crew) {
        put("crew", *folders.crew);
    }
    if (folders.hand_over) {
        put("hand-over", *folders.hand_over);
    }
    for (const fs::path& job : folders.jobs) {
        put("job", job);
    }
    if (!one_line) {
        return Problem{say("A folder's name has a line end in it: it cannot be kept."),
                       say("Give the folder a plain name, then choose it again.")};
    }
    Disk disk;
    return write_settings(disk, "folders", text, read_kept_folders().ok());
}

}  // namespace hemline
