// A worked-out roof as a readings file: expected lengths, marked so. They are no readings.
#pragma once

#include <span>
#include <string>

#include "engine/body/roof.h"

namespace hemline {

/// One row for each edge, open sides none; lengths on that mark, `expected` is `yes` in every row.
std::string expected_readings(const Roof& roof, std::span<const RoofBody> bodies, Marks marks);

}  // namespace hemline
