#include "engine/work/roof_solid.h"

#include <algorithm>
#include <optional>

#include "engine/measure/slope.h"
#include "engine/work/holed_plane.h"

namespace hemline {

namespace {

constexpr double nm_a_mm = 20e6;         // 1:20
constexpr double wall_mm = 2400 / 20.0;  // drawn under the eaves; nobody measured it
constexpr double apart = 0.25;           // of a roof's width, between it and the next
constexpr std::size_t plane_leg = 0, wall_leg = 1;

constexpr double touching = 0.01;  // mm

Space scaled(const Space& nm) { return nm * (1 / nm_a_mm); }
Space in_plan(const Space& at) { return {at.x, at.y, 0}; }

std::vector<Space> all_scaled(const std::vector<Space>& walk) {
    std::vector<Space> made;
    made.reserve(walk.size());
    for (const Space& corner : walk) {
        made.push_back(scaled(corner));
    }
    return made;
}

bool is_in_plan(const std::vector<Space>& walk, const Space& at) {
    bool in = false;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const Space &a = walk[i], &b = walk[(i + 1) % walk.size()];
        if ((a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x)) {
            in = !in;
        }
    }
    return in;
}

class OneRoof {
  public:
    explicit OneRoof(const BodyOnJob& roof) : roof_(roof) {
        ground_ = roof.worked->walk.front().from.z;
        for (const LaidSide& side : roof.worked->walk) {
            ground_ = std::min(ground_, side.from.z);
        }
        ground_ = ground_ / nm_a_mm - wall_mm;
        for (const BodyPlane& plane : roof.worked->planes) {
            add_plane(plane);
        }
        for (std::size_t side = 0; side < roof.sides.size(); ++side) {
            add_wall(side);
        }
    }
    std::vector<Facet> facets;

  private:
    void add(const std::vector<Facet>& made) {
        facets.insert(facets.end(), made.begin(), made.end());
    }

    void add_plane(const BodyPlane& plane) {
        for (const std::vector<Space>& piece : plane.pieces) {
            std::vector<std::vector<Space>> holes;
            for (const std::vector<Space>& hole : plane.holes) {
                if (plane.pieces.size() == 1 || is_in_plan(piece, hole.front())) {
                    holes.push_back(all_scaled(hole));
                }
            }
            add(plane_facets(all_scaled(piece), holes, plane_leg));
        }
    }

    /// From the ground, or the roof that the body stands on, up to the roof's edges there: an eave,
    /// or the slopes of a gable's end.
    void add_wall(std::size_t side) {
        std::vector<Space> tops = tops_along(side);
        if (tops.empty()) {
            return;
        }
        const auto farther = [](const Space& from) {
            return [from](const Space& a, const Space& b) {
                return length_of(in_plan(a) - in_plan(from)) <
                       length_of(in_plan(b) - in_plan(from));
            };
        };
        const Space last = *std::max_element(tops.begin(), tops.end(), farther(tops.front()));
        const Space first = *std::max_element(tops.begin(), tops.end(), farther(last));
        std::stable_sort(tops.begin(), tops.end(), farther(last));
        std::vector<Space> corners = feet(side, first, last);
        for (const Space& top : tops) {
            if (length_of(top - corners.back()) > 1 && length_of(top - corners.front()) > 1) {
                corners.push_back(top);
            }
        }
        if (corners.size() > 2) {
            add(plane_facets(corners, wall_leg));
        }
    }

    [[nodiscard]] std::vector<Space> tops_along(std::size_t side) const {
        std::vector<Space> tops;
        for (const BodyEdge& edge : roof_.worked->edges) {
            // What it stands on is its foot.
            const bool is_own = &body_with(roof_, edge.planes.front()) == &body_with(roof_, side);
            const bool here =
                is_own &&
                std::find(edge.sides.begin(), edge.sides.end(), side) != edge.sides.end() &&
                (edge.sides.size() == 1 || is_upright(roof_.sides[side]));
            if (here) {
                tops.push_back(scaled(edge.from));
                tops.push_back(scaled(edge.to));
            }
        }
        return tops;
    }

    /// The wall's foot, from one end to the other.
    [[nodiscard]] std::vector<Space> feet(std::size_t side, const Space& first,
                                          const Space& last) const {
        const auto host = host_of(side);
        const auto over = [&](const Space& at) { return host ? host->in_from_eave(at) : -1; };
        const auto foot = [&](const Space& at) {
            return Space{at.x, at.y,
                         over(at) > -touching ? std::min(at.z, host->height_over(at)) : ground_};
        };
        std::vector<Space> corners = {foot(first)};
        const double begins = over(first), ends = over(last);
        if (std::min(begins, ends) < -touching && std::max(begins, ends) > touching) {
            const Space at = first + (last - first) * (begins / (begins - ends));
            const Space low = {at.x, at.y, ground_}, high = {at.x, at.y, host->eave};
            corners.push_back(begins < 0 ? low : high);
            corners.push_back(begins < 0 ? high : low);
        }
        corners.push_back(foot(last));
        return corners;
    }

    /// The plane that a body runs into or stands on, in mm.
    struct HostPlane {
        Space begins, inside;
        double rise = 0, eave = 0;
        [[nodiscard]] double in_from_eave(const Space& at) const {
            return (at.x - begins.x) * inside.x + (at.y - begins.y) * inside.y;
        }
        [[nodiscard]] double height_over(const Space& at) const {
            return eave + rise * in_from_eave(at);
        }
    };
    [[nodiscard]] std::optional<HostPlane> host_of(std::size_t side) const {
        const std::optional<HostSaid>& said = body_with(roof_, side).host;
        for (std::size_t i = 0; said && i < roof_.sides.size(); ++i) {
            if (roof_.sides[i].id == said->eave && roof_.sides[i].pitch) {
                const LaidSide& eave = roof_.worked->walk[i];
                const Space way = unit(in_plan(eave.to - eave.from));
                return HostPlane{scaled(eave.from),
                                 {-way.y, way.x, 0},
                                 rise_in_12_of(*roof_.sides[i].pitch) / 12,
                                 eave.from.z / nm_a_mm};
            }
        }
        return {};
    }

    const BodyOnJob& roof_;
    double ground_ = 0;
};

std::pair<double, double> width_of(const std::vector<Facet>& facets) {
    double low = 1e9, high = -1e9;
    for (const Facet& facet : facets) {
        for (const Space& corner : facet.corners) {
            low = std::min(low, corner.x);
            high = std::max(high, corner.x);
        }
    }
    return {low, high};
}

}  // namespace

std::vector<Facet> roof_solid(std::span<const BodyOnJob> bodies) {
    std::vector<Facet> all;
    double next = 0;
    for (const BodyOnJob& body : bodies) {
        if (!body.worked) {
            continue;
        }
        std::vector<Facet> own = OneRoof(body).facets;
        const auto [low, high] = width_of(own);
        for (Facet& facet : own) {
            for (Space& corner : facet.corners) {
                corner.x += next - low;
            }
        }
        next += (high - low) * (1 + apart);
        all.insert(all.end(), own.begin(), own.end());
    }
    return all;
}

}  // namespace hemline
