// The pitch from the tablet's sensor, with the tablet laid on the deck twice: turned end for end,
// the error of the sensor changes sign and cancels.
//
//        ╱▭  first          (up in the tablet's frame: u1 = slope + error)
//       ╱▭   turned         (                          u2 = −slope + error)
#pragma once

#include <span>

#include "engine/measure/slope.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// What the sensor says, in degrees: beta front to back, gamma left to right, as in W3C Device
/// Orientation Event Specification (intrinsic turns Z-X'-Y'').
struct TiltSample {
    double beta = 0, gamma = 0;
};

/// Samples in a reading, so that the trembling of a hand averages out.
constexpr std::size_t tilt_samples = 40;

struct Tilt {
    double degrees = 0;    ///< of the deck against level, 0 to 90
    double own_error = 0;  ///< degrees: the sensor's error, which has canceled
    double spread = 0;     ///< degrees: standard deviation of the samples about their mean
};

/// Problem: too few samples, the tablet moved while it was read, or it was not turned.
Result<Tilt> tilt_of(std::span<const TiltSample> first, std::span<const TiltSample> turned);

/// Standard deviation of a reading's samples, degrees; 0 for fewer than two.
double spread_of(std::span<const TiltSample> samples);

/// The pitch as a level shows it: degrees to the nearest tenth.
Slope slope_of(const Tilt& tilt);

}  // namespace hemline
