// Where a joint search branches: on the class that an edge takes, and inside a class on the length
// of a piece.
#include <algorithm>

#include "engine/joint/branch.h"

namespace hemline {

namespace {

constexpr double used_enough = 1e-6;

std::pair<DivisionSet, DivisionSet> by_class(const DivisionSet& of, std::size_t own) {
    DivisionSet one = of, other = of;
    one.classes = 1U << own;
    other.classes &= ~one.classes;
    return {one, other};
}

/// The piece at this place in rising order no longer than `most`, or longer by a grid step or more.
std::pair<DivisionSet, DivisionSet> by_length(DivisionSet of, std::size_t pieces, std::size_t place,
                                              Length most, const JointNeeds& needs) {
    of.ranges.resize(pieces, {Length(), needs.stick});
    DivisionSet one = of, other = of;
    for (std::size_t i = 0; i < pieces; ++i) {
        LengthRange& shorter = one.ranges[i];
        LengthRange& longer = other.ranges[i];
        shorter.most = i <= place ? std::min(shorter.most, most) : shorter.most;
        longer.least = i >= place ? std::max(longer.least, most + needs.grid) : longer.least;
    }
    return {one, other};
}

/// How the pieces at one place in rising order differ, over the divisions used.
struct Spread {
    Length least, most;
    double mean = 0;
};

Spread spread_of(const std::vector<std::pair<const JointProgram::Division*, double>>& used,
                 std::size_t place, Length grid) {
    const Length first = round_down_to(used.front().first->cuts[place], grid);
    Spread spread{first, first, 0};
    double all = 0;
    for (const auto& [division, use] : used) {
        const Length own = round_down_to(division->cuts[place], grid);
        spread.least = std::min(spread.least, own);
        spread.most = std::max(spread.most, own);
        spread.mean += use * static_cast<double>(own.nm());
        all += use;
    }
    spread.mean /= all;
    return spread;
}

}  // namespace

/// The edge whose most used class is used least, and that class.
std::optional<JointBranch::Fork> JointBranch::fork_by_class(
    const DivisionSets& allowed, const JointProgram::Answer& answer) const {
    std::optional<Fork> found;
    double least = whole_enough;
    for (std::size_t e = 0; e < allowed.size(); ++e) {
        const std::uint32_t classes = allowed[e].classes;
        if ((classes & (classes - 1)) == 0) {
            continue;  // a single division, or none
        }
        std::vector<double> used(needs_.edges[e].size(), 0);
        for (std::size_t d = 0; d < answer.division.size(); ++d) {
            const JointProgram::Division& own = program_.divisions()[d];
            if (own.edge == e) {
                used[own.of_class] += answer.division[d];
            }
        }
        const auto most = std::max_element(used.begin(), used.end());
        if (most != used.end() && *most < least) {
            least = *most;
            const auto [one, other] =
                by_class(allowed[e], static_cast<std::size_t>(most - used.begin()));
            found = Fork{e, one, other};
        }
    }
    return found;
}

/// The edge whose most used division is used least, and the place in rising order where its pieces
/// differ most.
std::optional<JointBranch::Fork> JointBranch::fork_by_length(
    const DivisionSets& allowed, const JointProgram::Answer& answer) const {
    std::optional<Fork> found;
    double least = whole_enough;
    for (std::size_t e = 0; e < allowed.size(); ++e) {
        std::vector<std::pair<const JointProgram::Division*, double>> used;
        double most_used = 0;
        for (std::size_t d = 0; d < answer.division.size(); ++d) {
            const JointProgram::Division& own = program_.divisions()[d];
            if (own.edge == e && answer.division[d] > used_enough) {
                used.emplace_back(&own, answer.division[d]);
                most_used = std::max(most_used, answer.division[d]);
            }
        }
        if (used.size() < 2 || most_used >= least) {
            continue;
        }
        const std::size_t of_class = used.front().first->of_class;
        const std::size_t pieces = used.front().first->cuts.size();
        if (std::any_of(used.begin(), used.end(),
                        [&](const auto& own) { return own.first->cuts.size() != pieces; })) {
            continue;
        }
        std::size_t place = 0;
        Spread widest;
        for (std::size_t i = 0; i < pieces; ++i) {
            const Spread own = spread_of(used, i, needs_.grid);
            if (own.most - own.least > widest.most - widest.least) {
                place = i;
                widest = own;
            }
        }
        if (widest.most == widest.least) {
            continue;
        }
        least = most_used;
        const Length mean = nanometres(static_cast<std::int64_t>(widest.mean));
        const Length split =
            std::clamp(round_down_to(mean, needs_.grid), widest.least, widest.most - needs_.grid);
        const bool is_one_class = allowed[e].classes == 1U << of_class;
        const auto [one, other] = is_one_class ? by_length(allowed[e], pieces, place, split, needs_)
                                               : by_class(allowed[e], of_class);
        found = Fork{e, one, other};
    }
    return found;
}

}  // namespace hemline
