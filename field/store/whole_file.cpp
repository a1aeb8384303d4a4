#include "field/store/whole_file.h"

#include <cerrno>
#include <string>

#include <fcntl.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/open_file.h"

namespace hemline {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view draft_begin = ".syncthing.", draft_end = ".tmp";

/// 0, or the errno that stopped it.
int write_and_sync(Disk& disk, int file, const Bytes& bytes) {
    const int error = write_all(disk, file, bytes);
    return error == 0 && disk.sync(file) != 0 ? errno : error;
}

}  // namespace

std::string draft_name(std::string_view name) {
    return std::string(draft_begin) + std::string(name) + std::string(draft_end);
}

Result<fs::path> write_draft(Disk& disk, const fs::path& file, const BytesFor& bytes_for) {
    const fs::path draft = file.parent_path() /
                           draft_name(file.filename().string() + "." + std::to_string(::getpid()));
    Bytes bytes;
    int error = 0;
    {
        const OpenFile opened(disk.open(draft, O_WRONLY | O_CREAT | O_TRUNC));
        struct stat about {};
        if (!opened.is_open() || ::fstat(opened.get(), &about) != 0) {
            error = errno;
            ::unlink(draft.c_str());
            return disk_problem(phrase("created"), file, error);
        }
        bytes = bytes_for(about);
        error = write_and_sync(disk, opened.get(), bytes);
    }
    if (error != 0) {
        ::unlink(draft.c_str());
        return disk_problem(phrase("written"), file, error);
    }
    const Result<Bytes> back = read_file(draft, file_size_most, Links::refused);
    if (!back || *back != bytes) {
        ::unlink(draft.c_str());
        return back ? disk_problem(phrase("read back"), file, EIO) : back.problem();
    }
    return draft;
}

std::optional<Problem> write_whole_file(Disk& disk, const fs::path& file,
                                        const BytesFor& bytes_for) {
    const Result<fs::path> draft = write_draft(disk, file, bytes_for);
    if (!draft) {
        return draft.problem();
    }
    if (disk.rename(*draft, file) != 0) {
        const int error = errno;
        ::unlink(draft->c_str());
        return disk_problem(phrase("written"), file, error);
    }
    return sync_folder(disk, file.has_parent_path() ? file.parent_path() : ".");
}

std::optional<Problem> write_whole_file(Disk& disk, const fs::path& file, const Bytes& bytes) {
    return write_whole_file(disk, file, [&](const struct stat&) { return bytes; });
}

}  // namespace hemline
