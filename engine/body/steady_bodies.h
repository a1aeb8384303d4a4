// Bodies that are tied together, where one reading changes by little: each body's lines stay what
// they are, and all of it moves.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/body_ties.h"
#include "engine/body/placing.h"
#include "engine/body/steady_closing.h"
#include "engine/body/steady_lines.h"

namespace hemline {

/// As the roof has them: seen from the first body.
struct MovedBodies {
    std::vector<Space> places;         ///< of all bodies' lines, one body's after another's
    std::vector<EndlessPlane> planes;  ///< by all sides; an upright one has none
    std::vector<std::optional<EndlessPlane>> host;  ///< by bodies: into which plane it runs
};

class SteadyBodies {
  public:
    /// `placed` stays where it is as long as this.
    SteadyBodies(std::span<const RoofBody> bodies, const PlacedBodies& placed, Tape tape);

    /// Of a body: where its lines' places begin.
    [[nodiscard]] std::size_t first_place(std::size_t body) const {
        return steady_[body].first_place;
    }
    [[nodiscard]] const InnerLines& lines(std::size_t body) const {
        return steady_[body].lines.lines();
    }
    [[nodiscard]] std::optional<MovedBodies> as_it_is() const;

    /// `bodies` as said now: with other places on their hosts, a length of `side` or a pitch. None:
    /// the lines of a body may not be what they were.
    [[nodiscard]] std::optional<MovedBodies> with(std::span<const RoofBody> bodies,
                                                  const std::optional<SideOfRoof>& side,
                                                  const std::optional<PitchChange>& pitch) const;

  private:
    struct Steady {
        SteadyClosing closing;
        SteadyLines lines;
        std::vector<Space> before;
        std::size_t first_place = 0;
    };
    /// A body by itself as it is now.
    struct Now {
        std::span<const MovingSide> sides;
        std::span<const Space> places;
        std::vector<MovingSide> moved_sides;
        std::vector<Space> moved_places;
    };
    /// As it was solved by itself.
    [[nodiscard]] std::vector<BodySide> solved_sides(const RoofBody& body, std::size_t index) const;
    [[nodiscard]] bool move(std::size_t body, std::vector<MovingSide> sides, Now& now) const;
    [[nodiscard]] BodyPlace place_of(std::span<const RoofBody> bodies, const BodyTie& tie,
                                     const std::vector<Now>& now,
                                     const std::vector<BodyPlace>& placed,
                                     std::vector<std::optional<EndlessPlane>>& hosts) const;
    [[nodiscard]] MovedBodies in_roof(const std::vector<Now>& now,
                                      const std::vector<BodyPlace>& placed) const;

    std::vector<RoofBody> before_;
    const PlacedBodies& placed_;
    std::vector<Steady> steady_;
    std::vector<std::size_t> tops_;  ///< by ties: of the lower body the place as high as the eave
};

}  // namespace hemline
