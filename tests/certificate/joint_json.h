// Edges, sticks and parts out of a joint certificate's JSON.
#pragma once

#include "tests/certificate/joint_task.h"
#include "tests/certificate/reader.h"

namespace certificate {

/// What a choice of a pool says about itself; for each edge its pieces.
struct Piece {
    Int cut = 0, covers = 0;

    bool operator==(const Piece&) const = default;
};
using Division = std::vector<Piece>;

// All throw nlohmann::json::exception where something is missing.
JointTask joint_task_of(const nlohmann::json& pool);
std::vector<Division> divisions_in(const nlohmann::json& choice);
std::vector<JointPart> parts_in(const nlohmann::json& choice, const JointTask& task);

}  // namespace certificate
