#include "field/shell/web/page_disk.h"

#include <emscripten.h>

#include <system_error>

#include "field/store/folders.h"

namespace hemline {

namespace {

// clang-format off
EM_JS(void, page_keep, (const char* path, double offset, const std::uint8_t* bytes, std::size_t size), {
    Module.hemline.keep(UTF8ToString(path), offset, HEAPU8.slice(bytes, bytes + size));
})
// clang-format on

}  // namespace

int PageDisk::open(const std::filesystem::path& path, int flags) {
    const int file = Disk::open(path, flags);
    const auto home = hemline_folder();
    if (file >= 0 && home.ok()) {
        std::error_code error;
        const auto size = std::filesystem::file_size(path, error);
        files_[file] = {path.lexically_relative(*home).string(), error ? 0 : std::size_t(size), {}};
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
    if (!kept.bytes.empty()) {
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

}  // namespace hemline
