// A body worked out and put where it lies on the roof.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "engine/body/body.h"

namespace hemline {

/// A pitch taken otherwise than read, to see what that changes.
struct PitchChange {
    Slope pitch;
    double degrees = 0;
};

/// The sides with that pitch changed.
std::vector<MovingSide> with_change(std::span<const BodySide> said, std::vector<MovingSide> sides,
                                    const std::optional<PitchChange>& change);

struct SolvedBody {
    std::vector<MovingSide> sides;
    InnerLines lines;
    std::vector<BodyEdge> edges;  ///< without names and without how far they may be off
};

/// Problem: as work_out_body().
Result<SolvedBody> solve_body(std::span<const BodySide> sides, const ClosedSides& closed,
                              const std::optional<PitchChange>& change = {});

/// The planes and the walk of a body that stands alone.
std::vector<LaidSide> walk_in_space(const SolvedBody& body);
std::vector<BodyPlane> planes_in_space(const SolvedBody& body);

/// Where a body's own plan and height lie in the roof's.
struct BodyPlace {
    PlanVector at, along = {1, 0};
    double height = 0;

    [[nodiscard]] PlanVector turned(PlanVector way) const {
        return along * way.x + PlanVector{-along.y, along.x} * way.y;
    }
    [[nodiscard]] PlanVector in_roof(PlanVector place) const { return at + turned(place); }
    [[nodiscard]] Space in_roof(const Space& place) const {
        const PlanVector plan = in_roof(PlanVector{place.x, place.y});
        return {plan.x, plan.y, height + place.z};
    }
};

/// A rectangle in plan.
struct PlanBox {
    PlanVector least, most;

    void take(PlanVector p) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
    [[nodiscard]] double across() const { return length_of(most - least); }
    /// Within `near` of it.
    [[nodiscard]] bool holds(PlanVector p, double near) const {
        return p.x > least.x - near && p.x < most.x + near && p.y > least.y - near &&
               p.y < most.y + near;
    }
    [[nodiscard]] bool reaches(const PlanBox& other, double near) const {
        return least.x < other.most.x + near && other.least.x < most.x + near &&
               least.y < other.most.y + near && other.least.y < most.y + near;
    }
};

/// Whether it lies on the stretch.
bool lies_along(PlanVector from, PlanVector to, PlanVector place, double near);

/// A plane without an end: as high as `eave` along its eave's line, where dot(p, inside) = begin.
struct EndlessPlane {
    PlanVector inside;
    double begin = 0, rise = 0, eave = 0;

    [[nodiscard]] double in_from_eave(PlanVector p) const { return dot(p, inside) - begin; }
    [[nodiscard]] double height_over(PlanVector p) const { return eave + rise * in_from_eave(p); }
};

/// Of an eave that lies there.
EndlessPlane endless_plane(const MovingSide& eave, const BodyPlace& place);

struct PlacedPlane : EndlessPlane {
    std::size_t body = 0, side = 0;  ///< its first side, of all sides of the roof
    std::vector<std::size_t> eaves;
    PlanVector along;
    std::vector<std::vector<PlanVector>> pieces;
    PlanBox box;                       ///< round all of them
    std::optional<EndlessPlane> host;  ///< into which it runs, and under which it ends

    [[nodiscard]] bool holds(PlanVector p) const;
    [[nodiscard]] bool is_under_host(PlanVector p) const {
        return host && host->in_from_eave(p) > 0 && height_over(p) <= host->height_over(p);
    }
};

/// A plane's top at a side that is open.
struct OpenTop {
    std::size_t side = 0;
    Space from, to;
};

struct PlacedBody {
    std::vector<LaidSide> walk;
    std::vector<PlacedPlane> planes;
    std::vector<BodyEdge> edges;  ///< sides and planes counted through all bodies of the roof
    std::vector<OpenTop> open;
};

/// Of all bodies and sides of the roof: which body it is, and its first side.
struct PlaceInRoof {
    std::size_t body = 0, side = 0;
};
PlacedBody placed(std::span<const BodySide> sides, const SolvedBody& body, const BodyPlace& place,
                  PlaceInRoof first);

}  // namespace hemline
