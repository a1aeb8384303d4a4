#include "engine/measure/tilt.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/angle.h"
#include "engine/quantity/space.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr double spread_most = 0.5;     // degrees: more, and it was moving
constexpr double own_error_most = 5.0;  // degrees: more, and it was not turned

/// Up, in the frame of the tablet: x to its right edge, y to its top edge, z out of the screen.
Space up_of(TiltSample sample) {
    const double beta = radians_of(sample.beta);
    const double gamma = radians_of(sample.gamma);
    return {-std::cos(beta) * std::sin(gamma), std::sin(beta), std::cos(beta) * std::cos(gamma)};
}

Space mean_of(std::span<const TiltSample> samples) {
    Space sum;
    for (const TiltSample sample : samples) {
        sum = sum + up_of(sample);
    }
    return unit(sum);
}

double angle_between(const Space& a, const Space& b) {
    return degrees_in(2 * std::asin(std::min(1.0, length_of(a - b) / 2)));
}

}  // namespace

double spread_of(std::span<const TiltSample> samples) {
    if (samples.size() < 2) {
        return 0;
    }
    const Space mean = mean_of(samples);
    double squares = 0;
    for (const TiltSample sample : samples) {
        const double off = angle_between(up_of(sample), mean);
        squares += off * off;
    }
    return std::sqrt(squares / static_cast<double>(samples.size() - 1));
}

Result<Tilt> tilt_of(std::span<const TiltSample> first, std::span<const TiltSample> turned) {
    if (first.size() < tilt_samples || turned.size() < tilt_samples) {
        return Problem{say("The sensor has not been read long enough."),
                       say("Leave the tablet lying until it has been read.")};
    }
    Tilt tilt;
    tilt.spread = std::max(spread_of(first), spread_of(turned));
    if (tilt.spread > spread_most) {
        return Problem{say("The tablet moved while it was read."),
                       say("Lay it down and take it again.")};
    }
    const Space one = mean_of(first);
    const Space two = mean_of(turned);
    tilt.degrees =
        degrees_in(std::asin(std::min(1.0, std::hypot(one.x - two.x, one.y - two.y) / 2)));
    tilt.own_error =
        degrees_in(std::asin(std::min(1.0, std::hypot(one.x + two.x, one.y + two.y) / 2)));
    if (tilt.own_error > own_error_most) {
        return Problem{say("The two readings do not mirror one another."),
                       say("Turn the tablet end for end on the same spot, then take it again.")};
    }
    return tilt;
}

Slope slope_of(const Tilt& tilt) {
    return {SlopeNotation::degrees,
            static_cast<std::int64_t>(std::llround(tilt.degrees * 10)) * 100'000};
}

}  // namespace hemline
