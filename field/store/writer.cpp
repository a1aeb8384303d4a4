#include "field/store/writer.h"

#include <cerrno>
#include <string>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// The number in the file, if the file is still where it was written.
std::optional<std::uint64_t> read_writer(const fs::path& file) {
    struct stat about {};
    const Result<Bytes> bytes = read_file(file, file_size_most, Links::refused);
    if (!bytes || ::stat(file.c_str(), &about) != 0) {
        return {};
    }
    const std::string text(bytes->begin(), bytes->end());
    const std::size_t space = text.find(' ');
    const std::string place = " " + std::to_string(about.st_ino) + "\n";
    if (space == std::string::npos || (inodes_last && text.substr(space) != place)) {
        return {};
    }
    const std::optional<std::uint64_t> writer = parse_device(text.substr(0, space));
    return writer && *writer != 0 ? writer : std::nullopt;
}

Result<std::uint64_t> write_writer(Disk& disk, const fs::path& folder, std::uint64_t tablet,
                                   std::uint64_t writer) {
    const auto problem =
        write_whole_file(disk, writer_file(folder, tablet), [&](const struct stat& about) {
            const std::string line =
                print_device(writer) + " " + std::to_string(about.st_ino) + "\n";
            return Bytes(line.begin(), line.end());
        });
    return problem ? Result<std::uint64_t>(*problem) : Result<std::uint64_t>(writer);
}

}  // namespace

fs::path writer_file(const fs::path& folder, std::uint64_t tablet) {
    return folder / (".device-" + print_device(tablet));
}

std::optional<std::uint64_t> draw_device() {
    std::uint64_t device = 0;
    while (device == 0) {
        if (::getentropy(&device, sizeof device) != 0) {
            return {};
        }
    }
    return device;
}

std::uint64_t writer_in(const fs::path& folder, std::uint64_t tablet) {
    return read_writer(writer_file(folder, tablet)).value_or(tablet);
}

Result<std::uint64_t> new_writer(Disk& disk, const fs::path& folder, std::uint64_t tablet) {
    const std::optional<std::uint64_t> drawn = draw_device();
    if (!drawn) {
        return disk_problem(phrase("given a number drawn at random"), folder, errno);
    }
    return write_writer(disk, folder, tablet, *drawn);
}

Result<std::uint64_t> claim_writer(const fs::path& folder, std::uint64_t tablet) {
    if (const auto writer = read_writer(writer_file(folder, tablet))) {
        return *writer;
    }
    Disk disk;
    const Result<There> there = what_is(writer_file(folder, tablet), Links::refused);
    if (!there) {
        return there.problem();
    }
    if (*there != There::nothing) {
        return new_writer(disk, folder, tablet);
    }
    // The tablet's number is right even without the file: a full disk shows when something is
    // saved.
    static_cast<void>(write_writer(disk, folder, tablet, tablet));
    return tablet;
}

}  // namespace hemline
