#include "tests/engine/body/slow_roof.h"

#include <algorithm>

namespace hemline::test {

namespace {

/// n·p = begin + inward × height.
struct SlowLine {
    double nx = 0, ny = 0, begin = 0, inward = 0;
};

struct SlowCorner {
    std::size_t side = 0;  ///< that begins here
    PlanVector at;
};
using SlowWalk = std::vector<SlowCorner>;

class Sweeping {
  public:
    explicit Sweeping(const std::vector<MovingSide>& sides) : areas_(sides.size()) {
        SlowWalk walk;
        for (std::size_t i = 0; i < sides.size(); ++i) {
            const PlanVector way = sides[i].to - sides[i].from;
            const double length = std::sqrt(way.x * way.x + way.y * way.y);
            const double nx = -way.y / length, ny = way.x / length;
            lines_.push_back(
                {nx, ny, nx * sides[i].from.x + ny * sides[i].from.y, sides[i].inward});
            walk.push_back({i, sides[i].from});
        }
        walks_ = {walk};
    }

    std::optional<std::vector<double>> swept(double step, int steps_most) {
        for (int i = 1; !walks_.empty(); ++i) {
            if (i > steps_most) {
                return {};
            }
            height_ = step * i;
            std::vector<SlowWalk> moved;
            for (const SlowWalk& walk : walks_) {
                sweep(walk, step);
                cut(moved_walk(walk), moved);
            }
            walks_ = moved;
        }
        return areas_;
    }

  private:
    static double long_(const SlowWalk& walk, std::size_t i) {
        return length_of(walk[(i + 1) % walk.size()].at - walk[i].at);
    }

    /// Each side sweeps its length times how far it moves in a step.
    void sweep(const SlowWalk& walk, double step) {
        for (std::size_t i = 0; i < walk.size(); ++i) {
            areas_[walk[i].side] += long_(walk, i) * lines_[walk[i].side].inward * step;
        }
    }

    [[nodiscard]] std::optional<PlanVector> meeting(std::size_t a, std::size_t b) const {
        const SlowLine &p = lines_[a], &q = lines_[b];
        const double turned = p.nx * q.ny - p.ny * q.nx;
        if (std::abs(turned) < 1e-12) {
            return {};
        }
        const double of_p = p.begin + p.inward * height_, of_q = q.begin + q.inward * height_;
        return PlanVector{(of_p * q.ny - of_q * p.ny) / turned,
                          (p.nx * of_q - q.nx * of_p) / turned};
    }

    /// The walk at the height; sides that would run backward are gone.
    [[nodiscard]] SlowWalk moved_walk(SlowWalk walk) const {
        for (bool again = true; again && walk.size() >= 3;) {
            again = false;
            for (std::size_t i = 0; i < walk.size(); ++i) {
                const std::size_t before = walk[(i + walk.size() - 1) % walk.size()].side;
                if (const auto place = meeting(before, walk[i].side)) {
                    walk[i].at = *place;
                }
            }
            for (std::size_t i = 0; i < walk.size(); ++i) {
                const SlowLine& line = lines_[walk[i].side];
                const PlanVector way = walk[(i + 1) % walk.size()].at - walk[i].at;
                if (way.x * line.ny - way.y * line.nx < 0) {
                    walk.erase(walk.begin() + static_cast<std::ptrdiff_t>(i));
                    again = true;
                    break;
                }
            }
        }
        return walk;
    }

    static double area(const SlowWalk& walk) {
        double twice = 0;
        for (std::size_t i = 0; i < walk.size(); ++i) {
            twice += turn(walk[i].at, walk[(i + 1) % walk.size()].at);
        }
        return twice / 2;
    }

    /// Where two sides of the walk cross, it falls into two; what runs the wrong way round is gone.
    static void cut(const SlowWalk& walk, std::vector<SlowWalk>& whole) {
        const std::size_t n = walk.size();
        if (n < 3) {
            return;
        }
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = i + 2; k < n && !(i == 0 && k == n - 1); ++k) {
                const auto place =
                    crossing(walk[i].at, walk[i + 1].at, walk[k].at, walk[(k + 1) % n].at);
                if (!place) {
                    continue;
                }
                SlowWalk first = {{walk[k].side, *place}};
                first.insert(first.end(), walk.begin() + static_cast<std::ptrdiff_t>(k) + 1,
                             walk.end());
                first.insert(first.end(), walk.begin(),
                             walk.begin() + static_cast<std::ptrdiff_t>(i) + 1);
                SlowWalk second = {{walk[i].side, *place}};
                second.insert(second.end(), walk.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                              walk.begin() + static_cast<std::ptrdiff_t>(k) + 1);
                cut(first, whole);
                cut(second, whole);
                return;
            }
        }
        if (area(walk) > 0) {
            whole.push_back(walk);
        }
    }

    static std::optional<PlanVector> crossing(PlanVector a, PlanVector b, PlanVector c,
                                              PlanVector d) {
        const double turned = turn(b - a, d - c);
        if (std::abs(turned) < 1e-15) {
            return {};
        }
        const double along = turn(c - a, d - c) / turned, other = turn(c - a, b - a) / turned;
        if (along <= 0 || along >= 1 || other <= 0 || other >= 1) {
            return {};
        }
        return a + (b - a) * along;
    }

    std::vector<SlowLine> lines_;
    std::vector<SlowWalk> walks_;
    std::vector<double> areas_;
    double height_ = 0;
};

}  // namespace

std::optional<std::vector<double>> swept_areas(const std::vector<MovingSide>& sides, double step,
                                               int steps_most) {
    return Sweeping(sides).swept(step, steps_most);
}

}  // namespace hemline::test
