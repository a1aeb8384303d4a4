#include "field/store/open_file.h"

#include <cerrno>

#include <fcntl.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"

namespace hemline {

OpenFile::~OpenFile() {
    if (is_open()) {
        ::close(file_);
    }
}

int write_all(Disk& disk, int file, std::span<const std::uint8_t> bytes) {
    while (!bytes.empty()) {
        const ssize_t written = disk.write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written <= 0) {
            return written < 0 ? errno : EIO;
        }
        bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    return 0;
}

std::optional<Problem> sync_folder(Disk& disk, const std::filesystem::path& folder) {
    const OpenFile opened(disk.open(folder, O_RDONLY | O_DIRECTORY));
    if (!opened.is_open() || disk.sync(opened.get()) != 0) {
        return disk_problem(phrase("synced"), folder, errno);
    }
    return {};
}

}  // namespace hemline
