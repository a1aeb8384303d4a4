// A disk that can lose power: it remembers every call, so that a test can lay out what would be on
// it after a power cut before any of them, with what was not synced dropped, torn or out of order.
//
//   calls   open  write  sync  sync folder  write │ sync          the cut before the last sync:
//   disk    ───── durable ──────────────────┘ └ may be whole, torn, in pieces, or not there
#pragma once

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <fcntl.h>
#include <unistd.h>

#include "field/store/disk.h"
#include "field/store/job_folder.h"

namespace hemline {

/// Names and bytes become durable separately: a file is known by its label, whatever its name.
struct DiskCall {
    enum class Kind { create, write, sync, failed_sync, sync_folder, truncate, rename, remove };
    Kind kind = Kind::write;
    std::string file;  ///< its label; rename, remove, sync_folder: the name below the root
    std::string to;    ///< create, rename: the name below the root
    std::size_t at = 0;
    Bytes bytes;
    bool lost = false;  ///< a sync failed since: a later sync skips it
};

/// Gives a file another name, or a folder with all in it.
inline void rename_in(std::map<std::string, std::string>& labels, const std::string& from,
                      const std::string& to) {
    const std::map<std::string, std::string> before = labels;
    for (const auto& [name, label] : before) {
        if (name == from || name.rfind(from + "/", 0) == 0) {
            labels.erase(name);
            labels[to + name.substr(from.size())] = label;
        }
    }
}

/// Passes every call to the real disk, without its syncs, and remembers it. Fails the calls it is
/// told to: a write then writes part of its bytes, any other call does nothing.
class RememberingDisk : public Disk {
  public:
    explicit RememberingDisk(std::filesystem::path root) : root_(std::move(root)) {}
    std::vector<DiskCall> calls;
    std::function<bool(std::size_t call)> fails;  ///< by its number from 0; empty: none does
    std::size_t made = 0;                         ///< calls, those that failed too
    std::size_t gets_down = 0;                    ///< bytes of a failing write

    int open(const std::filesystem::path& path, int flags) override {
        if (fails_now()) {
            return -1;
        }
        const bool is_new = !std::filesystem::exists(path);
        const int file = Disk::open(path, flags);
        if (file >= 0 && is_new) {
            labels_[name_of(path)] = name_of(path) + "#" + std::to_string(calls.size());
            calls.push_back({DiskCall::Kind::create, label_of(path), name_of(path), 0, {}});
        }
        const bool is_folder = (flags & O_DIRECTORY) != 0;
        open_[file] = {is_folder ? name_of(path) : label_of(path), is_folder};
        return file;
    }
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
        const bool broken = fails_now();
        size = broken ? std::min(size, gets_down) : size;
        const off_t end = ::lseek(file, 0, SEEK_END);
        calls.push_back({DiskCall::Kind::write, open_[file].label, "",
                         static_cast<std::size_t>(end), Bytes(bytes, bytes + size)});
        const ssize_t written = Disk::write(file, bytes, size);
        return broken ? fail() : written;
    }
    int sync(int file) override {
        const bool broken = fails_now();
        const auto kind = broken                  ? DiskCall::Kind::failed_sync
                          : open_[file].is_folder ? DiskCall::Kind::sync_folder
                                                  : DiskCall::Kind::sync;
        calls.push_back({kind, open_[file].label, "", 0, {}});
        return broken ? fail() : 0;
    }
    int truncate(int file, std::size_t size) override {
        if (fails_now()) {
            return -1;
        }
        calls.push_back({DiskCall::Kind::truncate, open_[file].label, "", size, {}});
        return Disk::truncate(file, size);
    }
    int rename(const std::filesystem::path& from, const std::filesystem::path& to) override {
        if (fails_now()) {
            return -1;
        }
        calls.push_back({DiskCall::Kind::rename, name_of(from), name_of(to), 0, {}});
        rename_in(labels_, name_of(from), name_of(to));
        return Disk::rename(from, to);
    }
    int remove(const std::filesystem::path& file) override {
        if (fails_now()) {
            return -1;
        }
        calls.push_back({DiskCall::Kind::remove, name_of(file), "", 0, {}});
        labels_.erase(name_of(file));
        return Disk::remove(file);
    }

  private:
    struct Open {
        std::string label;  ///< of a folder its name
        bool is_folder = false;
    };
    static int fail() {
        errno = EIO;
        return -1;
    }
    bool fails_now() {
        const std::size_t call = made++;
        return fails && fails(call) && fail() < 0;
    }
    [[nodiscard]] std::string name_of(const std::filesystem::path& path) const {
        const std::string name = path.lexically_relative(root_).string();
        return name == "." ? "" : name;
    }
    [[nodiscard]] std::string label_of(const std::filesystem::path& path) const {
        const auto label = labels_.find(name_of(path));
        return label == labels_.end() ? name_of(path) : label->second;
    }
    std::filesystem::path root_;
    std::map<int, Open> open_;
    std::map<std::string, std::string> labels_;  ///< by name, of what was made here
};

using Image = std::map<std::string, Bytes>;  ///< what is on the disk, by name

/// dropped: nothing that was not synced is there. torn: all of it, the last write cut short, its
/// rest zeros or missing. reordered: any of it, by sectors of 512 bytes, in any order; what is
/// missing between is zeros.
enum class Cut { dropped, torn, reordered };

/// What is durable, and what is not yet.
class PowerCut {
  public:
    explicit PowerCut(const Image& image) {
        for (const auto& [name, bytes] : image) {
            durable_.labels[name] = name;
            durable_.bytes[name] = bytes;
        }
    }

    void done(const DiskCall& call) {
        using Kind = DiskCall::Kind;
        if (call.kind == Kind::sync || call.kind == Kind::sync_folder) {
            settle(call);
        } else if (call.kind == Kind::failed_sync) {
            lose(call.file);
        } else {
            waiting_.push_back(call);
        }
    }
    template <class Random>
    [[nodiscard]] Image image(Cut cut, Random& random) const {
        if (cut == Cut::dropped) {
            return durable_.image();
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
        Contents contents = durable_;
        for (const DiskCall& call : calls) {
            contents.apply(call);
        }
        return contents.image();
    }

  private:
    struct Contents {
        std::map<std::string, std::string> labels;  ///< by name
        Image bytes;                                ///< by label

        void apply(const DiskCall& call) {
            switch (call.kind) {
                case DiskCall::Kind::create:
                    labels[call.to] = call.file;
                    break;
                case DiskCall::Kind::write: {
                    Bytes& there = bytes[call.file];
                    there.resize(std::max(there.size(), call.at + call.bytes.size()));
                    std::copy(call.bytes.begin(), call.bytes.end(),
                              there.begin() + static_cast<std::ptrdiff_t>(call.at));
                    break;
                }
                case DiskCall::Kind::truncate:
                    bytes[call.file].resize(call.at);
                    break;
                case DiskCall::Kind::rename:
                    rename_in(labels, call.file, call.to);
                    break;
                case DiskCall::Kind::remove:
                    labels.erase(call.file);
                    break;
                default:
                    break;
            }
        }
        [[nodiscard]] Image image() const {
            Image image;
            for (const auto& [name, label] : labels) {
                const auto there = bytes.find(label);
                image[name] = there == bytes.end() ? Bytes() : there->second;
            }
            return image;
        }
    };

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
    static bool is_of_names(const DiskCall& call) {
        return call.kind == DiskCall::Kind::create || call.kind == DiskCall::Kind::rename ||
               call.kind == DiskCall::Kind::remove;
    }
    /// After a failed sync the system takes what it could not write for written: a later sync
    /// passes it over, and it may be on the disk or not for good.
    void lose(const std::string& file) {
        for (DiskCall& call : waiting_) {
            call.lost = call.lost || (call.kind == DiskCall::Kind::write && call.file == file);
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
            const std::string& name = call.to.empty() ? call.file : call.to;
            const bool now = sync.kind == DiskCall::Kind::sync_folder
                                 ? is_of_names(call) && std::filesystem::path(name).parent_path() ==
                                                            std::filesystem::path(sync.file)
                                 : !is_of_names(call) && call.file == sync.file && !call.lost;
            if (now && call.kind == DiskCall::Kind::truncate) {
                // Nothing of what it cut off can come any more.
                still.erase(std::remove_if(still.begin(), still.end(),
                                           [&](const DiskCall& write) {
                                               return write.kind == DiskCall::Kind::write &&
                                                      write.file == call.file &&
                                                      write.at >= call.at;
                                           }),
                            still.end());
            }
            if (now) {
                durable_.apply(call);
            } else {
                still.push_back(call);
            }
        }
        waiting_ = std::move(still);
    }

    Contents durable_;
    std::vector<DiskCall> waiting_;
};

inline void lay_into(const Image& image, const std::filesystem::path& root) {
    for (const auto& [name, bytes] : image) {
        std::filesystem::create_directories((root / name).parent_path());
        std::ofstream out(root / name, std::ios::binary);
        out.write(reinterpret_cast<const char*>(bytes.data()),
                  static_cast<std::streamsize>(bytes.size()));
    }
}

inline void lay_out(const Image& image, const std::filesystem::path& root) {
    std::error_code error;
    std::filesystem::remove_all(root, error);
    std::filesystem::create_directories(root);
    lay_into(image, root);
}

}  // namespace hemline
