#include "engine/handover/zip.h"

#include <zip.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <string_view>

#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

using Bytes = std::vector<std::uint8_t>;

struct Discard {
    void operator()(zip_t* archive) const { zip_discard(archive); }
    void operator()(zip_file_t* entry) const { zip_fclose(entry); }
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Archive = std::unique_ptr<zip_t, Discard>;
using OpenEntry = std::unique_ptr<zip_file_t, Discard>;
using Source = std::unique_ptr<zip_source_t, Discard>;

Text mend_damaged() { return say("Ask for the file again: it did not arrive whole."); }
Text mend_foreign() { return say("Choose a job file that this program packed."); }

Problem not_written() {
    return {say("The job file cannot be put together: the zip library gave up."),
            say("Carry the job with a crew folder, or copy its folder.")};
}

std::size_t little_endian_16(std::span<const std::uint8_t> at) {
    return at[0] | static_cast<std::size_t>(at[1]) << 8U;
}

/// Checks every possible end of the container before the library allocates what it claims.
std::optional<Problem> check_ends(std::span<const std::uint8_t> file, std::size_t entries_most) {
    constexpr std::size_t end_size = 22, comment_most = 65'535, zip64_locator_size = 20;
    constexpr std::string_view end_mark{"PK\5\6", 4}, zip64_mark{"PK\6\7", 4};
    const std::size_t tail_size =
        std::min(file.size(), end_size + comment_most + zip64_locator_size);
    const auto tail = file.last(tail_size);
    const std::string_view text(reinterpret_cast<const char*>(tail.data()), tail.size());
    bool found = false;
    for (std::size_t at = text.find(end_mark); at != std::string_view::npos;
         at = text.find(end_mark, at + 1)) {
        if (tail.size() - at < end_size) {
            break;
        }
        found = true;
        if (little_endian_16(tail.subspan(at + 8)) > entries_most ||
            little_endian_16(tail.subspan(at + 10)) > entries_most) {
            return Problem{
                say("The file says that it holds more than {1} entries: no job file does.",
                    entries_most),
                mend_foreign()};
        }
    }
    if (!found) {
        return Problem{say("The file is no zip container, or its end is missing."), mend_damaged()};
    }
    if (text.find(zip64_mark) != std::string_view::npos) {
        return Problem{say("The file is a container for huge files (zip64): no job file is."),
                       mend_foreign()};
    }
    return {};
}

std::optional<Problem> read_entry(zip_t* archive, zip_uint64_t index, const std::string& shown,
                                  std::size_t size, Bytes& bytes) {
    const OpenEntry opened(zip_fopen_index(archive, index, 0));
    bytes.resize(size + 1);  // one byte more, to reach the end so that the checksum is checked
    zip_int64_t got = 0;
    std::size_t have = 0;
    while (opened && have < bytes.size()) {
        got = zip_fread(opened.get(), bytes.data() + have, bytes.size() - have);
        if (got <= 0) {
            break;
        }
        have += static_cast<std::size_t>(got);
    }
    if (opened && have > size) {
        return Problem{say("The entry {1} is larger than it says.", shown), mend_damaged()};
    }
    if (!opened || got < 0 || have != size) {
        return Problem{say("The entry {1} is damaged: its size or checksum (CRC) is wrong.", shown),
                       mend_damaged()};
    }
    bytes.resize(size);
    return {};
}

/// The entry's size, when it is plausible.
Result<std::size_t> size_of_entry(zip_t* archive, zip_uint64_t index, const std::string& shown,
                                  std::size_t left) {
    zip_stat_t about;
    zip_stat_init(&about);
    constexpr zip_uint64_t wanted =
        ZIP_STAT_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
    if (zip_stat_index(archive, index, 0, &about) != 0 || (about.valid & wanted) != wanted) {
        return Problem{say("The entry {1} does not say what it is.", shown), mend_damaged()};
    }
    if (about.encryption_method != ZIP_EM_NONE ||
        (about.comp_method != ZIP_CM_STORE && about.comp_method != ZIP_CM_DEFLATE)) {
        return Problem{say("The entry {1} is encrypted or packed in another way.", shown),
                       mend_foreign()};
    }
    if (about.size > left) {
        return Problem{say("The entry {1} makes the job larger than a job file can hold.", shown),
                       mend_foreign()};
    }
    return static_cast<std::size_t>(about.size);
}

}  // namespace

Result<Bytes> zip_of(const Entries& entries) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* whole = zip_source_buffer_create(nullptr, 0, 0, &error);
    const Source kept(whole);
    if (!kept) {
        return not_written();
    }
    zip_source_keep(whole);  // the archive owns the first, the bytes are read back from the second
    Archive archive(zip_open_from_source(whole, ZIP_TRUNCATE, &error));
    if (!archive) {
        zip_source_free(whole);
        return not_written();
    }
    for (const auto& [name, bytes] : entries) {
        zip_source_t* source = zip_source_buffer(archive.get(), bytes.data(), bytes.size(), 0);
        const zip_int64_t index =
            source == nullptr ? -1
                              : zip_file_add(archive.get(), name.c_str(), source, ZIP_FL_ENC_UTF_8);
        if (index < 0) {
            zip_source_free(source);
            return not_written();
        }
        const auto at = static_cast<zip_uint64_t>(index);
        zip_set_file_compression(archive.get(), at, ZIP_CM_DEFLATE, 6);
        zip_file_set_dostime(archive.get(), at, 0, 0x21, 0);  // 1 January 1980, whenever packed
    }
    if (zip_close(archive.get()) != 0) {
        return not_written();
    }
    static_cast<void>(archive.release());
    zip_stat_t about;
    zip_stat_init(&about);
    if (zip_source_stat(whole, &about) != 0 || zip_source_open(whole) != 0) {
        return not_written();
    }
    Bytes bytes(static_cast<std::size_t>(about.size));
    const zip_int64_t got = zip_source_read(whole, bytes.data(), bytes.size());
    zip_source_close(whole);
    if (got < 0 || static_cast<std::size_t>(got) != bytes.size()) {
        return not_written();
    }
    return bytes;
}

std::optional<Problem> unzip(std::span<const std::uint8_t> file, ZipLimits limits,
                             bool (*is_known)(const std::string& name), Entries& entries) {
    if (file.size() > limits.file) {
        return Problem{say("The file is larger than {1} MiB: no job file is.", limits.file >> 20U),
                       mend_foreign()};
    }
    if (auto problem = check_ends(file, limits.entries)) {
        return *problem;
    }
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source = zip_source_buffer_create(file.data(), file.size(), 0, &error);
    const Archive archive(source == nullptr ? nullptr
                                            : zip_open_from_source(source, ZIP_RDONLY, &error));
    if (!archive) {
        const std::string why = zip_error_strerror(&error);
        zip_error_fini(&error);
        zip_source_free(source);
        return Problem{say("The file is no whole zip container: {1}.", why), mend_damaged()};
    }
    std::size_t left = limits.unpacked;
    const zip_int64_t count = zip_get_num_entries(archive.get(), 0);
    for (zip_int64_t i = 0; i < count; ++i) {
        const auto index = static_cast<zip_uint64_t>(i);
        const char* raw = zip_get_name(archive.get(), index, ZIP_FL_ENC_RAW);
        const std::string name = raw == nullptr ? "" : raw;
        const std::string shown = quoted(name);
        if (!is_known(name)) {
            return Problem{say("The entry {1} has no place in a job file.", shown), mend_foreign()};
        }
        if (entries.count(name) > 0) {
            return Problem{say("The entry {1} is there twice.", shown), mend_foreign()};
        }
        const Result<std::size_t> size = size_of_entry(archive.get(), index, shown, left);
        if (!size) {
            return size.problem();
        }
        left -= *size;
        if (auto problem = read_entry(archive.get(), index, shown, *size, entries[name])) {
            return *problem;
        }
    }
    return {};
}

}  // namespace hemline
