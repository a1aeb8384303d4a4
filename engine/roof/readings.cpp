#include "engine/roof/readings.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

#include "engine/measure/length_text.h"

namespace hemline {

namespace {

Length apart(Length a, Length b) { return absolute(a - b); }

Length allowed_between(Length a, Length b, Tape tape) {
    return allowed_difference(std::max(a, b), tape);
}

/// What a difference that the tape does not explain looks like.
LikelyCause cause_of(Length difference, Length allowed) {
    const Length over = difference - allowed;
    const Length from_inch = absolute(difference - inches(1));
    // A hook takes or adds a little: up to 1/4 in past what is allowed, unless an inch is nearer.
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

/// A cause is a hint: it is looked for among the first so many readings.
constexpr std::size_t causes_among_most = 100;

/// The first cause that a pair which disagrees points to.
LikelyCause cause_among(std::span<const Length> readings, Tape tape) {
    for (std::size_t j = 1; j < std::min(readings.size(), causes_among_most); ++j) {
        for (std::size_t i = 0; i < j; ++i) {
            const Length difference = apart(readings[i], readings[j]);
            const Length allowed = allowed_between(readings[i], readings[j], tape);
            if (difference <= allowed) {
                continue;
            }
            const LikelyCause cause = cause_of(difference, allowed);
            if (cause != LikelyCause::unknown) {
                return cause;
            }
        }
    }
    return LikelyCause::unknown;
}

struct Pair {
    std::size_t first = 0, second = 1;
};

/// The two readings that lie nearest; of equal ones the pair that was complete first. Where nothing
/// lies between them they stand side by side in rising order.
Pair nearest_pair(std::span<const Length> readings) {
    std::vector<std::size_t> rising(readings.size());
    std::iota(rising.begin(), rising.end(), std::size_t{0});
    std::sort(rising.begin(), rising.end(), [&](std::size_t a, std::size_t b) {
        return std::pair(readings[a], a) < std::pair(readings[b], b);
    });
    Pair nearest;
    const auto rank = [&](Pair pair) {
        return std::tuple(apart(readings[pair.first], readings[pair.second]), pair.second,
                          pair.first);
    };
    for (std::size_t k = 1; k < rising.size(); ++k) {
        const auto [first, second] = std::minmax(rising[k - 1], rising[k]);
        const Pair pair{first, second};
        if (rank(pair) < rank(nearest)) {
            nearest = pair;
        }
    }
    return nearest;
}

/// The reading furthest from two that agree, when it disagrees with both.
std::optional<std::size_t> refuted(std::span<const Length> readings, Pair agreeing, Tape tape) {
    const Length a = readings[agreeing.first];
    const Length b = readings[agreeing.second];
    std::optional<std::size_t> furthest;
    Length distance_most;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const Length reading = readings[i];
        const bool stands = apart(reading, a) <= allowed_between(reading, a, tape) ||
                            apart(reading, b) <= allowed_between(reading, b, tape);
        const Length distance = std::min(apart(reading, a), apart(reading, b));
        if (!stands && distance > distance_most) {
            furthest = i;
            distance_most = distance;
        }
    }
    return furthest;
}

/// A clause behind the difference.
Text spoken(LikelyCause cause) {
    switch (cause) {
        case LikelyCause::unknown:
            break;
        case LikelyCause::burnt_inch:
            return say("; one was likely read from the 1 in mark (burnt inch)");
        case LikelyCause::misread_foot:
            return say("; likely a foot was misread");
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
    const Pair pair = nearest_pair(readings);
    const Length a = readings[pair.first];
    const Length b = readings[pair.second];
    verdict.difference = apart(a, b);
    verdict.allowed = allowed_between(a, b, tape);
    verdict.cause = cause_among(readings, tape);
    if (verdict.difference <= verdict.allowed) {
        verdict.agreement = Agreement::agree;
        // The sum on twice the mark is twice the mean on the mark: no half is lost on the way.
        // Two that are the same are that length, whatever mark it lies on.
        verdict.length = a == b ? a : Length::of_nm(nearest_on(a + b, 2 * mark).nm() / 2);
        verdict.odd_one_out = refuted(readings, pair, tape);
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
        return {};  // along a street the tape itself may be an inch off
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

bool hook_suspected(std::span<const Length> second_minus_first) {
    constexpr std::size_t edges_least = 3;
    // Each reading is rounded to its mark, so one constant error shows as two neighbouring marks.
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
                       ? say("Two readings agree: they differ by {1}, and {2} is allowed; reading "
                             "{3} stands apart{4}.",
                             differ, allowed, *verdict.odd_one_out + 1, cause)
                       : say("Two readings agree: they differ by {1}, and {2} is allowed.", differ,
                             allowed);
        case Agreement::third:
            return say("The readings differ by {1}, and {2} is allowed{3}: read a third time.",
                       differ, allowed, cause);
        case Agreement::disagree:
            return say(
                "No two readings agree: the nearest differ by {1}, and {2} is allowed{3}: "
                "read again.",
                differ, allowed, cause);
    }
    return {};
}

}  // namespace hemline
