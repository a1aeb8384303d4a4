// Runs as commonly laid: sticks of 10 ft, laps of 6 in, no sliver under 24 in, on the 1/16 in.
#pragma once

#include <numeric>
#include <vector>

#include "engine/dividing/run.h"

namespace hemline {

inline RunRule common(Length edge, Length first = inches(1), Length last = inches(1)) {
    return {edge, first, last, feet(10), inches(6), inches(24), sixteenths(1)};
}

inline Length covered(const std::vector<Division>& run) {
    return std::accumulate(run.begin(), run.end(), Length(),
                           [](Length sum, const Division& d) { return sum + d.covers; });
}

constexpr Style styles[] = {Style::balanced, Style::equal, Style::full};

}  // namespace hemline
