// Any journals merged frame by frame: the result has a journal for each device and each frame once,
// in whatever order and however often the journals came in. No more of a frame is read than is
// needed, so what a newer program wrote passes through unharmed.
//
//   A.journal  [A1][A2]            ┐           A.journal  [A1][A2][A3]
//   A.journal  [A2][A3]            ├─ merge ─▶ B.journal  [B1]
//   B.journal  [B1]~~~damage~~~    ┘           damage     [~~~damage~~~]
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/event_bytes.h"

namespace hemline {

/// The journals of devices, each in an order that follows from its frames alone, and the stretches
/// that hold no whole frame.
struct Journals {
    std::map<std::uint64_t, Bytes> of_device;
    std::set<Bytes> damage;

    bool operator==(const Journals&) const = default;
};

/// A whole frame within a journal's bytes, and the number of the event in it.
struct FrameAt {
    EventId id;  ///< sequence 0: it does not say
    std::span<const std::uint8_t> bytes;
};

/// The whole frames of a journal, whatever is in them, in their order; and the stretches between.
struct FramesRead {
    std::vector<FrameAt> frames;
    std::vector<std::span<const std::uint8_t>> damage;
    std::size_t whole_size = 0;  ///< bytes up to the end of the last whole frame
};
FramesRead read_frames(std::span<const std::uint8_t> bytes);

/// Takes in the bytes of journals one after the other. The bytes must outlive it.
class Merge {
  public:
    /// `named`: the device in the file's name, for frames that do not say (another version's); 0:
    /// none.
    void add(std::uint64_t named, std::span<const std::uint8_t> journal);
    /// A damaged stretch that an earlier merge or opening set aside.
    void add_damage(std::span<const std::uint8_t> stretch);
    /// Commutative, associative, idempotent: the same frames give the same bytes.
    [[nodiscard]] Journals journals() const;

  private:
    std::map<std::uint64_t, std::vector<FrameAt>> frames_;
    std::set<Bytes> damage_;
};

/// Whether `whole`, the result of a Merge, has all frames and all damage of `part`.
bool holds_all(const Journals& whole, const Journals& part);

/// The device in a journal's file name, "3f9c….journal" or "3f9c…-2.journal"; 0 when there is none.
std::uint64_t device_in_name(std::string_view file_name);

}  // namespace hemline
