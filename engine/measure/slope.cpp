#include "engine/measure/slope.h"

#include <cmath>

#include "engine/quantity/angle.h"
#include "engine/require.h"

namespace hemline {

namespace {

double amount_of(Slope slope) { return static_cast<double>(slope.millionths) / 1e6; }

}  // namespace

double degrees_of(Slope slope) {
    if (slope.notation == SlopeNotation::degrees) {
        return amount_of(slope);
    }
    return degrees_in(std::atan(rise_in_12_of(slope) / 12));
}

double rise_in_12_of(Slope slope) {
    switch (slope.notation) {
        case SlopeNotation::rise_in_12:
            return amount_of(slope);
        case SlopeNotation::degrees:
            return std::tan(radians_of(amount_of(slope))) * 12;
        case SlopeNotation::percent:
            return amount_of(slope) * 12 / 100;
    }
    stop("a slope without its notation");
}

double percent_of(Slope slope) {
    return slope.notation == SlopeNotation::percent ? amount_of(slope)
                                                    : rise_in_12_of(slope) * 100 / 12;
}

double slope_factor_of(Slope slope) { return std::hypot(1.0, rise_in_12_of(slope) / 12); }

double reading_error_degrees(Slope slope) {
    if (slope.notation == SlopeNotation::degrees) {
        return 0.1;
    }
    const bool rise = slope.notation == SlopeNotation::rise_in_12;
    Slope flatter = slope;
    flatter.millionths -= rise ? 62'500 : 500'000;  // 1/16 in of rise, or half a percent
    // The same error in the rise changes the angle of a flatter roof more, so the flatter side is
    // the worse case.
    return degrees_of(slope) - degrees_of(flatter);
}

}  // namespace hemline
