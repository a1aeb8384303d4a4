#include "engine/body/past_host.h"

#include <algorithm>

#include "engine/body/body_ties.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// Along the line of the host's eave, from its left end.
using Stretch = std::pair<double, double>;

class PastHost {
  public:
    PastHost(const JoinedBodies& joined, std::span<const RoofBody> bodies, const PlacedPlane& plane)
        : joined_(joined), plane_(plane), host_(*plane.host) {
        const SideOfRoof eave = *eave_named(bodies, bodies[plane.body].host->eave);
        for (const PlacedPlane& other : joined.planes) {
            if (other.body == eave.body && is_above(other, side_of(bodies, eave))) {
                host_plane_ = &other;
            }
        }
    }

    /// Where it is lower than the eave and no eave of the host's plane lies, somewhere along it.
    [[nodiscard]] std::optional<double> somewhere() const {
        if (!host_plane_) {
            return {};  // of an eave by a hair
        }
        std::vector<double> cuts = {along(plane_.box.least), along(plane_.box.most)};
        const PlanVector other_corner = {plane_.box.least.x, plane_.box.most.y};
        cuts.push_back(along(other_corner));
        cuts.push_back(along(plane_.box.least + plane_.box.most - other_corner));
        for (const Stretch& eave : eaves()) {
            cuts.push_back(eave.first);
            cuts.push_back(eave.second);
        }
        take_crossings(cuts);
        std::sort(cuts.begin(), cuts.end());
        for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
            const double middle = (cuts[i] + cuts[i + 1]) / 2;
            if (cuts[i + 1] - cuts[i] > 8 * beside() && hangs_at(middle)) {
                return middle;
            }
        }
        return {};
    }

    /// As the walk goes: before the host's eaves, or after them.
    [[nodiscard]] bool is_before(double place) const {
        const std::vector<Stretch> all = eaves();
        return std::all_of(all.begin(), all.end(),
                           [&](const Stretch& eave) { return place < eave.first; });
    }
    [[nodiscard]] const std::vector<std::size_t>& host_eaves() const { return host_plane_->eaves; }

  private:
    static std::size_t side_of(std::span<const RoofBody> bodies, SideOfRoof which) {
        for (std::size_t body = 0; body < which.body; ++body) {
            which.side += bodies[body].sides.size();
        }
        return which.side;
    }
    static bool is_above(const PlacedPlane& plane, std::size_t eave) {
        return std::find(plane.eaves.begin(), plane.eaves.end(), eave) != plane.eaves.end();
    }

    [[nodiscard]] double beside() const { return 1e-6 * joined_.overlay.size; }
    [[nodiscard]] double along(PlanVector place) const { return dot(place, host_plane_->along); }
    /// On the eave's line.
    [[nodiscard]] PlanVector at(double along) const {
        return host_.inside * host_.begin + host_plane_->along * along;
    }

    [[nodiscard]] std::vector<Stretch> eaves() const {
        std::vector<Stretch> stretches;
        for (const BodyEdge& edge : joined_.edges) {
            if (edge.sides.size() == 1 && is_above(*host_plane_, edge.sides[0])) {
                stretches.emplace_back(
                    std::minmax(along({edge.from.x, edge.from.y}), along({edge.to.x, edge.to.y})));
            }
        }
        return stretches;
    }

    /// Where the plane's outline crosses the eave's line, and where it is as high as the eave.
    void take_crossings(std::vector<double>& cuts) const {
        for (const std::vector<PlanVector>& piece : plane_.pieces) {
            for (std::size_t i = 0; i < piece.size(); ++i) {
                const PlanVector a = piece[i], b = piece[(i + 1) % piece.size()];
                const double in_a = host_.in_from_eave(a), in_b = host_.in_from_eave(b);
                if ((in_a > 0) != (in_b > 0)) {
                    cuts.push_back(along(a + (b - a) * (in_a / (in_a - in_b))));
                }
            }
        }
        const double rises = plane_.rise * dot(plane_.inside, host_plane_->along);
        if (std::abs(rises) > 1e-9) {
            cuts.push_back((host_.eave - plane_.height_over(at(0))) / rises);
        }
    }

    [[nodiscard]] bool hangs_at(double place) const {
        const std::vector<Stretch> all = eaves();
        const PlanVector outside = at(place) - host_.inside * beside();
        const PlanVector inside = at(place) + host_.inside * beside();
        return std::none_of(all.begin(), all.end(),
                            [&](const Stretch& eave) {
                                return place > eave.first - beside() &&
                                       place < eave.second + beside();
                            }) &&
               plane_.holds(inside) && plane_.height_over(at(place)) < host_.eave - beside() &&
               plane_seen_at(joined_.planes, outside, joined_.overlay.size) ==
                   static_cast<std::size_t>(&plane_ - joined_.planes.data());
    }

    const JoinedBodies& joined_;
    const PlacedPlane& plane_;
    const EndlessPlane& host_;
    const PlacedPlane* host_plane_ = nullptr;
};

/// The host's side beside its eaves there.
std::string side_there(const PastHost& hanging, bool before, std::span<const RoofBody> bodies,
                       std::size_t body) {
    const SideOfRoof eave = *eave_named(bodies, bodies[body].host->eave);
    const std::vector<BodySide>& sides = bodies[eave.body].sides;
    const std::size_t n = sides.size(), step = before ? n - 1 : 1;
    std::size_t first = 0;
    for (std::size_t i = 0; i < eave.body; ++i) {
        first += bodies[i].sides.size();
    }
    std::size_t side = eave.side;
    do {
        side = (side + step) % n;
    } while (side != eave.side &&
             std::find(hanging.host_eaves().begin(), hanging.host_eaves().end(), first + side) !=
                 hanging.host_eaves().end());
    return sides[side].id;
}

}  // namespace

std::optional<Problem> past_host(const JoinedBodies& joined, std::span<const RoofBody> bodies) {
    for (const PlacedPlane& plane : joined.planes) {
        if (!plane.host) {
            continue;
        }
        const PastHost hanging(joined, bodies, plane);
        if (const std::optional<double> place = hanging.somewhere()) {
            return Problem{
                say("Body {1} hangs past side {2}, where the roof above {3} ends, into which it "
                    "runs.",
                    bodies[plane.body].name,
                    side_there(hanging, hanging.is_before(*place), bodies, plane.body),
                    bodies[plane.body].host->eave),
                say("Look at how far along it lies, and at its width.")};
        }
    }
    return {};
}

}  // namespace hemline
