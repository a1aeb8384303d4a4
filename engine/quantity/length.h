// Length in whole nanometers, so that every 1/64 in and every 1/10 mm is exact. No floating point.
#pragma once

#include <compare>
#include <cstdint>

namespace hemline {

/// A length, positive or negative, in whole nanometers (±9.2 million km; overflow is not checked:
/// everything read from outside is capped at longest_readable()).
class Length {
  public:
    constexpr Length() = default;
    [[nodiscard]] static constexpr Length of_nm(std::int64_t nm) { return Length(nm); }
    [[nodiscard]] constexpr std::int64_t nm() const { return nm_; }

    constexpr auto operator<=>(const Length&) const = default;

    constexpr Length operator-() const { return Length(-nm_); }
    constexpr Length& operator+=(Length o) {
        nm_ += o.nm_;
        return *this;
    }
    constexpr Length& operator-=(Length o) {
        nm_ -= o.nm_;
        return *this;
    }
    friend constexpr Length operator+(Length a, Length b) { return Length(a.nm_ + b.nm_); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.nm_ - b.nm_); }
    friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.nm_ * n); }
    friend constexpr Length operator*(std::int64_t n, Length a) { return Length(a.nm_ * n); }

  private:
    explicit constexpr Length(std::int64_t nm) : nm_(nm) {}
    std::int64_t nm_ = 0;
};

constexpr Length nanometres(std::int64_t n) { return Length::of_nm(n); }
constexpr Length tenths_of_millimetre(std::int64_t n) { return Length::of_nm(n * 100'000); }
constexpr Length millimetres(std::int64_t n) { return Length::of_nm(n * 1'000'000); }
constexpr Length sixty_fourths(std::int64_t n) { return Length::of_nm(n * 396'875); }
constexpr Length thirty_seconds(std::int64_t n) { return Length::of_nm(n * 793'750); }
constexpr Length sixteenths(std::int64_t n) { return Length::of_nm(n * 1'587'500); }
constexpr Length inches(std::int64_t n) { return Length::of_nm(n * 25'400'000); }
constexpr Length feet(std::int64_t n) { return Length::of_nm(n * 304'800'000); }

/// The longest length any text or event may state: 1 km, far past any roof.
constexpr Length longest_readable() { return millimetres(1'000'000); }

constexpr Length absolute(Length a) { return a < Length() ? -a : a; }

/// Largest multiple of `grid` (> 0) not above `a`.
constexpr Length round_down_to(Length a, Length grid) {
    const std::int64_t rest = a.nm() % grid.nm();
    return Length::of_nm(a.nm() - rest - (rest < 0 ? grid.nm() : 0));
}
/// Smallest multiple of `grid` (> 0) not below `a`.
constexpr Length round_up_to(Length a, Length grid) { return -round_down_to(-a, grid); }
/// Nearest multiple of `grid` (> 0); a half goes up (to the longer).
constexpr Length nearest_on(Length a, Length grid) {
    return round_down_to(Length::of_nm(a.nm() + grid.nm() / 2), grid);
}
/// Whole parts of `part` (> 0) that cover `a` (>= 0): ⌈a / part⌉.
constexpr std::int64_t parts_to_cover(Length a, Length part) {
    return (a.nm() + part.nm() - 1) / part.nm();
}

}  // namespace hemline
