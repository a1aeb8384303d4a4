// The browser's disk: files are in memory, loaded at the start; what is written to them goes to the
// page, which keeps it in IndexedDB.
//
//   write ─▶ file in memory, and what is not kept yet ─▶ keep() ─▶ page ─▶ hemline_kept
//   draft, rename; remove ─▶ memory, and put() ─▶ page, all of one call in one transaction ─▶
//   hemline_kept_whole
#pragma once

#include <deque>
#include <map>
#include <optional>
#include <string>

#include "engine/record/bytes.h"
#include "field/store/disk.h"

namespace hemline {

class PageDisk : public Disk {
  public:
    int open(const std::filesystem::path& path, int flags) override;
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override;
    /// Gives the page what was written to the file since the last time, without waiting.
    int sync(int file) override;
    /// The page could not keep what it was given last: restores the file as it was before.
    void take_back();

    /// What is moved into place is kept completely, a folder with everything in it; a draft is not
    /// kept.
    int rename(const std::filesystem::path& from, const std::filesystem::path& to) override;
    int remove(const std::filesystem::path& file) override;
    /// The page has kept so many of these changes; or none of them, and then they are undone.
    void kept_whole(std::size_t changes);
    void take_back_whole(std::size_t changes);

  private:
    struct Kept {
        std::string path;        ///< below …/hemline
        std::size_t offset = 0;  ///< of `bytes` in the file
        Bytes bytes;             ///< written and not handed over
        bool is_draft = false;   ///< to be moved into place
    };
    struct Change {
        std::filesystem::path file;
        std::optional<Bytes> before;  ///< nothing: the file did not exist
    };
    int rename_folder(const std::filesystem::path& from, const std::filesystem::path& to);
    void note_change(const std::filesystem::path& file);

    std::map<int, Kept> files_;
    std::deque<Change> changes_;  ///< whole files that the page has not answered for
    int last_ = -1;               ///< the file that was handed over last
    std::size_t last_size_ = 0;   ///< and its size before
};

}  // namespace hemline
