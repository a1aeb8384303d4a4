#include "field/store/whole_file.h"

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <string>

#include <fcntl.h>
#include <unistd.h>

#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"

namespace hemline {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view draft_begin = ".syncthing.", draft_end = ".tmp";

/// Whether a program of that number runs; one of another user's does too.
bool runs(const std::string& program) {
    const pid_t number = static_cast<pid_t>(std::atoi(program.c_str()));
    return number > 0 && (::kill(number, 0) == 0 || errno != ESRCH);
}

/// 0, or the errno that stopped it.
int write_and_sync(Disk& disk, int file, const Bytes& bytes) {
    const int error = write_all(disk, file, bytes);
    return error == 0 && disk.sync(file) != 0 ? errno : error;
}

}  // namespace

std::string draft_name(std::string_view name) {
    return std::string(draft_begin) + std::string(name) + std::string(draft_end);
}

bool is_old_draft(std::string_view name) {
    if (name.size() <= draft_begin.size() + draft_end.size() ||
        name.substr(0, draft_begin.size()) != draft_begin ||
        name.substr(name.size() - draft_end.size()) != draft_end) {
        return false;
    }
    name.remove_suffix(draft_end.size());
    const std::size_t dot = name.rfind('.');
    return dot + 1 < name.size() &&
           name.find_first_not_of("0123456789", dot + 1) == std::string_view::npos;
}

void remove_old_drafts_of(const fs::path& file) {
    const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
    const std::string begin = std::string(draft_begin) + file.filename().string() + ".";
    const auto names = names_in(folder);
    for (const std::string& name : names ? *names : std::vector<std::string>()) {
        if (name.rfind(begin, 0) == 0 && is_old_draft(name)) {
            const std::size_t digits = name.size() - begin.size() - draft_end.size();
            if (const std::string program = name.substr(begin.size(), digits);
                program.find('.') == std::string::npos && !runs(program)) {
                ::unlink((folder / name).c_str());
            }
        }
    }
}

Result<fs::path> write_draft(Disk& disk, const fs::path& file, const BytesFor& bytes_for) {
    const fs::path draft = file.parent_path() /
                           draft_name(file.filename().string() + "." + std::to_string(::getpid()));
    remove_old_drafts_of(file);
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
