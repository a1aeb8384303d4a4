#include "engine/trim/hem_clearance.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

/// For metal fitted in the cold, a whole stick of 10 ft moving.
Length usual(MetalFamily metal) {
    switch (metal) {
        case MetalFamily::copper:
        case MetalFamily::stainless:
        case MetalFamily::aluminum:
            return sixteenths(4);
        case MetalFamily::zinc:
            return sixteenths(6);
        default:
            return {};
    }
}

}  // namespace

Length hem_clearance(MetalFamily metal, Length lap, const Practice& practice) {
    const Site& site = practice.site;
    const bool whole_stick = site.held == Held::at_one_point;
    if (!site.metal_now) {
        return std::max(practice.hem_notch_clear, whole_stick ? usual(metal) : Length());
    }
    const double warms =
        std::max(0.0, fahrenheit_of(site.metal_hottest) - fahrenheit_of(*site.metal_now));
    const Length moves = whole_stick ? practice.stock : lap + practice.screw_margin;
    const double grows = static_cast<double>(moves.nm()) * expansion_of(metal) * warms;
    return std::max(practice.hem_notch_clear,
                    round_up_to(Length::of_nm(std::llround(grows)), practice.cut_grid));
}

}  // namespace hemline
