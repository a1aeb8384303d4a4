#include "field/store/whole_file.h"

#include <cerrno>
#include <string>

#include <fcntl.h>
#include <unistd.h>

#include "field/store/disk_problem.h"
#include "field/store/open_file.h"

namespace hemline {

namespace fs = std::filesystem;

std::optional<Problem> write_whole_file(Disk& disk, const fs::path& file,
                                        const std::function<Bytes(const struct stat&)>& bytes_for) {
    // A name that file synchronisers pass over, Syncthing's own for drafts.
    const fs::path draft = file.parent_path() / (".syncthing." + file.filename().string() + "." +
                                                 std::to_string(::getpid()) + ".tmp");
    struct stat about {};
    int error = 0;
    {
        const OpenFile opened(disk.open(draft, O_WRONLY | O_CREAT | O_TRUNC));
        if (!opened.is_open() || ::fstat(opened.get(), &about) != 0) {
            return disk_problem(phrase("created"), file, errno);
        }
        error = write_all(disk, opened.get(), bytes_for(about));
        if (error == 0 && disk.sync(opened.get()) != 0) {
            error = errno;
        }
    }
    if (error == 0 && disk.rename(draft, file) != 0) {
        error = errno;
    }
    if (error != 0) {
        ::unlink(draft.c_str());
        return disk_problem(phrase("written"), file, error);
    }
    return sync_folder(disk, file.has_parent_path() ? file.parent_path() : ".");
}

std::optional<Problem> write_whole_file(Disk& disk, const fs::path& file, const Bytes& bytes) {
    return write_whole_file(disk, file, [&](const struct stat&) { return bytes; });
}

}  // namespace hemline
