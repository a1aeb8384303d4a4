// How far a tape may be off, and so how far two honest readings may differ.
#pragma once

#include <cstdint>

#include "engine/quantity/length.h"

namespace hemline {

/// NIST Handbook 44 §5.52 metal tape, or a class of the MID (2014/32/EU annex X, MI-008).
enum class TapeClass : std::uint8_t { nist_hb44 = 0, mid_1 = 1, mid_2 = 2, mid_3 = 3 };

struct Tape {
    TapeClass tape_class = TapeClass::nist_hb44;
    bool end_hook = true;  ///< MID only: the hook adds 0.1/0.2/0.3 mm

    bool operator==(const Tape&) const = default;
};

/// Largest error of a reading of `length` (>= 0). NIST: between two bands the larger; past 100 ft
/// measured in parts, whose errors are added. MID: ±(a + b·L) mm, L in meters rounded up.
Length tape_error(Length length, Tape tape);

/// How far two readings of the same length may differ: twice the error and one mark (1/16 in, or 1
/// mm).
Length allowed_difference(Length length, Tape tape);

}  // namespace hemline
