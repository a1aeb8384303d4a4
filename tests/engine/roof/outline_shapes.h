// Outlines to walk: drawn by hand or at random, as rows of a readings file would state them.
#pragma once

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <string>
#include <vector>

#include "engine/roof/outline.h"

namespace hemline::test {

/// An eave between two corners, each out or in.
inline WalkedEdge eave(const std::string& id, Length length, End left, End right) {
    WalkedEdge walked;
    walked.edge.id = id;
    walked.edge.left = left;
    walked.edge.right = right;
    walked.edge.pitch = rise_in_12(6);
    walked.length = length;
    return walked;
}

inline WalkedEdge gable(const std::string& id, Length slope, Slope pitch) {
    WalkedEdge walked;
    walked.edge.id = id;
    walked.edge.kind = EdgeKind::gable;
    walked.edge.left = End::eave;
    walked.edge.right = End::ridge;
    walked.edge.pitch = pitch;
    walked.length = slope;
    return walked;
}

/// 40 × 30 ft with a corner of 24 × 10 ft cut out.
inline std::vector<WalkedEdge> l_house() {
    constexpr End out = End::corner_out;
    constexpr End in = End::corner_in;
    return {eave("A", feet(40), out, out), eave("B", feet(30), out, out),
            eave("C", feet(16), out, in),  eave("D", feet(10), in, out),
            eave("E", feet(24), out, out), eave("F", feet(40), out, out)};
}

/// 40 ft of eave on both sides, 24 ft wide, 5 in 12: a 5-12-13 triangle, so slopes of 13 ft.
inline std::vector<WalkedEdge> gable_house() {
    const Slope pitch = rise_in_12(5);
    return {eave("A", feet(40), End::gable, End::gable),
            gable("B", feet(13), pitch),
            gable("C", feet(13), pitch),
            eave("D", feet(40), End::gable, End::gable),
            gable("E", feet(13), pitch),
            gable("F", feet(13), pitch)};
}

/// Random numbers, the same on every platform.
class Chance {
  public:
    explicit Chance(std::uint64_t seed) : bits_(seed) {}
    /// low to high, both included.
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(bits_() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 bits_;
};

/// A house of right angles: a long eave, and a skyline of 1 to 5 wings over it. Its first row is
/// any of its edges.
inline std::vector<WalkedEdge> square_house(Chance& chance) {
    struct Point {
        Length x, y;
    };
    const std::int64_t wings = chance.between(1, 5);
    std::vector<Point> corners = {{Length(), Length()}};
    Length x;
    std::vector<Length> tops;
    for (std::int64_t wing = 0; wing < wings; ++wing) {
        Length top = sixteenths(chance.between(10 * 192, 55 * 192));
        while (!tops.empty() && absolute(top - tops.back()) < feet(2)) {
            top += feet(5);
        }
        tops.push_back(top);
    }
    std::vector<Length> widths;
    for (std::int64_t wing = 0; wing < wings; ++wing) {
        widths.push_back(sixteenths(chance.between(4 * 192, 25 * 192)));
        x += widths.back();
    }
    corners.push_back({x, Length()});
    for (std::size_t wing = tops.size(); wing-- > 0;) {
        corners.push_back({x, tops[wing]});
        x -= widths[wing];
        corners.push_back({x, tops[wing]});
    }
    std::vector<WalkedEdge> house;
    const std::size_t n = corners.size();
    const auto start =
        static_cast<std::size_t>(chance.between(0, static_cast<std::int64_t>(n) - 1));
    const auto at = [&](std::size_t i) { return corners[i % n]; };
    const auto turn = [&](std::size_t i) {  // at corner i
        const Point a = at(i + n - 1);
        const Point b = at(i);
        const Point c = at(i + 1);
        const double cross =
            static_cast<double>((b.x - a.x).nm()) * static_cast<double>((c.y - b.y).nm()) -
            static_cast<double>((b.y - a.y).nm()) * static_cast<double>((c.x - b.x).nm());
        return cross > 0 ? End::corner_out : End::corner_in;
    };
    for (std::size_t k = 0; k < n; ++k) {
        const std::size_t i = start + k;
        const Length length = absolute(at(i + 1).x - at(i).x) + absolute(at(i + 1).y - at(i).y);
        house.push_back(eave("E" + std::to_string(k), length, turn(i), turn(i + 1)));
    }
    return house;
}

/// A house of any angles: corners about a middle, 5 to 8 of them, lengths on the 1/16 in, angles to
/// a thousandth of a degree.
inline std::vector<WalkedEdge> skew_house(Chance& chance) {
    const auto n = static_cast<std::size_t>(chance.between(5, 8));
    std::vector<double> xs;
    std::vector<double> ys;
    for (std::size_t i = 0; i < n; ++i) {
        const double angle =
            2 * std::numbers::pi *
            (static_cast<double>(i) + 0.003 * static_cast<double>(chance.between(0, 200))) /
            static_cast<double>(n);
        const double radius = static_cast<double>(chance.between(200, 500)) * 25.4e6;
        xs.push_back(radius * std::cos(angle));
        ys.push_back(radius * std::sin(angle));
    }
    const auto heading = [&](std::size_t i) {
        return std::atan2(ys[(i + 1) % n] - ys[i % n], xs[(i + 1) % n] - xs[i % n]);
    };
    std::vector<Angle> inside;  // at corner i
    for (std::size_t i = 0; i < n; ++i) {
        double turn = (heading(i) - heading(i + n - 1)) * 180 / std::numbers::pi;
        turn += turn <= -180 ? 360 : turn > 180 ? -360 : 0;
        inside.push_back(microdegrees(std::llround((180 - turn) * 1000) * 1000));
    }
    std::vector<WalkedEdge> house;
    for (std::size_t i = 0; i < n; ++i) {
        const double nm = std::hypot(xs[(i + 1) % n] - xs[i], ys[(i + 1) % n] - ys[i]);
        const auto word = [&](std::size_t at) {
            return inside[at] < degrees(180) ? End::corner_out : End::corner_in;
        };
        WalkedEdge walked =
            eave("E" + std::to_string(i), nearest_on(nanometres(std::llround(nm)), sixteenths(1)),
                 word(i), word((i + 1) % n));
        walked.edge.corner_left = inside[i];
        walked.edge.corner_right = inside[(i + 1) % n];
        house.push_back(walked);
    }
    return house;
}

inline Outline trace(const std::vector<WalkedEdge>& edges) {
    const Result<Outline> outline = trace_outline(edges, Tape());
    REQUIRE(outline.ok());
    return *outline;
}

}  // namespace hemline::test
