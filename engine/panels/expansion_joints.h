// Joints in a run that is riveted, soldered or formed in one length, so that it can move.
#pragma once

#include <cstdint>
#include <optional>

#include "engine/measure/temperature.h"
#include "engine/quantity/length.h"
#include "engine/trim/metal_family.h"

namespace hemline {

/// The longest run between joints: copper and stainless steel 40 ft, aluminum 32 ft (UFGS 07 60 00
/// §3.1.26). None: no public figure was found, the maker says.
std::optional<Length> joint_spacing(MetalFamily metal);

struct ExpansionJoints {
    std::int64_t count = 0;  ///< spaced evenly
    Length segment;          ///< between them, to the nanometer below
    Length gap;              ///< at each, up to 1/16 in: a segment is fixed at its middle
};

/// ⌈length / spacing⌉ − 1, and one more where the last stretch would be longer than half the
/// spacing; as UFGS 07 60 00 §3.1.26. `spacing` > 0.
ExpansionJoints joints_in(Length run, Length spacing, MetalFamily metal, Temperature now,
                          Temperature hottest);

}  // namespace hemline
