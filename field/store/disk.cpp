#include "field/store/disk.h"

#include <cstdio>

#include <fcntl.h>
#include <unistd.h>

namespace hemline {

int Disk::open(const std::filesystem::path& path, int flags) {
    const int follow = (flags & O_DIRECTORY) != 0 ? 0 : O_NOFOLLOW;
    return ::open(path.c_str(), flags | follow | O_CLOEXEC, 0666);
}

ssize_t Disk::write(int file, const std::uint8_t* bytes, std::size_t size) {
    return ::write(file, bytes, size);
}

int Disk::sync(int file) { return ::fdatasync(file); }

int Disk::truncate(int file, std::size_t size) {
    return ::ftruncate(file, static_cast<off_t>(size));
}

int Disk::rename(const std::filesystem::path& from, const std::filesystem::path& to) {
    return ::rename(from.c_str(), to.c_str());
}

int Disk::remove(const std::filesystem::path& file) { return ::unlink(file.c_str()); }

}  // namespace hemline
