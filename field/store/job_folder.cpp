#include "field/store/job_folder.h"

#include <algorithm>
#include <cerrno>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/open_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

}  // namespace

Text explain(const FileSetAside& set_aside) {
    const Text words =
        say("{1} bytes of {2} from byte {3} were set aside, {4}.", set_aside.stretch.size,
            shown(set_aside.file.filename()), set_aside.stretch.offset, set_aside.stretch.why);
    return set_aside.kept_in != set_aside.file
               ? say("{1} They are kept in {2}.", words, shown(set_aside.kept_in.filename()))
               : say("{1} They stay where they are.", words);
}

Result<Bytes> read_file(const fs::path& file, std::size_t size_most) {
    // Without O_NONBLOCK a pipe of that name would wait for ever.
    const OpenFile opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat about {};
    if (!opened.is_open() || ::fstat(opened.get(), &about) != 0) {
        return disk_problem(phrase("opened"), file, errno);
    }
    if (!S_ISREG(about.st_mode)) {
        return Problem{say("{1} is not a file.", shown(file)),
                       say("Name a file, or move this out of the way.")};
    }
    if (static_cast<std::uint64_t>(about.st_size) > size_most) {
        return Problem{say("{1} is larger than {2} MiB: no journal and no job file is.",
                           shown(file), size_most >> 20U),
                       say("Move it out of the way.")};
    }
    Bytes bytes(static_cast<std::size_t>(about.st_size));
    std::size_t have = 0;
    while (have < bytes.size()) {
        const ssize_t got = ::read(opened.get(), bytes.data() + have, bytes.size() - have);
        if (got < 0 && errno != EINTR) {
            return disk_problem(phrase("read"), file, errno);
        }
        if (got == 0) {
            break;  // it grew shorter since
        }
        have += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    bytes.resize(have);
    return bytes;
}

namespace {

/// The files in a folder whose names end like that, by name.
std::vector<fs::path> files_in(const fs::path& folder, const char* ending) {
    std::vector<fs::path> found;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end;
         entry.increment(error)) {
        std::error_code unknown;
        if (entry->path().extension() == ending && !entry->is_directory(unknown)) {
            found.push_back(entry->path());
        }
    }
    std::sort(found.begin(), found.end());
    return found;
}

}  // namespace

std::vector<fs::path> journals_in(const fs::path& folder) { return files_in(folder, ".journal"); }

Result<std::vector<fs::path>> job_files(const fs::path& job) {
    const fs::path folder = job_folder(job);
    std::error_code error;
    if (!fs::exists(job, error)) {
        return Problem{say("There is no job at {1}.", shown(job)),
                       say("Check the path, or start the job first.")};
    }
    if (!fs::is_directory(folder, error)) {
        return Problem{say("{1} is neither a job's folder nor a .journal file in one.", shown(job)),
                       say("Name the folder that holds the .journal files.")};
    }
    // Asked here, so that a folder that may not be listed is not taken for one without journals.
    const fs::directory_iterator listed(folder, error);
    if (error) {
        return disk_problem(phrase("listed"), folder, error.value());
    }
    std::vector<fs::path> files = journals_in(folder);
    if (files.empty()) {
        return Problem{say("There is no job in {1}: it holds no .journal file.", shown(folder)),
                       say("Check the path, or start the job first.")};
    }
    const std::vector<fs::path> aside = files_in(folder, ".bytes");
    files.insert(files.end(), aside.begin(), aside.end());
    return files;
}

Result<JobRecord> read_job_folder(const fs::path& job) {
    JobRecord record;
    record.folder = job_folder(job);
    const Result<std::vector<fs::path>> files = job_files(job);
    if (!files) {
        return files.problem();
    }
    for (const fs::path& file : *files) {
        if (file.extension() != ".journal") {
            continue;
        }
        const Result<Bytes> bytes = read_file(file);
        if (!bytes) {
            return bytes.problem();
        }
        JournalRead read = read_journal(*bytes);
        std::move(read.events.begin(), read.events.end(), std::back_inserter(record.events));
        for (SetAside& stretch : read.set_aside) {
            record.set_aside.push_back({file, std::move(stretch), file});
        }
    }
    record.events = in_order(std::move(record.events));
    return record;
}

}  // namespace hemline
