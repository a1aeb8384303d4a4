// An independent reader of `plan --certificate FILE`: checks in whole numbers that every choice of
// every pool divides its edges as it must, lies on its sticks, and that none within its laps and
// unbalanced edges takes fewer. Shares no code with Hemline, and links none.
#pragma once

#include "tests/certificate/joint_task.h"
#include "tests/certificate/reader.h"

namespace certificate {

/// An edge's name, its length in nanometers, how it must look (balanced, free, or nothing), and the
/// lap it states, 0 for none.
struct Reading {
    std::string edge;
    Int length = 0;
    std::string looks;
    Int lap = 0;
};
using Readings = std::vector<Reading>;

/// Reads the columns `edge,length`, in any notation of the trade (length.h), bare numbers in units
/// of `unit_nm`, and `looks` and `lap` where there are such. Throws std::runtime_error where the
/// others are not, or cannot be read, with line and column.
Readings read_readings(const std::string& csv, Int unit_nm);

/// Everything wrong with the certificate or the plan, in words; empty when all is shown. `plan`:
/// what `plan --json` printed for the same readings.
std::vector<std::string> wrong_with_plan(const Readings& readings,
                                         const nlohmann::json& certificate,
                                         const nlohmann::json& plan);

}  // namespace certificate
