// A disk that can lose power: it remembers every call, so that a test can lay out what would be on
// it after a power cut before any of them, with what was not synced dropped, torn or out of order.
//
//   calls   open  write  sync  sync folder  write │ sync          the cut before the last sync:
//   disk    ───── durable ──────────────────┘ └ may be whole, torn, in pieces, or not there
#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <fcntl.h>
#include <unistd.h>

#include "field/store/disk.h"
#include "field/store/job_folder.h"

namespace hemline {

struct DiskCall {
    enum class Kind { create, write, sync, sync_folder, truncate, rename, remove } kind;
    std::string file;  ///< below the root
    std::string to;    ///< rename
    std::size_t at = 0;
    Bytes bytes;
};

/// Passes every call to the real disk, without its syncs, and remembers it.
class RememberingDisk : public Disk {
  public:
    explicit RememberingDisk(std::filesystem::path root) : root_(std::move(root)) {}
    std::vector<DiskCall> calls;

    int open(const std::filesystem::path& path, int flags) override {
        const bool is_new = !std::filesystem::exists(path);
        const int file = Disk::open(path, flags);
        if (file >= 0) {
            open_[file] = {name_of(path), (flags & O_DIRECTORY) != 0};
            if (is_new) {
                calls.push_back({DiskCall::Kind::create, name_of(path), "", 0, {}});
            }
        }
        return file;
    }
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
        const off_t end = ::lseek(file, 0, SEEK_END);
        calls.push_back({DiskCall::Kind::write, open_[file].name, "", static_cast<std::size_t>(end),
                         Bytes(bytes, bytes + size)});
        return Disk::write(file, bytes, size);
    }
    int sync(int file) override {
        calls.push_back({open_[file].is_folder ? DiskCall::Kind::sync_folder : DiskCall::Kind::sync,
                         open_[file].name,
                         "",
                         0,
                         {}});
        return 0;
    }
    int truncate(int file, std::size_t size) override {
        calls.push_back({DiskCall::Kind::truncate, open_[file].name, "", size, {}});
        return Disk::truncate(file, size);
    }
    int rename(const std::filesystem::path& from, const std::filesystem::path& to) override {
        calls.push_back({DiskCall::Kind::rename, name_of(from), name_of(to), 0, {}});
        return Disk::rename(from, to);
    }
    int remove(const std::filesystem::path& file) override {
        calls.push_back({DiskCall::Kind::remove, name_of(file), "", 0, {}});
        return Disk::remove(file);
    }

  private:
    struct Open {
        std::string name;
        bool is_folder = false;
    };
    [[nodiscard]] std::string name_of(const std::filesystem::path& path) const {
        return path.lexically_relative(root_).string();
    }
    std::filesystem::path root_;
    std::map<int, Open> open_;
};

using Image = std::map<std::string, Bytes>;  ///< what stands on the disk

/// dropped: nothing that was not synced is there. torn: all of it, the last write cut short, its
/// rest zeros or missing. reordered: any of it, by sectors of 512 bytes, in any order; what is
/// missing between is zeros.
enum class Cut { dropped, torn, reordered };

/// What is durable, and what is not yet.
class PowerCut {
  public:
    explicit PowerCut(Image image) : durable_(std::move(image)) {}

    void done(const DiskCall& call) {
        using Kind = DiskCall::Kind;
        if (call.kind == Kind::sync || call.kind == Kind::sync_folder) {
            settle(call);
        } else {
            waiting_.push_back(call);
        }
    }
    template <class Random>
    [[nodiscard]] Image image(Cut cut, Random& random) const {
        Image image = durable_;
        if (cut == Cut::dropped) {
            return image;
        }
        std::vector<DiskCall> calls = waiting_;
        if (cut == Cut::torn) {
            if (!calls.empty() && calls.back().kind == DiskCall::Kind::write) {
                Bytes& bytes = calls.back().bytes;
                const std::size_t kept = random() % (bytes.size() + 1);
                if (random() % 2 == 0) {
                    bytes.resize(kept);
                } else {
                    std::fill(bytes.begin() + static_cast<std::ptrdiff_t>(kept), bytes.end(), 0);
                }
            }
        } else {
            calls = in_pieces(calls);
            std::shuffle(calls.begin(), calls.end(), random);
            calls.resize(calls.empty() ? 0 : random() % (calls.size() + 1));
        }
        for (const DiskCall& call : calls) {
            apply(image, call);
            const auto synced = bytes_.find(call.file);
            if (call.kind == DiskCall::Kind::create && synced != bytes_.end()) {
                image[call.file] = synced->second;
            }
        }
        return image;
    }

  private:
    static std::vector<DiskCall> in_pieces(const std::vector<DiskCall>& calls) {
        constexpr std::size_t sector = 512;
        std::vector<DiskCall> pieces;
        for (const DiskCall& call : calls) {
            if (call.kind != DiskCall::Kind::write) {
                pieces.push_back(call);
                continue;
            }
            for (std::size_t done = 0; done < call.bytes.size();) {
                const std::size_t size =
                    std::min(call.bytes.size() - done, sector - (call.at + done) % sector);
                const auto from = call.bytes.begin() + static_cast<std::ptrdiff_t>(done);
                pieces.push_back({call.kind, call.file, "", call.at + done,
                                  Bytes(from, from + static_cast<std::ptrdiff_t>(size))});
                done += size;
            }
        }
        return pieces;
    }
    static void apply(Image& image, const DiskCall& call) {
        switch (call.kind) {
            case DiskCall::Kind::create:
                image.try_emplace(call.file);
                break;
            case DiskCall::Kind::write:
                if (const auto file = image.find(call.file); file != image.end()) {
                    Bytes& bytes = file->second;
                    bytes.resize(std::max(bytes.size(), call.at + call.bytes.size()));
                    std::copy(call.bytes.begin(), call.bytes.end(),
                              bytes.begin() + static_cast<std::ptrdiff_t>(call.at));
                }
                break;
            case DiskCall::Kind::truncate:
                if (const auto file = image.find(call.file); file != image.end()) {
                    file->second.resize(call.at);
                }
                break;
            case DiskCall::Kind::rename:
                rename(image, call);
                break;
            case DiskCall::Kind::remove:
                image.erase(call.file);
                break;
            default:
                break;
        }
    }
    /// A file, or a folder with all in it.
    static void rename(Image& image, const DiskCall& call) {
        const Image all = image;
        for (const auto& [name, bytes] : all) {
            const bool is_it = name == call.file, is_in_it = name.rfind(call.file + "/", 0) == 0;
            if (is_it || is_in_it) {
                image.erase(name);
                image[call.to + name.substr(call.file.size())] = bytes;
            }
        }
    }
    /// A file's sync makes its bytes last, and its name only with its folder's sync.
    void settle(const DiskCall& sync) {
        std::vector<DiskCall> still;
        for (const DiskCall& call : waiting_) {
            const bool of_names = call.kind == DiskCall::Kind::create ||
                                  call.kind == DiskCall::Kind::rename ||
                                  call.kind == DiskCall::Kind::remove;
            const std::string folder =
                std::filesystem::path(call.file).parent_path().lexically_normal().string();
            const std::string synced =
                sync.file == "." ? "" : std::filesystem::path(sync.file).string();
            const bool now = sync.kind == DiskCall::Kind::sync_folder
                                 ? of_names && folder == synced
                                 : !of_names && call.file == sync.file;
            if (now) {
                apply(of_names || durable_.count(call.file) > 0 ? durable_ : bytes_, call);
            } else {
                still.push_back(call);
            }
            if (now && call.kind == DiskCall::Kind::create) {
                if (const auto written = bytes_.find(call.file); written != bytes_.end()) {
                    durable_[call.file] = written->second;
                    bytes_.erase(written);
                }
            }
            if (!now && call.kind == DiskCall::Kind::create) {
                bytes_.try_emplace(call.file);
            }
        }
        waiting_ = std::move(still);
    }

    Image durable_;
    Image bytes_;  ///< synced bytes of files whose names do not last yet
    std::vector<DiskCall> waiting_;
};

inline void lay_out(const Image& image, const std::filesystem::path& root) {
    std::error_code error;
    std::filesystem::remove_all(root, error);
    std::filesystem::create_directories(root);
    for (const auto& [name, bytes] : image) {
        std::filesystem::create_directories((root / name).parent_path());
        std::ofstream out(root / name, std::ios::binary);
        out.write(reinterpret_cast<const char*>(bytes.data()),
                  static_cast<std::streamsize>(bytes.size()));
    }
}

}  // namespace hemline
