#include "field/shell/web/page_disk.h"

#include <emscripten.h>

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <system_error>

#include <fcntl.h>

#include "engine/words/result.h"
#include "field/store/folder_draft.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"

namespace hemline {

namespace {

// clang-format off
EM_JS(void, page_keep, (const char* path, double offset, const std::uint8_t* bytes, std::size_t size), {
    Module.hemline.keep(UTF8ToString(path), offset, HEAPU8.slice(bytes, bytes + size));
})
EM_JS(void, page_put, (const char* path, const std::uint8_t* bytes, std::size_t size), {
    Module.hemline.put(UTF8ToString(path), HEAPU8.slice(bytes, bytes + size));
})
EM_JS(void, page_remove, (const char* path), { Module.hemline.put(UTF8ToString(path), null); })
// clang-format on

/// The path as the page knows it: below …/hemline.
std::string kept_name(const std::filesystem::path& path) {
    const auto home = hemline_folder();
    return home.ok() ? path.lexically_relative(*home).string() : path.string();
}

}  // namespace

int PageDisk::open(const std::filesystem::path& path, int flags) {
    const int file = Disk::open(path, flags);
    if (file >= 0) {
        std::error_code error;
        const auto size = std::filesystem::file_size(path, error);
        files_[file] = {kept_name(path), error ? 0 : std::size_t(size), {}, (flags & O_TRUNC) != 0};
    }
    return file;
}

ssize_t PageDisk::write(int file, const std::uint8_t* bytes, std::size_t size) {
    const ssize_t written = Disk::write(file, bytes, size);
    if (written > 0) {
        Bytes& waiting = files_[file].bytes;
        waiting.insert(waiting.end(), bytes, bytes + written);
    }
    return written;
}

int PageDisk::sync(int file) {
    Kept& kept = files_[file];
    if (!kept.bytes.empty() && !kept.is_draft) {
        page_keep(kept.path.c_str(), static_cast<double>(kept.offset), kept.bytes.data(),
                  kept.bytes.size());
        last_ = file;
        last_size_ = kept.offset;
        kept.offset += kept.bytes.size();
        kept.bytes.clear();
    }
    return 0;
}

void PageDisk::take_back() {
    if (last_ >= 0 && truncate(last_, last_size_) == 0) {
        files_[last_].offset = last_size_;
    }
    last_ = -1;
}

void PageDisk::note_change(const std::filesystem::path& file) {
    std::error_code error;
    std::optional<Bytes> before;
    if (std::filesystem::exists(file, error)) {
        if (Result<Bytes> bytes = read_file(file)) {
            before = *bytes;
        }
    }
    changes_.push_back({file, std::move(before)});
}

/// What is being built in a draft folder is kept when that folder is put in place.
int PageDisk::rename_folder(const std::filesystem::path& from, const std::filesystem::path& to) {
    const auto names = names_in(from);
    if (!names) {
        errno = EIO;
        return -1;
    }
    std::map<std::filesystem::path, Bytes> files;
    for (const std::string& name : *names) {
        const Result<Bytes> bytes = read_file(from / name);
        if (!bytes) {
            errno = EIO;
            return -1;
        }
        files[to / name] = *bytes;
    }
    if (Disk::rename(from, to) != 0) {
        return -1;
    }
    for (const auto& [file, bytes] : files) {
        changes_.push_back({file, std::nullopt});
        page_put(kept_name(file).c_str(), bytes.data(), bytes.size());
    }
    return 0;
}

int PageDisk::rename(const std::filesystem::path& from, const std::filesystem::path& to) {
    const Result<There> there = what_is(from);
    if (there && *there == There::folder) {
        return rename_folder(from, to);
    }
    if (is_folder_draft(to.parent_path().filename().string())) {
        return Disk::rename(from, to);
    }
    const Result<Bytes> bytes = read_file(from);
    if (!bytes) {
        errno = EIO;
        return -1;
    }
    note_change(to);
    if (Disk::rename(from, to) != 0) {
        changes_.pop_back();
        return -1;
    }
    page_put(kept_name(to).c_str(), bytes->data(), bytes->size());
    return 0;
}

int PageDisk::remove(const std::filesystem::path& file) {
    note_change(file);
    if (Disk::remove(file) != 0) {
        changes_.pop_back();
        return -1;
    }
    page_remove(kept_name(file).c_str());
    return 0;
}

void PageDisk::kept_whole(std::size_t changes) {
    const auto kept = static_cast<std::ptrdiff_t>(std::min(changes, changes_.size()));
    changes_.erase(changes_.begin(), changes_.begin() + kept);
}

void PageDisk::take_back_whole(std::size_t changes) {
    for (std::size_t i = std::min(changes, changes_.size()); i-- > 0;) {
        const Change& change = changes_[i];
        std::error_code error;
        if (!change.before) {
            std::filesystem::remove(change.file, error);
        } else {
            std::ofstream(change.file, std::ios::binary | std::ios::trunc)
                .write(reinterpret_cast<const char*>(change.before->data()),
                       static_cast<std::streamsize>(change.before->size()));
        }
    }
    kept_whole(changes);
}

}  // namespace hemline
