#include "engine/roof/readings.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

#include "engine/measure/length_text.h"
#include "engine/roof/other_readings.h"
#include "engine/roof/rising_readings.h"

namespace hemline {

namespace {

/// The likely cause of a difference that the tape does not explain.
LikelyCause cause_of(Length difference, Length allowed) {
    const Length over = difference - allowed;
    const Length from_inch = absolute(difference - inches(1));
    // A bad hook takes or adds a little: up to 1/4 in past what is allowed, unless the difference
    // is nearer to an inch.
    if (over <= sixteenths(4) && over < from_inch) {
        return LikelyCause::hook;
    }
    if (from_inch <= allowed) {
        return LikelyCause::burnt_inch;
    }
    if (absolute(difference - feet(1)) <= allowed) {
        return LikelyCause::misread_foot;
    }
    return LikelyCause::unknown;
}

/// 83 for 38, in feet, inches or millimeters.
bool swaps_to(Length a, Length b, Length allowed) {
    const auto others = other_readings(a, Length(), ReadIn::either);
    return std::any_of(others.begin(), others.end(), [&](const OtherReading& other) {
        return other.kind == SuspectKind::swapped_digits && apart(other.length, b) <= allowed;
    });
}

/// Either may be the one written wrongly. Both ways, as a reading is rounded to whole millimeters
/// before its digits change places: 38 mm may come to 83 where 83.4 does not come back.
bool are_swapped(Length a, Length b, Length allowed) {
    return swaps_to(a, b, allowed) || swaps_to(b, a, allowed);
}

/// A cause is only a hint: look for it among the first so many readings.
constexpr std::size_t causes_among_most = 100;

/// The first cause found for a pair of readings that disagree.
LikelyCause cause_among(std::span<const Length> readings, Tape tape) {
    for (std::size_t j = 1; j < std::min(readings.size(), causes_among_most); ++j) {
        for (std::size_t i = 0; i < j; ++i) {
            const Length difference = apart(readings[i], readings[j]);
            const Length allowed = allowed_apart(readings[i], readings[j], tape);
            if (difference <= allowed) {
                continue;
            }
            const LikelyCause found = cause_of(difference, allowed);
            const LikelyCause cause =
                found == LikelyCause::unknown && are_swapped(readings[i], readings[j], allowed)
                    ? LikelyCause::swapped_digits
                    : found;
            if (cause != LikelyCause::unknown) {
                return cause;
            }
        }
    }
    return LikelyCause::unknown;
}

/// The reading furthest from two that agree, when it disagrees with both.
std::optional<std::size_t> refuted(std::span<const Length> readings, ReadingPair agreeing,
                                   Tape tape) {
    const Length a = readings[agreeing.first];
    const Length b = readings[agreeing.second];
    std::optional<std::size_t> furthest;
    Length distance_most;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const Length reading = readings[i];
        const bool stands = apart(reading, a) <= allowed_apart(reading, a, tape) ||
                            apart(reading, b) <= allowed_apart(reading, b, tape);
        const Length distance = std::min(apart(reading, a), apart(reading, b));
        if (!stands && distance > distance_most) {
            furthest = i;
            distance_most = distance;
        }
    }
    return furthest;
}

/// A clause that follows the difference.
Text spoken(LikelyCause cause) {
    switch (cause) {
        case LikelyCause::unknown:
            break;
        case LikelyCause::burnt_inch:
            return say("; one was likely read from the 1 in mark (burnt inch)");
        case LikelyCause::misread_foot:
            return say("; likely a foot was misread");
        case LikelyCause::swapped_digits:
            return say("; likely two digits were swapped");
        case LikelyCause::hook:
            return say("; likely the hook is bent or loose, or the tape was slack");
    }
    return {};
}

}  // namespace

Verdict judge_readings(std::span<const Length> readings, Tape tape, Length mark) {
    Verdict verdict;
    if (readings.empty()) {
        return verdict;
    }
    if (readings.size() == 1) {
        verdict.agreement = Agreement::once;
        verdict.allowed = allowed_difference(readings[0], tape);
        return verdict;
    }
    const RisingReadings rising(readings, tape);
    const ReadingPair pair = rising.nearest_pair();
    const Length a = readings[pair.first];
    const Length b = readings[pair.second];
    verdict.difference = apart(a, b);
    verdict.allowed = allowed_apart(a, b, tape);
    verdict.cause = cause_among(readings, tape);
    verdict.divided = rising.divided(mark);
    if (verdict.divided) {
        verdict.agreement = Agreement::disagree;
    } else if (verdict.difference <= verdict.allowed) {
        verdict.agreement = Agreement::agree;
        verdict.length = agreed_length(a, b, mark);
        verdict.odd_one_out = refuted(readings, pair, tape);
        verdict.odd_length = verdict.odd_one_out ? readings[*verdict.odd_one_out] : Length();
    } else {
        verdict.agreement = readings.size() == 2 ? Agreement::third : Agreement::disagree;
    }
    return verdict;
}

Text doubt_about(Length reading, Length expected, Tape tape) {
    if (expected <= Length()) {
        return {};
    }
    if (reading * 2 < expected) {
        return say("This is less than half of the {1} expected: read again.", expected);
    }
    if (reading > expected * 2) {
        return say("This is more than twice the {1} expected: read again.", expected);
    }
    const Length difference = apart(reading, expected);
    const Length error = tape_error(std::max(reading, expected), tape);
    if (difference <= error) {
        return {};  // on very long edges the tape itself may be an inch off
    }
    if (absolute(difference - inches(1)) <= error) {
        return say(
            "This is an inch off the {1} expected: was it read from the 1 in mark (burnt inch)?",
            expected);
    }
    if (absolute(difference - feet(1)) <= error) {
        return say("This is a foot off the {1} expected: was the foot misread?", expected);
    }
    return {};
}

Text doubt_about_so_long(Length edge) {
    return edge > edge_believed_most
               ? say("{1} ({2}) is longer than the edge of any roof: was 10 m taken for 1000 m, or "
                     "100 in for 100 ft? Read again, and look at the unit.",
                     print_length(edge), print_length(edge, Marks::millimetre))
               : Text();
}

std::optional<std::size_t> nearest_reading(std::span<const Length> readings, Length reading) {
    const auto nearest = std::min_element(
        readings.begin(), readings.end(),
        [&](Length one, Length other) { return apart(one, reading) < apart(other, reading); });
    return nearest == readings.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(nearest - readings.begin()));
}

bool hook_suspected(std::span<const Length> second_minus_first) {
    constexpr std::size_t edges_least = 3;
    // Each reading is rounded to its mark, so a constant error can show as either of two
    // neighboring marks.
    for (const bool longer : {true, false}) {
        std::vector<Length> alike;
        for (const Length difference : second_minus_first) {
            const bool small = absolute(difference) <= sixteenths(4);
            if (small && difference != Length() && (difference > Length()) == longer) {
                alike.push_back(absolute(difference));
            }
        }
        std::sort(alike.begin(), alike.end());
        for (std::size_t i = edges_least; i <= alike.size(); ++i) {
            if (alike[i - 1] - alike[i - edges_least] <= sixteenths(1)) {
                return true;
            }
        }
    }
    return false;
}

Text explain(const Verdict& verdict) {
    const CloseLength differ{verdict.difference};
    const CloseLength allowed{verdict.allowed};
    const Text cause = spoken(verdict.cause);
    switch (verdict.agreement) {
        case Agreement::none:
            return say("There is no reading yet: measure.");
        case Agreement::once:
            return say("There is one reading: read again.");
        case Agreement::agree:
            return verdict.odd_one_out
                       ? say("Two readings agree: they differ by {1}, and {2} is allowed; {3} "
                             "stands apart{4}.",
                             differ, allowed, verdict.odd_length, cause)
                       : say("Two readings agree: they differ by {1}, and {2} is allowed.", differ,
                             allowed);
        case Agreement::third:
            return say("The readings differ by {1}, and {2} is allowed{3}: read a third time.",
                       differ, allowed, cause);
        case Agreement::disagree:
            if (verdict.divided) {
                return say("As many readings say {1} as {2}{3}: stop, and read again.",
                           verdict.divided->first, verdict.divided->second, cause);
            }
            return say(
                "No two readings agree: the nearest differ by {1}, and {2} is allowed{3}: "
                "read again.",
                differ, allowed, cause);
    }
    return {};
}

}  // namespace hemline
