#include "field/store/torn_tail.h"

#include <cerrno>
#include <string>
#include <system_error>

#include <fcntl.h>

#include "field/store/disk_problem.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// The file that holds these bytes already (a program was killed before it cut them off), or a
/// name that is free: another tear may have been kept under the same offset.
fs::path name_for(const FileSetAside& set_aside, const Bytes& tail) {
    const std::string stem =
        set_aside.file.stem().string() + "-torn-" + std::to_string(set_aside.stretch.offset);
    fs::path name = set_aside.file.parent_path() / (stem + ".bytes");
    std::error_code error;
    for (int number = 2; fs::exists(name, error); ++number) {
        const Result<Bytes> there = read_file(name);
        if (there && *there == tail) {
            break;
        }
        name.replace_filename(stem + "-" + std::to_string(number) + ".bytes");
    }
    return name;
}

}  // namespace

Result<fs::path> move_torn_tail(Disk& disk, const FileSetAside& set_aside) {
    const Result<Bytes> bytes = read_file(set_aside.file);
    if (!bytes) {
        return bytes.problem();
    }
    const std::size_t whole = read_journal(*bytes).whole_size;
    if (set_aside.stretch.offset < whole || whole == bytes->size()) {
        return set_aside.file;
    }
    const Bytes tail(bytes->begin() + static_cast<std::ptrdiff_t>(whole), bytes->end());
    const fs::path kept = name_for(set_aside, tail);
    if (const auto problem = write_whole_file(disk, kept, tail)) {
        return *problem;
    }
    const OpenFile journal(disk.open(set_aside.file, O_WRONLY));
    if (!journal.is_open() || disk.truncate(journal.get(), whole) != 0 ||
        disk.sync(journal.get()) != 0) {
        return disk_problem(phrase("shortened to its last whole event"), set_aside.file, errno);
    }
    return kept;
}

}  // namespace hemline
