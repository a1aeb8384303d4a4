#include "engine/record/frame_search.h"

#include <algorithm>

#include "engine/record/event_bytes.h"
#include "engine/record/frame.h"

namespace hemline {

std::optional<std::size_t> FrameSearch::size_of_frame_here() {
    const std::span<const std::uint8_t> rest = bytes_.subspan(at_);
    if (!has_magic(rest) || rest.size() < frame_header_size) {
        return {};
    }
    const FrameHeader header = header_at(rest);
    if (header.length > frame_payload_most || header.length > rest.size() - frame_header_size) {
        return {};
    }
    const std::uint32_t crc =
        stretches_ ? stretches_->of(at_ + frame_header_size, header.length, header_crc(rest))
                   : crc32_of(rest.subspan(frame_header_size, header.length), header_crc(rest));
    if (crc != header.crc) {
        if (!stretches_) {
            stretches_.emplace(bytes_);
        }
        return {};
    }
    return frame_header_size + header.length;
}

std::optional<FramePlace> FrameSearch::next() {
    while (at_ < bytes_.size()) {
        if (const std::optional<std::size_t> size = size_of_frame_here()) {
            const FramePlace found{at_, *size};
            at_ += *size;
            return found;
        }
        const auto begin = bytes_.begin() + static_cast<std::ptrdiff_t>(at_) + 1;
        at_ = static_cast<std::size_t>(std::find(begin, bytes_.end(), frame_magic[0]) -
                                       bytes_.begin());
    }
    return {};
}

}  // namespace hemline
