// The few disk calls that can lose an event, behind a single interface so that a test can break the
// disk.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

#include <sys/types.h>

namespace hemline {

/// The real disk. Every call is the system call of its name: −1 and errno on failure.
class Disk {
  public:
    Disk() = default;
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;
    virtual ~Disk() = default;

    /// For a file that is a link: ELOOP, so that what is written goes where it was meant to, or
    /// nowhere.
    virtual int open(const std::filesystem::path& path, int flags);
    /// May write less than it was given.
    virtual ssize_t write(int file, const std::uint8_t* bytes, std::size_t size);
    virtual int sync(int file);  ///< fdatasync
    virtual int truncate(int file, std::size_t size);
    /// For a file, or for a folder with everything in it.
    virtual int rename(const std::filesystem::path& from, const std::filesystem::path& to);
    virtual int remove(const std::filesystem::path& file);  ///< unlink
};

}  // namespace hemline
