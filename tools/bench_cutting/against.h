// Counts of sticks against a general solver's: cutting alone, and dividing and cutting as a single
// problem.
#pragma once

namespace hemline {

/// The result of some comparisons.
struct Against {
    int jobs = 0;        ///< asked of the reference
    int not_proved = 0;  ///< by the reference within its time
    int open = 0;        ///< not proved by us, but in line with the reference
    int more = 0;        ///< of those, jobs where the reference proves fewer sticks than ours
    int wrong = 0;       ///< counts or bounds that contradict the reference
};

/// Every other job with kerf, several lengths and limited offcuts.
Against compare_cutting(int jobs, int seconds);
/// Roofs of up to 12 edges, every choice measured; every fourth with limited longer sticks and
/// offcuts on hand, every fourth with few edges and rules at the ends of their ranges. The same
/// roofs in every run, from `first` on.
Against compare_joint(int first, int jobs, int seconds);

}  // namespace hemline
