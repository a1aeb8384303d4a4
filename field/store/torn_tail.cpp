#include "field/store/torn_tail.h"

#include <cerrno>
#include <string>

#include <fcntl.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// The file that already holds these bytes (a program was killed before it cut them off), or an
/// unused name: another torn tail may have been kept under the same offset.
Result<fs::path> name_for(const FileSetAside& set_aside, const Bytes& tail) {
    const fs::path folder = set_aside.file.parent_path();
    const std::string stem =
        set_aside.file.stem().string() + "-torn-" + std::to_string(set_aside.stretch.offset);
    const Result<std::vector<fs::path>> kept = files_in(folder, {".bytes"});
    if (!kept) {
        return kept.problem();
    }
    for (const fs::path& file : *kept) {
        const Result<Bytes> there = read_file(file, file_size_most, Links::refused);
        if (file.filename().string().rfind(stem, 0) == 0 && there && *there == tail) {
            return file;
        }
    }
    return free_name(folder, stem, ".bytes");
}

}  // namespace

Result<fs::path> move_torn_tail(Disk& disk, const FileSetAside& set_aside) {
    const Result<Bytes> bytes = read_file(set_aside.file, file_size_most, Links::refused);
    if (!bytes) {
        return bytes.problem();
    }
    const std::size_t whole = read_journal(*bytes).whole_size;
    if (set_aside.stretch.offset < whole || whole == bytes->size()) {
        return set_aside.file;
    }
    const Bytes tail(bytes->begin() + static_cast<std::ptrdiff_t>(whole), bytes->end());
    const Result<fs::path> kept = name_for(set_aside, tail);
    if (!kept) {
        return kept;
    }
    if (const auto problem = write_whole_file(disk, *kept, tail)) {
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
