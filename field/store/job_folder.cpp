#include "field/store/job_folder.h"

#include <cerrno>
#include <iterator>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/words/result.h"
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

Result<Bytes> read_file(const fs::path& file, std::size_t size_most, Links links) {
    // Without O_NONBLOCK a pipe of that name would wait for ever.
    const int flags = O_RDONLY | O_CLOEXEC | O_NONBLOCK;
    const OpenFile opened(::open(file.c_str(), flags | (links == Links::refused ? O_NOFOLLOW : 0)));
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
            break;  // it got shorter meanwhile
        }
        have += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    if (have < bytes.size() &&
        (::fstat(opened.get(), &about) != 0 || static_cast<std::size_t>(about.st_size) > have)) {
        return disk_problem(phrase("read"), file, EIO);
    }
    bytes.resize(have);
    return bytes;
}

Result<std::vector<fs::path>> journals_in(const fs::path& folder) {
    return files_in(folder, {".journal"});
}

Result<bool> holds_journals(const fs::path& folder) {
    const Result<There> there = what_is(folder);
    if (!there || *there != There::folder) {
        return there ? Result<bool>(false) : Result<bool>(there.problem());
    }
    const Result<std::vector<fs::path>> journals = journals_in(folder);
    return journals ? Result<bool>(!journals->empty()) : Result<bool>(journals.problem());
}

Result<std::vector<fs::path>> job_files(const fs::path& job) {
    const Result<fs::path> folder = job_folder(job);
    const Result<There> there = folder ? what_is(*folder) : Result<There>(folder.problem());
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        return Problem{say("There is no job at {1}.", shown(job)),
                       say("Check the path, or start the job first.")};
    }
    if (*there != There::folder) {
        return Problem{say("{1} is neither a job's folder nor a .journal file in one.", shown(job)),
                       say("Name the folder that holds the .journal files.")};
    }
    const Result<std::vector<fs::path>> files = files_in(*folder, {".journal", ".bytes"});
    if (!files) {
        return files;
    }
    if (files->empty() || files->front().extension() != ".journal") {
        return Problem{say("There is no job in {1}: it holds no .journal file.", shown(*folder)),
                       say("Check the path, or start the job first.")};
    }
    return files;
}

Result<JobRecord> read_job_folder(const fs::path& job) {
    const Result<fs::path> folder = job_folder(job);
    const Result<std::vector<fs::path>> files = job_files(job);
    if (!files) {
        return files.problem();
    }
    JobRecord record;
    record.folder = *folder;
    for (const fs::path& file : *files) {
        if (file.extension() != ".journal") {
            continue;
        }
        const Result<Bytes> bytes = read_file(file, file_size_most, Links::refused);
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
