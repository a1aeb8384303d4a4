// How soon each class is proved, and what a general solver takes for the same jobs.
#pragma once

#include "tools/bench_cutting/classes.h"

namespace hemline {

/// The result for a class of jobs.
struct ClassFigures {
    std::vector<double> ms;  ///< rising, one for each job
    int jobs = 0;
    int proved_in_100_ms = 0, proved_in_1_s = 0, proved_in_2_s = 0;
    int wrong = 0;  ///< plans or certificates that the tests' checker refuses; wrong optima
};

/// Processor time of this program, which a busy machine does not stretch.
double cpu_ms();

/// The value that so many percent of the values do not exceed; 0 for no values.
double percentile(const std::vector<double>& rising, int percent);

/// Plans each job for 2 s at most, and has each plan and its bound checked by the tests' checker.
ClassFigures time_class(const JobClass& jobs);

/// Times glpsol and cbc on the first `count` jobs within `seconds` each, prints ratios. The number
/// of jobs where a reference proved a different count.
int race(const JobClass& jobs, int count, int seconds);

}  // namespace hemline
