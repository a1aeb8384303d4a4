// Chooses the order of the bends. The bends made so far are a set, and how many bends are blocked
// from each set on is computed once.
#include "engine/trim/brake.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/require.h"
#include "engine/trim/brake_reach.h"

namespace hemline {

namespace {

constexpr int unknown = -1;

struct Choice {
    int blocked = unknown;  ///< bends that cannot be made from here on
    std::size_t bend = 0;
    Clamped clamped = Clamped::first_legs;
    Text in_the_way;
};

struct Search {
    StripOnBrake strip;
    const Brake& brake;
    std::vector<std::size_t> preferred;  ///< bends, the ones to make first in front
    std::vector<Choice> by_made;         ///< by the set of bends made, as bits
};

StripOnBrake strip_of(const Section& section, const std::vector<double>& bends,
                      const Blank& blank) {
    StripOnBrake strip;
    Length before;
    for (std::size_t i = 0; i < section.legs.size(); ++i) {
        const Length mark = i < blank.marks.size() ? blank.marks[i] : blank.girth;
        strip.stretches.push_back(static_cast<double>((mark - before).nm()));
        strip.names.push_back(section.legs[i].name);
        before = mark;
    }
    strip.bends = bends;
    strip.made.assign(bends.size(), false);
    return strip;
}

/// The easier way to make a bend: with the first legs clamped, or with the last.
Choice way_of(Search& search, unsigned made, std::size_t bend) {
    for (std::size_t i = 0; i < search.strip.made.size(); ++i) {
        search.strip.made[i] = (made >> i & 1U) != 0;
    }
    Choice choice{0, bend, Clamped::first_legs, {}};
    choice.in_the_way = in_the_way_of(search.strip, bend, Clamped::first_legs, search.brake);
    if (!choice.in_the_way.empty() &&
        in_the_way_of(search.strip, bend, Clamped::last_legs, search.brake).empty()) {
        choice = {0, bend, Clamped::last_legs, {}};
    }
    choice.blocked = choice.in_the_way.empty() ? 0 : 1;
    return choice;
}

int fewest_blocked(Search& search, unsigned made) {
    if (search.by_made[made].blocked != unknown) {
        return search.by_made[made].blocked;
    }
    Choice best;
    for (const std::size_t bend : search.preferred) {
        if ((made >> bend & 1U) != 0) {
            continue;
        }
        Choice choice = way_of(search, made, bend);
        choice.blocked += fewest_blocked(search, made | 1U << bend);
        if (best.blocked == unknown || choice.blocked < best.blocked) {
            best = choice;
        }
        if (best.blocked == 0) {
            break;
        }
    }
    best.blocked = std::max(best.blocked, 0);
    search.by_made[made] = best;
    return best.blocked;
}

/// Hems first, then from the outside in.
std::vector<std::size_t> preferred_order(const std::vector<double>& bends, const Blank& blank) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < bends.size(); ++i) {
        if (bends[i] != 0) {
            order.push_back(i);
        }
    }
    const auto rank = [&](std::size_t i) {
        return std::abs(bends[i]) >= 180 ? Length()
                                         : std::min(blank.marks[i], blank.girth - blank.marks[i]);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    return order;
}

}  // namespace

std::vector<BrakeStep> brake_order(const Section& section, const std::vector<double>& bends,
                                   const Blank& blank, const Brake& brake) {
    require(section.legs.size() <= legs_most, "a section that was checked has few legs");
    for (const double bend : bends) {
        require(std::abs(bend) <= 180, "a bend is a number of degrees up to a half turn");
    }
    Search search{strip_of(section, bends, blank), brake, preferred_order(bends, blank), {}};
    search.by_made.resize(std::size_t{1} << bends.size());
    fewest_blocked(search, 0);
    std::vector<BrakeStep> steps;
    unsigned made = 0;
    for (std::size_t i = 0; i < search.preferred.size(); ++i) {
        const Choice& choice = search.by_made[made];
        steps.push_back({choice.bend, blank.marks[choice.bend], std::abs(bends[choice.bend]),
                         choice.clamped, bends[choice.bend] > 0 ? FaceUp::under : FaceUp::upper,
                         choice.in_the_way});
        made |= 1U << choice.bend;
    }
    return steps;
}

}  // namespace hemline
