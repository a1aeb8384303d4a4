// A length as the trade writes it, in nanometers: an inch is 25.4 mm, a foot twelve inches.
//
//   46 ft 0 1/4 in   31' 7 5/8"   31-7-5/8   7 ½ in   31.5 ft   9 650 mm   9.65 m   506 (a bare
//   one)
//
// Written for this reader alone, so that it may find what another misreads.
#pragma once

#include "tests/certificate/table.h"

namespace certificate {

/// A number without a unit is in units of `bare_nm`. What it cannot read it refuses (see refuse()),
/// and guesses nothing.
std::int64_t length_nm(const Cell& cell, std::int64_t bare_nm);

}  // namespace certificate
