// Reads the segments in a crew folder as a synchronizer puts them there: some have only half
// arrived, and some are not segments.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>

#include <sys/types.h>

#include "engine/record/bytes.h"
#include "engine/words/result_declared.h"
#include "field/store/segment_name.h"

namespace hemline {

/// The size after which a tablet begins a new segment; a reader accepts up to twice as much.
constexpr std::size_t segment_full = std::size_t{8} << 20, segment_most = 2 * segment_full;

/// Changes whenever a file is written, whatever the clock of its writer.
struct FileStamp {
    ino_t inode = 0;
    off_t size = 0;
    std::int64_t changed_s = 0, changed_ns = 0;

    bool operator==(const FileStamp&) const = default;
};

/// The files in the folder that have a segment's name, as they are now. Empty where there is no
/// such folder. Problem: it cannot be listed.
Result<std::map<std::string, FileStamp>> segments_in(const std::filesystem::path& folder);

/// The segment's bytes when all are there; nothing while a synchronizer still writes it, or when it
/// is not a segment. Holds only a buffer in memory before the checksum is right.
std::optional<Bytes> read_segment(const std::filesystem::path& file, SegmentName name);

}  // namespace hemline
