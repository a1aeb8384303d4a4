#include "tests/engine/body/slow_off.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "engine/body/worked_roof.h"
#include "engine/words/result.h"

namespace hemline::test {

namespace {

struct SlowStretch {
    std::size_t side = 0, other = 0;
    Space from, to;
};
struct SlowRoof {
    std::vector<SlowStretch> stretches;
    std::vector<std::size_t> plane_of;
};

SlowRoof slow_roof_of_several(const std::vector<RoofBody>& bodies, Tape tape,
                              const std::optional<PitchChange>& change) {
    SlowRoof made;
    const auto worked = work_out(bodies, tape, WalkThatIsOpen::is_forced, change);
    for (const BodyEdge& edge : worked ? worked->edges : std::vector<BodyEdge>()) {
        made.stretches.push_back({edge.sides.front(), edge.sides.back(), edge.from, edge.to});
    }
    made.plane_of.resize(sides_of(bodies).size());
    std::iota(made.plane_of.begin(), made.plane_of.end(), std::size_t{0});
    return made;
}

SlowRoof slow_roof_of(const std::vector<RoofBody>& bodies, Tape tape,
                      const std::optional<PitchChange>& change) {
    if (bodies.size() > 1) {
        return slow_roof_of_several(bodies, tape, change);
    }
    const std::vector<BodySide>& said = bodies.front().sides;
    SlowRoof made;
    const Result<ClosedSides> closed = close_sides(said, tape);
    if (!closed) {
        return made;
    }
    const std::vector<MovingSide> sides = with_change(said, closed->sides, change);
    const InnerLines lines = trace_inner_lines(sides);
    if (!lines.stuck.empty()) {
        return made;
    }
    const auto at = [&](std::size_t place) {
        return Space{lines.places[place].at.x, lines.places[place].at.y,
                     lines.places[place].height};
    };
    for (std::size_t i = 0; i < sides.size(); ++i) {
        made.stretches.push_back({i, i, at(i), at((i + 1) % sides.size())});
    }
    for (const InnerLine& line : lines.lines) {
        made.stretches.push_back({line.left, line.right, at(line.from), at(line.to)});
    }
    made.plane_of = lines.plane_of;
    return made;
}

/// Sides that are one plane in the one roof or in the other have one number.
std::vector<std::size_t> numbered(const SlowRoof& one, const SlowRoof& other) {
    std::vector<std::size_t> number(one.plane_of.size());
    std::iota(number.begin(), number.end(), std::size_t{0});
    for (bool changed = true; changed;) {
        changed = false;
        for (const SlowRoof* roof : {&one, &other}) {
            for (std::size_t i = 0; i < number.size(); ++i) {
                std::size_t &own = number[i], &first = number[roof->plane_of[i]];
                changed = changed || own != first;
                own = first = std::min(own, first);
            }
        }
    }
    return number;
}

class SlowOff {
  public:
    SlowOff(std::vector<RoofBody> bodies, Tape tape, std::span<const BodyEdge> expected)
        : bodies_(std::move(bodies)),
          tape_(tape),
          expected_(expected),
          off_(expected.size()),
          before_(slow_roof_of(bodies_, tape, {})) {}

    std::vector<double> off() {
        for (RoofBody& body : bodies_) {
            of_sides(body.sides);
            if (body.host) {
                of_length(body.host->along);
                of_length(body.host->up);
                of_length(body.host->rise);
            }
        }
        of_pitches();
        return off_;
    }

  private:
    void of_length(Length& length) {
        const Length kept = length;
        const Length by = nanometres(allowed_difference(absolute(kept), tape_).nm() / 2);
        both_ways([&](int way) {
            length = kept + by * way;
            return std::optional<PitchChange>();
        });
        length = kept;
    }

    void of_sides(std::vector<BodySide>& sides) {
        for (BodySide& side : sides) {
            if (side.length) {
                of_length(*side.length);
            }
            const Angle corner = side.corner, by = off_of_stated(corner);
            if (by != Angle()) {
                both_ways([&](int way) {
                    side.corner = way < 0 ? corner - by : corner + by;
                    return std::optional<PitchChange>();
                });
                side.corner = corner;
            }
        }
    }

    void of_pitches() {
        std::set<std::pair<SlopeNotation, std::int64_t>> pitches;
        for (const BodySide* side : sides_of(bodies_)) {
            if (side->pitch &&
                pitches.emplace(side->pitch->notation, side->pitch->millionths).second) {
                const Slope pitch = *side->pitch;
                both_ways([&](int way) {
                    return std::optional(
                        PitchChange{pitch, degrees_of(pitch) + way * reading_error_degrees(pitch)});
                });
            }
        }
    }

    template <class Change>
    void both_ways(const Change& change) {
        std::vector<double> most(expected_.size());
        for (const int way : {-1, 1}) {
            const SlowRoof after = slow_roof_of(bodies_, tape_, change(way));
            if (after.stretches.empty()) {
                continue;
            }
            const std::vector<std::size_t> number = numbered(before_, after);
            for (std::size_t i = 0; i < expected_.size(); ++i) {
                most[i] = std::max(most[i], changed(after, expected_[i], number));
            }
        }
        for (std::size_t i = 0; i < off_.size(); ++i) {
            off_[i] += most[i];
        }
    }

    [[nodiscard]] double changed(const SlowRoof& after, const BodyEdge& edge,
                                 const std::vector<std::size_t>& number) const {
        // Which stands over which is said by the order, of several bodies.
        const auto pair_of = [&](std::size_t one, std::size_t other) {
            const std::pair<std::size_t, std::size_t> pair = {number[one], number[other]};
            return bodies_.size() > 1 || pair.first < pair.second
                       ? pair
                       : std::pair(pair.second, pair.first);
        };
        const auto lies_between = [&](std::size_t one, std::size_t other) {
            return pair_of(one, other) == pair_of(edge.sides.front(), edge.sides.back());
        };
        double sum = 0, expected = 0, nearest = 1e30, length = 0;
        int more = 0;
        for (const SlowStretch& one : after.stretches) {
            if (lies_between(one.side, one.other)) {
                const Space apart = (one.from + one.to) * 0.5 - (edge.from + edge.to) * 0.5;
                sum += length_of(one.to - one.from);
                ++more;
                if (length_of(apart) < nearest) {
                    nearest = length_of(apart);
                    length = length_of(one.to - one.from);
                }
            }
        }
        for (const BodyEdge& one : expected_) {
            if (lies_between(one.sides.front(), one.sides.back())) {
                expected += one.length;
                --more;
            }
        }
        return std::abs(length > 0 && more != 0 ? sum - expected : length - edge.length);
    }

    std::vector<RoofBody> bodies_;
    Tape tape_;
    std::span<const BodyEdge> expected_;
    std::vector<double> off_;
    SlowRoof before_;
};

}  // namespace

std::vector<double> slow_off_of_edges(const std::vector<RoofBody>& bodies, Tape tape,
                                      std::span<const BodyEdge> expected) {
    return SlowOff(bodies, tape, expected).off();
}

}  // namespace hemline::test
