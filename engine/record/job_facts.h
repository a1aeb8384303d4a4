// What was decided for the whole job.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/dividing/run.h"
#include "engine/record/kinds.h"
#include "engine/record/said_values.h"

namespace hemline {

struct JobStarted {
    static constexpr std::uint16_t kind_number = 1;
    std::string name;
    std::string practice;  ///< which practice the job was planned under

    bool operator==(const JobStarted&) const = default;
};
struct RuleSet {
    static constexpr std::uint16_t kind_number = 6;
    std::string key, value;  ///< with_rule()

    bool operator==(const RuleSet&) const = default;
};
/// The crew picked one of the plans side by side: its runs stay so until something forces a change.
/// What it cost is kept as it was shown.
struct PlanChosen {
    static constexpr std::uint16_t kind_number = 20;
    Prefer prefer = Prefer::looks;  ///< for the runs still to be fitted
    std::string trim;
    std::int64_t extra_laps = 0, unbalanced = 0, sticks = 0;
    std::vector<RunChosen> runs;

    bool operator==(const PlanChosen&) const = default;
};
/// The lengths of new sticks on this job.
struct StockChosen {
    static constexpr std::uint16_t kind_number = 24;
    std::vector<Length> lengths;

    bool operator==(const StockChosen&) const = default;
};
/// How this job bends a trim: all legs of its section; none: as the catalogue has it.
struct SectionChosen {
    static constexpr std::uint16_t kind_number = 30;
    std::string trim;
    std::vector<LegChosen> legs;

    bool operator==(const SectionChosen&) const = default;
};

using JobFacts = Kinds<JobStarted, RuleSet, PlanChosen, StockChosen, SectionChosen>;

}  // namespace hemline
