// Whose clock is wrong, as far as a job's events tell: what a tablet had seen was written before,
// so a clock that says otherwise is behind, or the other one is ahead.
//
//   Hal's tablet   10:05, in ten years ─┐           Hal is ahead of two: his clock it is.
//   Ada's tablet                        ├─▶ 10:07
//   Ben's tablet                        └─▶ 10:09
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/text.h"

namespace hemline {

/// A clock is doubted when it is off by more than this.
constexpr std::int64_t clock_doubt_ms = 3'600'000;

enum class ClockIs : std::uint8_t {
    ahead,   ///< of the others
    behind,  ///< the others
    apart    ///< from one other's, and nothing tells which of the two is wrong
};

/// A tablet, by its number and who held it last; nobody named: empty.
struct TabletHeld {
    std::uint64_t device = 0;
    std::string by;
};

struct ClockDoubt {
    TabletHeld tablet;
    ClockIs is = ClockIs::apart;
    std::int64_t off_ms = 0;  ///< at least
    TabletHeld other;         ///< where they are apart
};

/// The doubts that stand after the last event, by tablet. `events` are the job's, in_order(). A
/// clock that was set right is no longer doubted once its tablet has written, or seen, something
/// new. Events of version 1 tell what another clock said, never that their own lags: they do not
/// keep it. O(n log n).
std::vector<ClockDoubt> clock_doubts(std::span<const Event> events);

/// Whether it is to be said to who holds this tablet, whatever he is here for.
bool is_about(const ClockDoubt& doubt, std::uint64_t device);

/// What is wrong, and the mend. `here`: the tablet it is said on; 0: a desk.
Text words_on(const ClockDoubt& doubt, std::uint64_t here = 0);

}  // namespace hemline
