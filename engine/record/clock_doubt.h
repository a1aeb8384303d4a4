// Whose clock is wrong, as far as a job's events tell: what a tablet had seen was written earlier.
// If its clock says otherwise, it is behind or the other clock is ahead.
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
    apart    ///< from one other clock, and nothing tells which is wrong
};

/// A tablet: its number, who held it last (empty: nobody was named), and of several that he held
/// last which one it is, by first use on the job, from 1; 0: the only one.
struct TabletHeld {
    std::uint64_t device = 0;
    std::string by;
    std::size_t of_his = 0;
};

struct ClockDoubt {
    TabletHeld tablet;
    ClockIs is = ClockIs::apart;
    std::int64_t off_ms = 0;  ///< at least
    TabletHeld other;         ///< where two clocks differ
};

/// The doubts that stand after the last event, by tablet. `events` are the job's, in_order(). A
/// clock that was set right is no longer doubted once its tablet has written or seen something new.
/// Events of version 1 do not keep what their tablet's clock said, so they can show that another
/// clock is ahead, but not that their tablet's clock lags. O(n log n).
std::vector<ClockDoubt> clock_doubts(std::span<const Event> events);

/// Whether to tell whoever holds this tablet, whatever his role.
bool is_about(const ClockDoubt& doubt, std::uint64_t device);

/// What is wrong, and how to put it right. `here`: the tablet it is said on; 0: a desk.
Text words_on(const ClockDoubt& doubt, std::uint64_t here = 0);

}  // namespace hemline
