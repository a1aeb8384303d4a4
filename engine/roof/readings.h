// What two or three tape readings of one length say, and what is probably wrong with them.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/words/text.h"

namespace hemline {

/// What a disagreement looks like.
enum class LikelyCause {
    unknown,
    burnt_inch,    ///< off by 1 in: read from the tape's 1 in mark and not corrected
    misread_foot,  ///< off by 1 ft
    hook,          ///< a little too much, and the same way: bent or loose hook, or a slack tape
};

enum class Agreement {
    none,      ///< no reading
    once,      ///< one reading: read again
    agree,     ///< two lie within what the tape allows
    third,     ///< two disagree: a third is asked for
    disagree,  ///< three or more, and no two agree
};

struct Verdict {
    Agreement agreement = Agreement::none;
    std::optional<Length>
        length;  ///< agreed: both where they are the same, else their mean on the mark, half up
    Length difference;                         ///< between the two nearest readings
    Length allowed;                            ///< what they may differ by
    LikelyCause cause = LikelyCause::unknown;  ///< when any pair disagrees
    std::optional<std::size_t> odd_one_out;    ///< index of a reading that the agreeing two refute
};

/// Judges readings in the order taken (struck ones left out by the caller). `mark`: what the agreed
/// length is rounded to. Source of the tolerance: allowed_difference().
Verdict judge_readings(std::span<const Length> readings, Tape tape, Length mark);

/// Why a single new reading should be looked at again before it counts: less than half or more than
/// twice what is expected, or off by an inch or a foot from it within the tape's own error. Empty
/// when it is believable.
Text doubt_about(Length reading, Length expected, Tape tape);

/// Longer edges are asked about: they are no roof's, but what was meant in another unit.
constexpr Length edge_believed_most = millimetres(300'000);
/// Why so long an edge is not believed at sight; empty when it is.
Text doubt_about_so_long(Length edge);

/// Several edges read twice, second minus first: the same small difference (up to 1/4 in, not 0)
/// the same way on three edges or more is the hook's.
bool hook_suspected(std::span<const Length> second_minus_first);

/// One sentence for people: what the difference is, what is allowed, the likely cause.
Text explain(const Verdict& verdict);

}  // namespace hemline
