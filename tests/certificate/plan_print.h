// Checks what `plan --json` prints beside its divisions: each reading taken once, numbers, texts,
// remainders, the proof of each pool. What nothing here can check is named.
#pragma once

#include "tests/certificate/joint_file.h"

namespace certificate {

/// Everything that is printed wrong, in words.
std::vector<std::string> wrong_print(const Readings& readings, const nlohmann::json& certificate,
                                     const nlohmann::json& plan);

/// Bounds for which the certificate holds no proof. That is not wrong; it is not shown either.
std::vector<std::string> proofs_absent(const nlohmann::json& certificate);

/// What is printed and not checked, and what the checks take as the certificate says it.
std::vector<std::string> unchecked(const Readings& readings, const nlohmann::json& certificate,
                                   const nlohmann::json& plan);

}  // namespace certificate
