#include "engine/body/explaining.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "engine/body/same_edge.h"
#include "engine/body/worked_roof.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr int rounds_most = 12;

/// A pitch in the notation it was read in: the roundest that the reading's error allows.
Slope roundest(Slope said, double degrees) {
    const double tangent = std::tan(radians_of(degrees));
    const double exact = said.notation == SlopeNotation::rise_in_12 ? 12 * tangent
                         : said.notation == SlopeNotation::degrees  ? degrees
                                                                    : 100 * tangent;
    Slope slope = said;
    for (const double part : {1.0, 2.0, 4.0, 10.0, 16.0, 100.0}) {
        slope.millionths = std::llround(std::round(exact * part) / part * 1e6);
        if (std::abs(degrees_of(slope) - degrees) <= reading_error_degrees(slope) / 2) {
            break;
        }
    }
    return slope;
}

class Explaining {
  public:
    Explaining(std::span<const RoofBody> bodies, Tape tape, std::span<const EdgeRead> readings)
        : bodies_(bodies.begin(), bodies.end()), tape_(tape), readings_(readings) {
        for (const EdgeRead& one : readings) {
            within_.push_back(static_cast<double>(allowed_difference(one.length, tape).nm()) / 2 +
                              one.edge.off);
        }
    }

    std::vector<Explanation> all() {
        const auto as_it_is = misfits({});
        const auto disagree = std::count_if(as_it_is.begin(), as_it_is.end(),
                                            [](double misfit) { return std::abs(misfit) > 1; });
        if (disagree < 2) {
            return {};
        }
        try_pitches();
        try_sides();
        std::stable_sort(
            found_.begin(), found_.end(),
            [](const Explanation& a, const Explanation& b) { return a.misfit < b.misfit; });
        return found_;
    }

  private:
    void try_pitches() {
        std::vector<std::pair<Slope, std::vector<std::size_t>>> pitches;
        const SidesOfRoof sides = sides_of(bodies_);
        for (std::size_t i = 0; i < sides.size(); ++i) {
            if (is_upright(*sides[i]) || !sides[i]->pitch) {
                continue;
            }
            const auto known = std::find_if(pitches.begin(), pitches.end(), [&](const auto& one) {
                return one.first == *sides[i]->pitch;
            });
            if (known == pitches.end()) {
                pitches.push_back({*sides[i]->pitch, {i}});
            } else {
                known->second.push_back(i);
            }
        }
        for (const auto& [pitch, of_sides] : pitches) {
            const Slope said = pitch;
            const auto fit = best(
                [&](double degrees) {
                    return degrees >= 0.5 && degrees <= 80 ? misfits(PitchChange{said, degrees})
                                                           : std::vector<double>();
                },
                degrees_of(pitch), 0.01);
            if (fit) {
                found_.push_back({pitch, of_sides, roundest(pitch, fit->at), {}, fit->misfit});
            }
        }
    }

    void try_sides() {
        std::size_t index = 0;
        for (RoofBody& body : bodies_) {
            for (BodySide& side : body.sides) {
                if (side.length && closes_with_change(body, side)) {
                    const Length said = *side.length;
                    const auto fit = best(
                        [&](double nm) {
                            if (!(nm >= 1e8 && nm <= 1e15)) {  // 4 in to 600 miles, and a number
                                return std::vector<double>();
                            }
                            side.length = nearest_nm(nm);
                            return misfits({});
                        },
                        static_cast<double>(said.nm()), 1e6);
                    side.length = said;
                    if (fit) {
                        found_.push_back({{},
                                          {index},
                                          {},
                                          nearest_on(nearest_nm(fit->at), sixteenths(1)),
                                          fit->misfit});
                    }
                }
                ++index;
            }
        }
    }

    /// A side that others hold in its place would have left the walk open.
    [[nodiscard]] bool closes_with_change(const RoofBody& body, BodySide& side) const {
        const Length said = *side.length;
        side.length = said + feet(1);
        const Result<ClosedSides> closed = close_sides(body.sides, tape_);
        side.length = said;
        return closed && closed->closes;
    }

    struct Fit {
        double at = 0, misfit = 0;
    };

    /// Gauss's method in one unknown, its slope taken over a step. None: it does not settle, or
    /// leaves a reading unexplained.
    static std::optional<Fit> best(const std::function<std::vector<double>(double)>& misfits_at,
                                   double begin, double step) {
        double at = begin;
        std::vector<double> left = misfits_at(at);
        for (int round = 0; round < rounds_most && !left.empty(); ++round) {
            const std::vector<double> beside = misfits_at(at + step);
            double of_slope = 0, of_left = 0;
            for (std::size_t i = 0; i < left.size() && i < beside.size(); ++i) {
                const double slope = (beside[i] - left[i]) / step;
                of_slope += slope * slope;
                of_left += slope * left[i];
            }
            if (of_slope == 0) {
                return {};
            }
            const double by = of_left / of_slope;
            at -= by;
            left = misfits_at(at);
            if (std::abs(by) < step / 100) {
                break;
            }
        }
        double sum = 0, largest = 0;
        for (const double one : left) {
            sum += one * one;
            largest = std::max(largest, std::abs(one));
        }
        if (left.empty() || largest > 1) {
            return {};
        }
        return Fit{at, std::sqrt(sum / static_cast<double>(left.size()))};
    }

    /// Of each reading how far the roof is off it, in what both may be off; empty: no roof.
    [[nodiscard]] std::vector<double> misfits(const std::optional<PitchChange>& change) const {
        const Result<WorkedRoof> worked =
            work_out(bodies_, tape_, WalkThatIsOpen::is_forced, change);
        std::vector<double> misfits;
        for (std::size_t i = 0; worked && i < readings_.size(); ++i) {
            const BodyEdge* edge = same_edge(worked->edges, readings_[i].edge);
            const double length = edge == nullptr ? 0 : edge->length;
            misfits.push_back((length - static_cast<double>(readings_[i].length.nm())) /
                              within_[i]);
        }
        return misfits;
    }

    std::vector<RoofBody> bodies_;
    Tape tape_;
    std::span<const EdgeRead> readings_;
    std::vector<double> within_;
    std::vector<Explanation> found_;
};

}  // namespace

std::vector<Explanation> what_explains(std::span<const RoofBody> bodies, Tape tape,
                                       std::span<const EdgeRead> readings) {
    return Explaining(bodies, tape, readings).all();
}

}  // namespace hemline
