// Edges to divide and sticks to cut them from, as a joint certificate states them; lengths in
// nanometers.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace certificate {

using Int = std::int64_t;

/// How an edge under way is divided, and which of its pieces are still to cut.
struct Taken {
    Int laps = 0;
    bool unbalanced = false;
    std::vector<Int> uncut;
};

struct JointEdge {
    Int length = 0, first = 0, last = 0;  ///< what its two ends add to the metal
    Int lap = 0, stick = 0, sliver = 0, grid = 1;
    bool is_free = false;  ///< may run out to one side; otherwise balanced, or as near as can be
    std::optional<Taken> taken;  ///< none: still to be divided
};

struct JointStick {
    Int length = 0;
    std::optional<Int> supply;  ///< none: as many as are wanted
    bool on_hand = false;
};

struct JointTask {
    std::vector<JointEdge> edges;
    std::vector<JointStick> sticks;
    Int kerf = 0;
};

/// What pieces are worth, the more the longer they are, and laps and unbalanced edges.
struct JointWorths {
    std::vector<Int> from, worth;  ///< of a piece of that length or longer; shorter: 0
    std::vector<Int> stick_worth;  ///< the most that each stick is said to hold
    Int lap = 0, unbalanced = 0, share = 0;
};

/// Of pieces in rising order, taken down to the grid: no shorter and no longer; in grid units.
using Ranges = std::vector<std::pair<Int, Int>>;

/// Some divisions of an edge: those of classes (a bit 2·laps, and 1 where unbalanced), and where
/// there are ranges, with a piece in each.
struct Region {
    std::uint32_t classes = 0;
    Ranges ranges;
};

struct JointPart {
    std::vector<Region> edges;
    JointWorths worths;
};

/// Lengths and numbers that the checks can count with.
bool is_task(const JointTask& task);

/// What is wrong with the parts as a proof that no plan with so many laps beyond the fewest and
/// unbalanced edges takes fewer than `bound` new sticks; empty when they show it.
std::string wrong_parts(const JointTask& task, Int laps, Int unbalanced, Int bound,
                        const std::vector<JointPart>& parts);

}  // namespace certificate
