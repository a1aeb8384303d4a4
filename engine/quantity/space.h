// A place or a direction in space, in double.
#pragma once

#include <cmath>

namespace hemline {

struct Space {
    double x = 0, y = 0, z = 0;
};

constexpr Space operator+(const Space& a, const Space& b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Space operator-(const Space& a, const Space& b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
constexpr Space operator*(const Space& a, double n) { return {a.x * n, a.y * n, a.z * n}; }

constexpr double dot(const Space& a, const Space& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Space cross(const Space& a, const Space& b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length_of(const Space& a) { return std::sqrt(dot(a, a)); }
/// The vector scaled to length 1; a zero vector stays zero.
inline Space unit(const Space& a) {
    const double length = length_of(a);
    return length > 0 ? a * (1 / length) : Space();
}

}  // namespace hemline
