// The places of a roof of several bodies, seen from above, where all of it moves by little: each is
// found anew where its lines cross.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/joined_bodies.h"
#include "engine/body/steady_bodies.h"

namespace hemline {

class WatchedPlaces {
  public:
    /// A straight stretch that bounds what is seen, or a plane that may be hidden.
    struct Segment {
        std::size_t from = 0, to = 0;     ///< places
        std::optional<std::size_t> body;  ///< whose line it is; none: a piece of what is seen
    };
    struct Place {
        PlanVector before;
        std::vector<std::size_t> own;    ///< of the bodies' places, those that lie there
        std::vector<std::size_t> lines;  ///< through it; the first two cross there best
        bool is_crossing = false;        ///< of two lines; else it is its own, or marks a line
        std::vector<std::size_t> seen;   ///< the planes seen there
    };

    WatchedPlaces(const JoinedBodies& joined, const SteadyBodies& bodies, const MovedBodies& now);

    [[nodiscard]] const std::vector<Place>& places() const { return places_; }
    [[nodiscard]] const std::vector<Segment>& segments() const { return segments_; }
    /// Whether one of the body's own places lies there.
    [[nodiscard]] bool is_of(std::size_t place, std::size_t body) const;

    /// Where they are now. None: lines that met in one place do not any more.
    [[nodiscard]] std::optional<std::vector<PlanVector>> at(const MovedBodies& now) const;

  private:
    /// Between two of the bodies' places, or where two planes are as high.
    struct Line {
        std::size_t from = 0, to = 0;
        std::optional<PlanesCross> crossing;
    };
    /// dot(p, across) = begin, `across` of length 1.
    struct Straight {
        PlanVector across;
        double begin = 0;
    };
    [[nodiscard]] Straight straight(const Line& line, const MovedBodies& now) const;
    void take_places(const std::vector<bool>& used, const MovedBodies& now);
    void take_lines(const SteadyBodies& bodies, const MovedBodies& now);
    void put_crossing_first(Place& place, const std::vector<Straight>& lines) const;

    const JoinedBodies& joined_;
    double near_ = 0;
    std::vector<Place> places_;
    std::vector<Segment> segments_;
    std::vector<Line> lines_;
    std::vector<std::size_t> body_of_own_;
    std::vector<std::size_t> place_of_own_;
};

}  // namespace hemline
