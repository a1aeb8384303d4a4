// An open file that closes itself, and a function that writes all bytes to it.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Closes its file at the end of its life.
class OpenFile {
  public:
    explicit OpenFile(int file) : file_(file) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile();
    [[nodiscard]] int get() const { return file_; }
    [[nodiscard]] bool is_open() const { return file_ >= 0; }

  private:
    int file_;
};

/// Writes all bytes, going on after a short write. 0, or the errno that stopped it.
int write_all(Disk& disk, int file, std::span<const std::uint8_t> bytes);

/// Makes names in the folder last: fsync of the folder.
std::optional<Problem> sync_folder(Disk& disk, const std::filesystem::path& folder);

}  // namespace hemline
