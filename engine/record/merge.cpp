#include "engine/record/merge.h"

#include <algorithm>
#include <optional>

#include "engine/record/frame.h"
#include "engine/record/frame_search.h"

namespace hemline {
namespace {

using FrameBytes = std::span<const std::uint8_t>;

constexpr std::size_t device_at = frame_header_size + 1, sequence_at = device_at + 8,
                      id_end = sequence_at + 4;

template <class T>
T number_at(FrameBytes bytes, std::size_t at) {
    T value = 0;
    for (std::size_t i = 0; i < sizeof(T); ++i) {
        value = static_cast<T>(value | static_cast<T>(static_cast<T>(bytes[at + i]) << (8 * i)));
    }
    return value;
}

/// The event's number is at the same place in every kind; only another version may move it.
EventId id_in(FrameBytes frame) {
    const FrameHeader header = header_at(frame);
    if (!is_version_known(header.of.version) || frame.size() < id_end ||
        frame[frame_header_size] != 1) {
        return {};
    }
    return {number_at<std::uint64_t>(frame, device_at),
            number_at<std::uint32_t>(frame, sequence_at)};
}

/// By the sequence of the device, frames without a number last; two of the same number by their
/// bytes.
bool frame_comes_before(const FrameAt& a, const FrameAt& b) {
    const std::uint32_t place_a = a.id.sequence - 1, place_b = b.id.sequence - 1;  // 0 wraps: last
    if (place_a != place_b) {
        return place_a < place_b;
    }
    return std::lexicographical_compare(a.bytes.begin(), a.bytes.end(), b.bytes.begin(),
                                        b.bytes.end());
}

bool same_bytes(const FrameAt& a, const FrameAt& b) {
    return std::equal(a.bytes.begin(), a.bytes.end(), b.bytes.begin(), b.bytes.end());
}

}  // namespace

FramesRead read_frames(FrameBytes bytes) {
    FramesRead read;
    FrameSearch search(bytes);
    std::size_t done = 0;
    while (const std::optional<FramePlace> found = search.next()) {
        if (found->at > done) {
            read.damage.push_back(bytes.subspan(done, found->at - done));
        }
        const FrameBytes frame = bytes.subspan(found->at, found->size);
        read.frames.push_back({id_in(frame), frame});
        done = found->at + found->size;
    }
    read.whole_size = done;
    if (done < bytes.size()) {
        read.damage.push_back(bytes.subspan(done));
    }
    return read;
}

void Merge::add(std::uint64_t named, FrameBytes journal) {
    const FramesRead read = read_frames(journal);
    for (const FrameAt& frame : read.frames) {
        frames_[frame.id.sequence == 0 ? named : frame.id.device].push_back(frame);
    }
    for (const FrameBytes stretch : read.damage) {
        add_damage(stretch);
    }
}

void Merge::add_damage(FrameBytes stretch) {
    if (!stretch.empty()) {
        damage_.insert(Bytes(stretch.begin(), stretch.end()));
    }
}

Journals Merge::journals() const {
    Journals merged;
    merged.damage = damage_;
    for (const auto& [device, all] : frames_) {
        std::vector<FrameAt> frames = all;
        std::sort(frames.begin(), frames.end(), frame_comes_before);
        frames.erase(std::unique(frames.begin(), frames.end(), same_bytes), frames.end());
        Bytes& journal = merged.of_device[device];
        for (const FrameAt& frame : frames) {
            journal.insert(journal.end(), frame.bytes.begin(), frame.bytes.end());
        }
    }
    return merged;
}

bool holds_all(const Journals& whole, const Journals& part) {
    Merge both;
    for (const Journals* const one : {&whole, &part}) {
        for (const auto& [device, bytes] : one->of_device) {
            both.add(device, bytes);
        }
        for (const Bytes& stretch : one->damage) {
            both.add_damage(stretch);
        }
    }
    return both.journals() == whole;
}

std::uint64_t device_in_name(std::string_view file_name) {
    constexpr std::size_t digits = 16;
    if (file_name.size() <= digits || (file_name[digits] != '.' && file_name[digits] != '-')) {
        return 0;
    }
    return parse_device(file_name.substr(0, digits)).value_or(0);
}

}  // namespace hemline
