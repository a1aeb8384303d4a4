// Reading a journal: frame after frame, and past damage to the next frame that checks out.
#include <algorithm>
#include <optional>
#include <utility>

#include "engine/record/crc32.h"
#include "engine/record/event_bytes.h"
#include "engine/record/frame.h"

namespace hemline {
namespace {

using View = std::span<const std::uint8_t>;

/// The size of the frame that begins at `at`, when its header and CRC are right. `stretches` is
/// made at the first doubt.
std::optional<std::size_t> whole_frame(View bytes, std::size_t at,
                                       std::optional<StretchCrc>& stretches) {
    const View rest = bytes.subspan(at);
    if (!has_magic(rest) || rest.size() < frame_header_size) {
        return {};
    }
    const FrameHeader header = header_at(rest);
    if (header.length > frame_payload_most || header.length > rest.size() - frame_header_size) {
        return {};
    }
    const std::uint32_t crc =
        stretches ? stretches->of(at + frame_header_size, header.length, header_crc(rest))
                  : crc32_of(rest.subspan(frame_header_size, header.length), header_crc(rest));
    if (crc != header.crc) {
        if (!stretches) {
            stretches.emplace(bytes);
        }
        return {};
    }
    return frame_header_size + header.length;
}

void read_frame(View frame, std::size_t at, JournalRead& read) {
    const FrameHeader header = header_at(frame);
    if (header.version != frame_version) {
        read.set_aside.push_back({at, frame.size(),
                                  "written by another version of the program (format " +
                                      std::to_string(header.version) + ", this one reads " +
                                      std::to_string(frame_version) + ")"});
        return;
    }
    auto found = event_in(header.kind, frame.subspan(frame_header_size));
    if (auto* event = std::get_if<Event>(&found)) {
        read.events.push_back(std::move(*event));
    } else {
        read.set_aside.push_back({at, frame.size(),
                                  "an event of kind " + std::to_string(header.kind) +
                                      " that this program cannot read (" +
                                      std::get<std::string>(found) + ")"});
    }
}

}  // namespace

JournalRead read_journal(View bytes) {
    JournalRead read;
    std::optional<StretchCrc> stretches;
    std::size_t damage_from = 0;
    std::size_t at = 0;
    while (at < bytes.size()) {
        const std::optional<std::size_t> size = whole_frame(bytes, at, stretches);
        if (!size) {
            const auto next = std::find(bytes.begin() + static_cast<std::ptrdiff_t>(at) + 1,
                                        bytes.end(), frame_magic[0]);
            at = static_cast<std::size_t>(next - bytes.begin());
            continue;
        }
        if (at > damage_from) {
            read.set_aside.push_back(
                {damage_from, at - damage_from, "damaged: no whole event can be read here"});
        }
        read_frame(bytes.subspan(at, *size), at, read);
        at += *size;
        damage_from = at;
    }
    read.whole_size = damage_from;
    if (bytes.size() > damage_from) {
        read.set_aside.push_back({damage_from, bytes.size() - damage_from,
                                  "torn: the last write was not finished, or was damaged"});
    }
    return read;
}

}  // namespace hemline
