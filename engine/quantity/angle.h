// Angle in whole millionths of a degree, so that whatever is stated in degrees is exact. What is
// computed from lengths and pitches stays a double in degrees, and is turned into radians here.
#pragma once

#include <compare>
#include <cstdint>
#include <numbers>
#include <string>

namespace hemline {

/// An angle as stated, positive or negative, in whole millionths of a degree.
class Angle {
  public:
    constexpr Angle() = default;
    [[nodiscard]] static constexpr Angle of_microdegrees(std::int64_t n) { return Angle(n); }
    [[nodiscard]] constexpr std::int64_t microdegrees() const { return microdegrees_; }

    constexpr auto operator<=>(const Angle&) const = default;

    constexpr Angle operator-() const { return Angle(-microdegrees_); }
    constexpr Angle& operator+=(Angle o) {
        microdegrees_ += o.microdegrees_;
        return *this;
    }
    friend constexpr Angle operator+(Angle a, Angle b) { return a += b; }
    friend constexpr Angle operator-(Angle a, Angle b) { return a += -b; }

  private:
    explicit constexpr Angle(std::int64_t n) : microdegrees_(n) {}
    std::int64_t microdegrees_ = 0;
};

constexpr Angle microdegrees(std::int64_t n) { return Angle::of_microdegrees(n); }
constexpr Angle degrees(std::int64_t n) { return microdegrees(n * 1'000'000); }
constexpr Angle half_turn = degrees(180);
constexpr Angle full_turn = degrees(360);

constexpr Angle absolute(Angle a) { return a < Angle() ? -a : a; }
/// Whether `a` is a whole number of `part` (not 0).
constexpr bool is_whole_number_of(Angle a, Angle part) {
    return a.microdegrees() % part.microdegrees() == 0;
}
/// The same direction, from 0 to below a full turn.
constexpr Angle within_a_turn(Angle a) {
    const Angle rest = microdegrees(a.microdegrees() % full_turn.microdegrees());
    return rest < Angle() ? rest + full_turn : rest;
}
/// The nearest whole millionth of a degree, a half away from 0.
Angle nearest_microdegree(double degrees);

constexpr double degrees_of(Angle a) { return static_cast<double>(a.microdegrees()) / 1e6; }
constexpr double radians_of(double degrees) { return degrees * std::numbers::pi / 180; }
constexpr double radians_of(Angle a) { return radians_of(degrees_of(a)); }
constexpr double degrees_in(double radians) { return radians * (180 / std::numbers::pi); }

/// "135°", "22.5°", "-30°"; parse_degrees() gives the same angle back where it is not negative.
std::string print_degrees(Angle angle);

}  // namespace hemline
