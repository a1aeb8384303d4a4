// Invented cutting jobs by class, the same on every machine.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/cutting/cutting.h"

namespace hemline {

struct ClassJob {
    CuttingJob job;
    std::optional<std::int64_t> optimum;  ///< known by construction
};

enum class ClassGroup : std::uint8_t { trim, bin_packing };

struct JobClass {
    std::string name;
    ClassGroup group = ClassGroup::trim;
    std::vector<ClassJob> jobs;
};

/// `count` jobs of each class: roof-like (8 to 200 pieces of 24 to 120 in), short flashings (60 to
/// 150 pieces of 6 to 40 in), perfect fit (120 pieces that sticks were cut into without waste);
/// Falkenauer (1996), from memory: uniform sizes 20…100 in bins of 150, triplets that fill 1000.
std::vector<JobClass> job_classes(int count);

/// Small roof-like jobs for a reference; `mixed`: with kerf, a few longer sticks, and offcuts on
/// hand.
CuttingJob reference_job(std::uint64_t seed, bool mixed);

}  // namespace hemline
