// Walks by chance: around a middle, on a grid as houses are, and anyhow.
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include "engine/body/inner_lines.h"

namespace hemline::test {

using PlanWalk = std::vector<PlanVector>;

inline std::vector<MovingSide> sides_round(const PlanWalk& corners,
                                           const std::vector<double>& inward) {
    std::vector<MovingSide> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        sides.push_back({corners[i], corners[(i + 1) % corners.size()], inward[i % inward.size()]});
    }
    return sides;
}

inline double plan_area(const std::vector<MovingSide>& sides) {
    double area = 0;
    for (const MovingSide& side : sides) {
        area += turn(side.from, side.to) / 2;
    }
    return area;
}

/// From 0 to below 1, the same on every platform: the library's distributions are not.
inline double share(std::mt19937& random) { return static_cast<double>(random()) / 4294967296.0; }
inline int below(std::mt19937& random, int n) { return static_cast<int>(share(random) * n); }

/// Corners at random distances around a middle.
inline PlanWalk star(std::mt19937& random, int corners) {
    PlanWalk walk;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * (i + 0.1 + 0.8 * share(random)) / corners;
        const double radius = 20 + 25 * share(random);
        walk.push_back({radius * std::cos(angle), radius * std::sin(angle)});
    }
    return walk;
}

/// Square corners on a grid, as houses are: many events at one height.
inline PlanWalk steps(std::mt19937& random) {
    const int wide = 2 + below(random, 13);
    PlanWalk walk = {{0, 0}, {3.0 * wide, 0}};
    for (int i = wide - 1; i >= 0; --i) {
        const double top = 2 + below(random, 8);
        if (walk.back().y == top) {
            walk.back() = {3.0 * i, top};
            continue;
        }
        walk.push_back({3.0 * (i + 1), top});
        walk.push_back({3.0 * i, top});
    }
    return walk;
}

inline bool cross_one_another(PlanVector a, PlanVector b, PlanVector c, PlanVector d) {
    return turn(b - a, c - a) * turn(b - a, d - a) < 0 &&
           turn(d - c, a - c) * turn(d - c, b - c) < 0;
}

/// Any simple outline: places by chance, and stretches between two sides that cross are turned
/// round until none does.
inline PlanWalk uncrossed(std::mt19937& random, int corners) {
    PlanWalk walk;
    for (int i = 0; i < corners; ++i) {
        walk.push_back({40 * share(random), 40 * share(random)});
    }
    const std::size_t n = walk.size();
    for (bool again = true; again;) {
        again = false;
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = i + 2; k < n; ++k) {
                if (cross_one_another(walk[i], walk[i + 1], walk[k], walk[(k + 1) % n])) {
                    std::reverse(walk.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                                 walk.begin() + static_cast<std::ptrdiff_t>(k) + 1);
                    again = true;
                }
            }
        }
    }
    if (plan_area(sides_round(walk, {1})) < 0) {
        std::reverse(walk.begin(), walk.end());
    }
    return walk;
}

/// Any outline of square corners: rooms of a grid side by side, walked round; empty where they have
/// a court or touch at a corner alone. Rows and columns are of different widths, some the same.
inline PlanWalk rooms(std::mt19937& random) {
    constexpr int wide = 7;
    bool room[wide + 2][wide + 2] = {};
    room[4][4] = true;
    for (int i = 0; i < 60; ++i) {
        const int x = 1 + below(random, wide), y = 1 + below(random, wide);
        const int beside = room[x - 1][y] + room[x + 1][y] + room[x][y - 1] + room[x][y + 1];
        room[x][y] = room[x][y] || beside == 1;
    }
    double lines[2][wide + 2] = {};
    for (auto& line : lines) {
        for (int i = 1; i < wide + 2; ++i) {
            line[i] = line[i - 1] + 2 + below(random, 4);
        }
    }
    int x = 0, y = 0, begin_x = 0;  // the lowest room's lower left corner
    for (y = 1; begin_x == 0; y += begin_x == 0 ? 1 : 0) {
        for (int i = wide; i > 0; --i) {
            begin_x = room[i][y] ? i : begin_x;
        }
    }
    const int begin_y = y;
    x = begin_x;
    PlanWalk walk;
    int way_x = 1, way_y = 0, went_x = 0, went_y = 0;
    do {
        // Walked with the rooms on the left: whether there is one ahead on the left, on the right.
        const auto at = [&](int side) {
            const int of_x = x + (way_x - side * way_y - 1) / 2,
                      of_y = y + (way_y + side * way_x - 1) / 2;
            return room[of_x][of_y];
        };
        const bool left = at(1), right = at(-1);
        if (!left || right) {
            const int turned = left ? -1 : 1;
            const int kept = way_x;
            way_x = -turned * way_y;
            way_y = turned * kept;
        }
        if (way_x != went_x || way_y != went_y) {
            walk.push_back({lines[0][x], lines[1][y]});
            went_x = way_x;
            went_y = way_y;
        }
        x += way_x;
        y += way_y;
    } while (x != begin_x || y != begin_y);
    for (std::size_t i = 0; i < walk.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (length_of(walk[i] - walk[k]) == 0) {
                return {};
            }
        }
    }
    double inside = 0;
    for (int i = 1; i <= wide; ++i) {
        for (int k = 1; k <= wide; ++k) {
            inside +=
                room[i][k] ? (lines[0][i + 1] - lines[0][i]) * (lines[1][k + 1] - lines[1][k]) : 0;
        }
    }
    return std::abs(plan_area(sides_round(walk, {1})) - inside) < 1e-6 ? walk : PlanWalk();
}

/// One of the kinds above, of up to 60 sides.
inline PlanWalk walk_by_chance(std::mt19937& random) {
    for (;;) {
        const int kind = below(random, 4);
        const PlanWalk walk = kind == 0   ? star(random, 4 + below(random, 57))
                              : kind == 1 ? steps(random)
                              : kind == 2 ? uncrossed(random, 4 + below(random, 27))
                                          : rooms(random);
        if (!walk.empty()) {
            return walk;
        }
    }
}

/// Places anyhow: crossing, back over themselves, hair-thin, on a coarse grid or not.
inline PlanWalk anyhow(std::mt19937& random) {
    PlanWalk walk;
    const int corners = 3 + below(random, 58), kind = below(random, 4);
    const double thin = kind == 1 ? 1e-8 : kind == 2 ? 1e-3 : 1;
    for (int i = 0; i < corners; ++i) {
        PlanVector corner = {share(random), thin * share(random)};
        if (kind == 3) {
            corner = {std::floor(corner.x * 6), std::floor(corner.y * 6)};
        }
        if (walk.empty() || length_of(corner - walk.back()) > 0) {
            walk.push_back(corner);
        }
    }
    return walk;
}

}  // namespace hemline::test
