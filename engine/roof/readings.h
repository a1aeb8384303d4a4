// What two or three tape readings of a length say, and what is probably wrong with them.
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/words/text.h"

namespace hemline {

/// The likely cause of a disagreement.
enum class LikelyCause {
    unknown,
    burnt_inch,      ///< off by 1 in: read from the tape's 1 in mark and not corrected
    misread_foot,    ///< off by 1 ft
    hook,            ///< a little too much, always the same way: bent or loose hook, or slack tape
    swapped_digits,  ///< 83 for 38
};

enum class Agreement {
    none,      ///< no reading
    once,      ///< one reading: read again
    agree,     ///< two lie within what the tape allows
    third,     ///< two disagree: a third is asked for
    disagree,  ///< three or more, and no two agree, or as many agree on one length as on another
};

struct Verdict {
    Agreement agreement = Agreement::none;
    std::optional<Length>
        length;  ///< agreed: both if they are equal, else their mean rounded to the mark, half up
    Length difference;                         ///< between the two nearest readings
    Length allowed;                            ///< what they may differ by
    LikelyCause cause = LikelyCause::unknown;  ///< when any pair disagrees
    std::optional<std::size_t> odd_one_out;    ///< index of a reading that two others refute
    Length odd_length;                         ///< what that one says
    /// As many readings agree on one length as on the other: neither counts.
    std::optional<std::pair<Length, Length>> divided;
};

/// Judges readings in the order taken (struck ones left out by the caller): what most of them agree
/// on counts. `mark`: what the agreed length is rounded to. Source of the tolerance:
/// allowed_difference().
Verdict judge_readings(std::span<const Length> readings, Tape tape, Length mark);

/// Why a single new reading should be looked at again before it counts: less than half or more than
/// twice what is expected, or off by an inch or a foot from it within the tape's error. Empty when
/// it is plausible.
Text doubt_about(Length reading, Length expected, Tape tape);

/// The program asks about longer edges: no roof has them, so another unit was probably meant.
constexpr Length edge_believed_most = millimetres(300'000);
/// Why an edge of that length is doubted; empty when it is plausible.
Text doubt_about_so_long(Length edge);

/// The reading nearest to a new one, by its index, with which it is compared; none: there is none.
std::optional<std::size_t> nearest_reading(std::span<const Length> readings, Length reading);

/// Several edges read twice, second minus first: the same small difference (up to 1/4 in, not 0) in
/// the same direction on three edges or more points to the hook.
bool hook_suspected(std::span<const Length> second_minus_first);

/// A sentence for people: what the difference is, what is allowed, the likely cause.
Text explain(const Verdict& verdict);

}  // namespace hemline
