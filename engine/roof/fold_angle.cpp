#include "engine/roof/fold_angle.h"

#include <cmath>

namespace hemline {

FoldAngle eave_fold(Slope pitch, Fascia fascia) {
    if (fascia == Fascia::square_cut) {
        return {90, 90};
    }
    const double slope = degrees_of(pitch);
    return {90 + slope, 90 - slope};
}

Length flange_mitre_setback(Length flange, Slope pitch) {
    // A roof's lengths stay far below 2^53 nm (9 000 km), so the double holds them exactly.
    return Length::of_nm(std::llround(static_cast<double>(flange.nm()) / slope_factor_of(pitch)));
}

}  // namespace hemline
