// How much longer than the lap the hem's notch is, so that two hems do not run into each other when
// the metal grows.
//
//        lap |··clear··|          the upper piece's hem ends at the lap line; in the heat it
//      ──────┐                    grows by α·ℓ·(hottest − now) toward the lower piece's hem
//      upper ⊂          ⊃ lower
#pragma once

#include "engine/trim/metal_family.h"
#include "engine/trim/practice.h"

namespace hemline {

/// The notch past the lap, on practice.cut_grid and never under hem_notch_clear. From the last
/// fixed point: a whole stick where it is held at one point, else the lap and the margin of the
/// screw beside it. Held at one point and no temperature said: 1/4 in of copper, stainless steel
/// and aluminum, 3/8 in of zinc. Common practice, no published source.
Length hem_clearance(MetalFamily metal, Length lap, const Practice& practice);

}  // namespace hemline
