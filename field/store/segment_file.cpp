#include "field/store/segment_file.h"

#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

std::optional<FileStamp> stamp_of(const fs::path& file) {
    struct stat about {};
    if (::lstat(file.c_str(), &about) != 0 || !S_ISREG(about.st_mode)) {
        return {};
    }
    return FileStamp{about.st_ino, about.st_size, about.st_ctim.tv_sec, about.st_ctim.tv_nsec};
}

std::optional<std::uint32_t> crc_of_file(const fs::path& file) {
    // Without O_NONBLOCK a pipe of that name would wait for ever.
    const OpenFile opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW));
    Bytes buffer(std::size_t{64} << 10);
    std::uint32_t crc = 0;
    while (opened.is_open()) {
        const ssize_t got = ::read(opened.get(), buffer.data(), buffer.size());
        if (got == 0) {
            return crc;
        }
        if (got < 0 && errno != EINTR) {
            return {};
        }
        crc = got < 0 ? crc : crc32_of(std::span(buffer).first(static_cast<std::size_t>(got)), crc);
    }
    return {};
}

}  // namespace

Result<std::map<std::string, FileStamp>> segments_in(const fs::path& folder) {
    const Result<There> there = what_is(folder, Links::refused);
    if (!there) {
        return there.problem();
    }
    if (*there == There::link) {
        return disk_problem(phrase("listed"), folder, ELOOP);
    }
    if (*there == There::nothing) {
        return std::map<std::string, FileStamp>();
    }
    const Result<std::vector<std::string>> names = names_in(folder, Links::refused);
    if (!names) {
        return names.problem();
    }
    std::map<std::string, FileStamp> found;
    for (const std::string& name : *names) {
        if (const auto stamp = parse_segment_name(name) ? stamp_of(folder / name) : std::nullopt) {
            found.emplace(name, *stamp);
        }
    }
    return found;
}

std::optional<Bytes> read_segment(const fs::path& file, SegmentName name) {
    const auto stamp = stamp_of(file);
    if (!stamp || static_cast<std::uint64_t>(stamp->size) > segment_most ||
        crc_of_file(file) != name.crc) {
        return {};
    }
    const Result<Bytes> bytes = read_file(file, segment_most, Links::refused);
    // It may have been written to since.
    return bytes && crc32_of(*bytes) == name.crc ? std::optional(*bytes) : std::nullopt;
}

}  // namespace hemline
