// The segments in a crew folder, as a synchroniser lays them there: some half arrived, some of them
// no segments at all.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>

#include <sys/types.h>

#include "engine/record/bytes.h"
#include "engine/words/result.h"
#include "field/store/segment_name.h"

namespace hemline {

/// What a tablet begins a new segment after; a reader takes twice as much, and no more.
constexpr std::size_t segment_full = std::size_t{8} << 20, segment_most = 2 * segment_full;

/// What changes whenever a file is written, whatever clock its writer had.
struct FileStamp {
    ino_t inode = 0;
    off_t size = 0;
    std::int64_t changed_s = 0, changed_ns = 0;

    bool operator==(const FileStamp&) const = default;
};

/// The files in the folder that have a segment's name, as they are now. Empty where there is no
/// such folder. Problem: it cannot be listed.
Result<std::map<std::string, FileStamp>> segments_in(const std::filesystem::path& folder);

/// The segment's bytes when they are all there; nothing while a synchroniser still writes it, and
/// of what is none. Holds no more in memory than a buffer before the checksum is right.
std::optional<Bytes> read_segment(const std::filesystem::path& file, SegmentName name);

}  // namespace hemline
