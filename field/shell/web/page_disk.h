// The browser's disk: files lie in memory, as they were laid there at the start, and what is
// written to them goes to the page, which keeps it in IndexedDB.
//
//   write ─▶ file in memory, and what is not kept yet ─▶ keep() ─▶ page ─▶ hemline_kept
#pragma once

#include <map>
#include <string>

#include "engine/record/event_bytes.h"
#include "field/store/disk.h"

namespace hemline {

class PageDisk : public Disk {
  public:
    int open(const std::filesystem::path& path, int flags) override;
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override;
    /// Hands to the page what was written to the file since the last time, and does not wait.
    int sync(int file) override;
    /// The page could not keep what was handed to it last: the file is again what it was before.
    void take_back();

  private:
    struct Kept {
        std::string path;        ///< below …/hemline
        std::size_t offset = 0;  ///< of `bytes` in the file
        Bytes bytes;             ///< written and not handed over
    };
    std::map<int, Kept> files_;
    int last_ = -1;              ///< the file that was handed over last
    std::size_t last_size_ = 0;  ///< and its size before
};

}  // namespace hemline
