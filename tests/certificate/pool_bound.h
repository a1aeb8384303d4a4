// How many new sticks the pieces that a plan lays on a pool's sticks take at least.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "tests/certificate/joint_task.h"

namespace certificate {

enum class Shown { yes, refuted, too_long };

/// Whether the plan's pieces of that pool need `bound` new sticks: by their metal, by a choice of
/// the certificate with the same pieces, or by searching.
Shown bound_of_pool(const std::string& pool, Int bound, const nlohmann::json& certificate,
                    const nlohmann::json& plan);

/// A bound above 0 with no parts that show it.
bool is_proof_absent(const nlohmann::json& choice);

}  // namespace certificate
