#include "engine/body/joined_bodies.h"

#include <cmath>

#include "engine/body/next_around.h"

namespace hemline {

namespace {

constexpr PlanVector in_plan(const Space& place) { return {place.x, place.y}; }

/// Without the corners at which it goes straight on.
std::vector<PlanVector> without_straight_on(const std::vector<PlanVector>& walk, double size) {
    std::vector<PlanVector> kept;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const PlanVector before = walk[(i + walk.size() - 1) % walk.size()];
        const PlanVector whole = walk[(i + 1) % walk.size()] - before;
        const double off = std::abs(turn(whole, walk[i] - before));
        if (off > 4 * overlay_hair * size * length_of(whole)) {
            kept.push_back(walk[i]);
        }
    }
    return kept;
}

double area_of(const std::vector<PlanVector>& walk) {
    double area = 0;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        area += turn(walk[i] - walk[0], walk[(i + 1) % walk.size()] - walk[0]) / 2;
    }
    return area;
}

std::vector<Course> courses_round(std::size_t plane, const Overlay& overlay) {
    std::vector<Course> courses;
    for (const OverlayPiece& piece : overlay.pieces) {
        if (piece.left == plane) {
            courses.push_back({piece.from, piece.to, 0});
        } else if (piece.right == plane) {
            courses.push_back({piece.to, piece.from, 0});
        }
    }
    return courses;
}

}  // namespace

JoinedBodies join_bodies(std::span<const PlacedBody> bodies) {
    JoinedBodies joined;
    std::vector<PlanLine> lines;
    for (const PlacedBody& body : bodies) {
        joined.planes.insert(joined.planes.end(), body.planes.begin(), body.planes.end());
        joined.edges.insert(joined.edges.end(), body.edges.begin(), body.edges.end());
        joined.open.insert(joined.open.end(), body.open.begin(), body.open.end());
    }
    for (const BodyEdge& edge : joined.edges) {
        lines.push_back({in_plan(edge.from), in_plan(edge.to)});
    }
    for (const OpenTop& top : joined.open) {
        lines.push_back({in_plan(top.from), in_plan(top.to)});
    }
    const auto take = [&](const std::optional<PlanLine>& line, const PlanesCross& planes) {
        if (line) {
            lines.push_back(*line);
            joined.crossings.push_back(planes);
        }
    };
    for (std::size_t i = 0; i < joined.planes.size(); ++i) {
        take(host_crossing_of(joined.planes[i]), {i, {}});
    }
    joined.host_crossings = joined.crossings.size();
    for (std::size_t i = 0; i < joined.planes.size(); ++i) {
        for (std::size_t k = 0; k < i && joined.planes[k].body != joined.planes[i].body; ++k) {
            take(crossing_of(joined.planes[k], joined.planes[i]), {k, i});
        }
    }
    joined.overlay = overlay_of(joined.planes, lines);
    return joined;
}

std::vector<BodyPlane> planes_of_roof(const JoinedBodies& joined) {
    std::vector<BodyPlane> planes;
    for (std::size_t i = 0; i < joined.planes.size(); ++i) {
        const PlacedPlane& plane = joined.planes[i];
        BodyPlane made;
        made.body = plane.body;
        made.side = plane.side;
        made.eaves = plane.eaves;
        for (const std::vector<Course>& around :
             walks_of(courses_round(i, joined.overlay), joined.overlay.places)) {
            std::vector<PlanVector> walk;
            for (const Course& course : around) {
                walk.push_back(joined.overlay.places[course.from]);
            }
            const double area = area_of(walk);
            made.plan_area += area;
            std::vector<Space> corners;
            for (const PlanVector corner : without_straight_on(walk, joined.overlay.size)) {
                corners.push_back({corner.x, corner.y, plane.height_over(corner)});
            }
            if (corners.size() >= 3) {
                (area > 0 ? made.pieces : made.holes).push_back(std::move(corners));
            }
        }
        made.deck_area = made.plan_area * std::hypot(1, plane.rise);
        if (!made.pieces.empty()) {
            planes.push_back(std::move(made));
        }
    }
    return planes;
}

}  // namespace hemline
