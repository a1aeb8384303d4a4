#include "field/store/torn_tail.h"

#include <cerrno>
#include <string>

#include <fcntl.h>

#include "field/store/disk_problem.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// A name that is free: an earlier tear may have been kept under the same offset.
Result<fs::path> name_for(const FileSetAside& set_aside) {
    return free_name(
        set_aside.file.parent_path(),
        set_aside.file.stem().string() + "-torn-" + std::to_string(set_aside.stretch.offset),
        ".bytes");
}

std::optional<Problem> keep_bytes(Disk& disk, const fs::path& file,
                                  std::span<const std::uint8_t> bytes) {
    const OpenFile opened(disk.open(file, O_WRONLY | O_CREAT | O_EXCL));
    if (!opened.is_open()) {
        return disk_problem(phrase("created"), file, errno);
    }
    int error = write_all(disk, opened.get(), bytes);
    if (error == 0 && disk.sync(opened.get()) != 0) {
        error = errno;
    }
    if (error != 0) {
        return disk_problem(phrase("written"), file, error);
    }
    return sync_folder(disk, file.parent_path());
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
    const Result<fs::path> kept = name_for(set_aside);
    if (!kept) {
        return kept;
    }
    const std::span<const std::uint8_t> tail = std::span(*bytes).subspan(whole);
    if (const auto problem = keep_bytes(disk, *kept, tail)) {
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
