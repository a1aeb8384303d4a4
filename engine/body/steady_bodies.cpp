#include "engine/body/steady_bodies.h"

#include <algorithm>
#include <cmath>

#include "engine/body/stretches.h"

namespace hemline {

namespace {

/// The highest place of those along a side: where the roof comes up to a transition.
std::size_t top_along(std::size_t side, const InnerLines& lines) {
    std::size_t top = 0;
    for (const InnerLine& line : lines.lines) {
        if (line.left == side || line.right == side) {
            for (const std::size_t place : {line.from, line.to}) {
                top = lines.places[place].height > lines.places[top].height ? place : top;
            }
        }
    }
    return top;
}

}  // namespace

SteadyBodies::SteadyBodies(std::span<const RoofBody> bodies, const PlacedBodies& placed, Tape tape)
    : before_(bodies.begin(), bodies.end()), placed_(placed) {
    std::size_t place = 0;
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        const RunIn& lain = placed.lain[i];
        steady_.push_back({SteadyClosing(solved_sides(bodies[i], i), tape),
                           SteadyLines(lain.body.sides, lain.body.lines),
                           places_of(lain.body.lines), place});
        place += lain.body.lines.places.size();
    }
    for (const BodyTie& tie : placed.ties) {
        tops_.push_back(
            tie.how == BodyTie::How::transition ? top_along(tie.low.side, lines(tie.low.body)) : 0);
    }
}

std::optional<MovedBodies> SteadyBodies::as_it_is() const { return with(before_, {}, {}); }

std::vector<BodySide> SteadyBodies::solved_sides(const RoofBody& body, std::size_t index) const {
    const std::optional<double>& longer = placed_.lain[index].longer;
    return longer ? lengthened(body.sides, *longer) : body.sides;
}

bool SteadyBodies::move(std::size_t body, std::vector<MovingSide> sides, Now& now) const {
    std::optional<std::vector<Space>> places = steady_[body].lines.places_with(sides);
    if (!places) {
        return false;
    }
    now.moved_sides = std::move(sides);
    now.moved_places = *std::move(places);
    now.sides = now.moved_sides;
    now.places = now.moved_places;
    return true;
}

std::optional<MovedBodies> SteadyBodies::with(std::span<const RoofBody> bodies,
                                              const std::optional<SideOfRoof>& side,
                                              const std::optional<PitchChange>& pitch) const {
    std::vector<Now> now(bodies.size());
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        const std::vector<BodySide>& said = bodies[i].sides;
        now[i].sides = placed_.lain[i].body.sides;
        now[i].places = steady_[i].before;
        if (side && side->body == i) {
            auto sides =
                steady_[i].closing.with(side->side, *solved_sides(bodies[i], i)[side->side].length);
            if (!sides || !move(i, *std::move(sides), now[i])) {
                return {};
            }
        }
        const bool tilts = pitch && std::any_of(said.begin(), said.end(), [&](const BodySide& one) {
                               return one.pitch == pitch->pitch;
                           });
        if (tilts && !move(i, with_change(said, placed_.lain[i].body.sides, pitch), now[i])) {
            return {};
        }
    }
    std::vector<BodyPlace> placed(bodies.size());
    std::vector<std::optional<EndlessPlane>> hosts(bodies.size());
    for (const BodyTie& tie : placed_.ties) {
        placed[tie.body] = place_of(bodies, tie, now, placed, hosts);
    }
    const BodyPlace back = turned_back(placed[0]);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        placed[i] = one_in_other(back, placed[i]);
        hosts[i] = hosts[i] ? std::optional(seen_from(back, *hosts[i])) : std::nullopt;
    }
    MovedBodies made = in_roof(now, placed);
    made.host = std::move(hosts);
    return made;
}

BodyPlace SteadyBodies::place_of(std::span<const RoofBody> bodies, const BodyTie& tie,
                                 const std::vector<Now>& now, const std::vector<BodyPlace>& placed,
                                 std::vector<std::optional<EndlessPlane>>& hosts) const {
    const auto alone = [&](std::size_t body) {
        return BodyAlone{bodies[body].sides, now[body].sides, lines(body), now[body].places};
    };
    const std::size_t low = tie.low.body, up = tie.eave.body;
    switch (tie.how) {
        case BodyTie::How::stands:
            break;
        case BodyTie::How::runs_in: {
            const HostPlane host = host_plane_of(alone(up), tie.eave.side, placed[up], hosts[up]);
            hosts[tie.body] = host;
            return place_running_in(alone(tie.body), *bodies[tie.body].host, host);
        }
        case BodyTie::How::transition: {
            const std::size_t top = tops_[static_cast<std::size_t>(&tie - placed_.ties.data())];
            const BodyPlace under =
                place_under_eave(bodies[low], now[low].sides, tie.low.side, now[low].places[top].z,
                                 now[up].sides[tie.eave.side]);
            return tie.body == low ? one_in_other(placed[up], under)
                                   : one_in_other(placed[low], turned_back(under));
        }
    }
    return placed_.lain[tie.body].place;
}

MovedBodies SteadyBodies::in_roof(const std::vector<Now>& now,
                                  const std::vector<BodyPlace>& placed) const {
    MovedBodies made;
    for (std::size_t i = 0; i < now.size(); ++i) {
        for (const Space& place : now[i].places) {
            made.places.push_back(placed[i].in_roof(place));
        }
        for (const MovingSide& side : now[i].sides) {
            made.planes.push_back(side.inward > 0 ? endless_plane(side, placed[i])
                                                  : EndlessPlane());
        }
    }
    return made;
}

}  // namespace hemline
