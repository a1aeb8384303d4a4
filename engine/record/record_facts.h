// What was said of other events of the record.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/record/kinds.h"
#include "engine/record/thing.h"

namespace hemline {

/// As programs wrote it that kept the reason as English words.
struct Struck {
    static constexpr std::uint16_t kind_number = 11;
    EventId target;
    std::string reason;

    bool operator==(const Struck&) const = default;
};
/// Where tablets disagree about a thing, this event's value stands. Supersedes all sides.
struct Picked {
    static constexpr std::uint16_t kind_number = 43;
    EventId chosen;  ///< says the value itself; not a pick
    Thing about;

    bool operator==(const Picked&) const = default;
};
/// Somebody has looked at the events that share a number because a tablet was copied.
struct CopyNoted {
    static constexpr std::uint16_t kind_number = 44;
    EventId number;
    std::int64_t copies = 2;  ///< so many events he saw there

    bool operator==(const CopyNoted&) const = default;
};
/// A kind that this program does not know yet: kept byte for byte.
struct Unknown {
    std::uint16_t kind = 0;
    std::vector<std::uint8_t> payload;

    bool operator==(const Unknown&) const = default;
};

/// Why an event no longer counts.
enum class StrikeReason : std::uint8_t { undone = 0, by_hand = 1, disk_failed = 2 };
/// Undo: the target no longer counts; it stays in the record, shown as struck.
struct StruckFor {
    static constexpr std::uint16_t kind_number = 46;
    EventId target;
    StrikeReason reason = StrikeReason::undone;

    bool operator==(const StruckFor&) const = default;
};

/// A kind that takes its target back.
template <class One>
concept AStrike = AnyOf<One, Struck, StruckFor>;

using RecordFacts = Kinds<Struck, Picked, CopyNoted, StruckFor, Unknown>;

}  // namespace hemline
