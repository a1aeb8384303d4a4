#include "engine/work/boot.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/angle.h"
#include "engine/trim/practice.h"

namespace hemline {

namespace {

/// Where nobody said how warm the metal is while it is laid.
constexpr Temperature laid_at = fahrenheit(60);
constexpr Length room_least = inches(1);

/// From laying to the hotter or the colder end, whichever is farther.
double farthest_change(const Site& site) {
    const double now = fahrenheit_of(site.metal_now.value_or(laid_at));
    return std::max(fahrenheit_of(site.metal_hottest) - now,
                    now - fahrenheit_of(site.metal_coldest));
}

Length half_of(Length length) { return Length::of_nm(length.nm() / 2); }

}  // namespace

Boot boot_of(Length pipe, Length base, Length from_line, MetalFamily metal,
             const Practice& practice) {
    Boot boot;
    boot.seam_least = half_of(base) + practice.boot_clear + half_of(practice.seam_foot);
    boot.room = practice.seam_spacing - boot.seam_least * 2;
    const double moves =
        static_cast<double>(from_line.nm()) * expansion_of(metal) * farthest_change(practice.site);
    const Length move = Length::of_nm(std::llround(moves));
    boot.hole = round_up_to(pipe + (move + practice.hole_clear) * 2, sixteenths(1));
    return boot;
}

bool fits(const Boot& boot) { return boot.room >= room_least; }

Cricket cricket_of(Length width, double pitch_degrees) {
    const double half = static_cast<double>(width.nm()) / 2;
    const double height = half * std::tan(radians_of(pitch_degrees));
    return {Length::of_nm(std::llround(height)),
            Length::of_nm(std::llround(std::sqrt(2 * half * half + height * height)))};
}

}  // namespace hemline
