#include "engine/body/placed_body.h"

#include <set>

#include "engine/body/body_edges.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

Text names_of(std::span<const BodySide> sides, const std::vector<std::size_t>& which) {
    std::string names;
    for (const std::size_t side : std::set<std::size_t>(which.begin(), which.end())) {
        names += (names.empty() ? "" : ", ") + sides[side].id;
    }
    return Text(names);
}

std::vector<std::size_t> eaves_of(std::size_t plane, const InnerLines& lines) {
    std::vector<std::size_t> eaves;
    for (std::size_t i = 0; i < lines.plane_of.size(); ++i) {
        if (lines.plane_of[i] == plane) {
            eaves.push_back(i);
        }
    }
    return eaves;
}

Space in_space(const LinePlace& place) { return {place.at.x, place.at.y, place.height}; }

PlacedPlane placed_plane(const Plane& plane, const SolvedBody& body, const BodyPlace& place,
                         PlaceInRoof first) {
    PlacedPlane made;
    made.body = first.body;
    made.side = first.side + plane.side;
    for (const std::size_t eave : eaves_of(plane.side, body.lines)) {
        made.eaves.push_back(first.side + eave);
    }
    static_cast<EndlessPlane&>(made) = endless_plane(body.sides[plane.side], place);
    made.along = place.turned(line_of(body.sides[plane.side]).along);
    for (const std::vector<std::size_t>& piece : plane.pieces) {
        made.pieces.emplace_back();
        for (const std::size_t corner : piece) {
            made.pieces.back().push_back(place.in_roof(body.lines.places[corner].at));
        }
    }
    made.box = {made.pieces.front().front(), made.pieces.front().front()};
    for (const std::vector<PlanVector>& piece : made.pieces) {
        for (const PlanVector corner : piece) {
            made.box.take(corner);
        }
    }
    return made;
}

}  // namespace

bool lies_along(PlanVector from, PlanVector to, PlanVector place, double near) {
    PlanBox box = {from, from};
    box.take(to);
    const PlanVector whole = to - from;
    return box.holds(place, near) && std::abs(turn(whole, place - from)) < near * length_of(whole);
}

EndlessPlane endless_plane(const MovingSide& eave, const BodyPlace& place) {
    const MovingLine line = line_of(eave);
    EndlessPlane made;
    made.inside = place.turned(line.inside);
    made.begin = dot(place.in_roof(eave.from), made.inside);
    made.rise = 1 / line.inward;
    made.eave = place.height;
    return made;
}

bool PlacedPlane::holds(PlanVector p) const {
    bool inside_it = false;
    for (const std::vector<PlanVector>& piece : pieces) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const PlanVector a = piece[i], b = piece[(i + 1) % piece.size()];
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) {
                inside_it = !inside_it;
            }
        }
    }
    return inside_it;
}

std::vector<MovingSide> with_change(std::span<const BodySide> said, std::vector<MovingSide> sides,
                                    const std::optional<PitchChange>& change) {
    for (std::size_t i = 0; i < said.size() && change; ++i) {
        if (sides[i].inward > 0 && said[i].pitch == change->pitch) {
            sides[i].inward = 1 / std::tan(radians_of(change->degrees));
        }
    }
    return sides;
}

Result<SolvedBody> solve_body(std::span<const BodySide> sides, const ClosedSides& closed,
                              const std::optional<PitchChange>& change) {
    SolvedBody body;
    body.sides = with_change(sides, closed.sides, change);
    body.lines = trace_inner_lines(body.sides);
    if (!body.lines.stuck.empty()) {
        return Problem{
            say("These sides do not make a roof: {1}.", names_of(sides, body.lines.stuck)),
            say("Look at their kinds and pitches: a roof must close above them.")};
    }
    Result<std::vector<BodyEdge>> edges = edges_of_body(sides, body.sides, body.lines);
    if (!edges) {
        return edges.problem();
    }
    body.edges = *std::move(edges);
    return body;
}

std::vector<LaidSide> walk_in_space(const SolvedBody& body) {
    std::vector<LaidSide> walk;
    for (const MovingSide& side : body.sides) {
        walk.push_back({{side.from.x, side.from.y, 0}, {side.to.x, side.to.y, 0}});
    }
    return walk;
}

std::vector<BodyPlane> planes_in_space(const SolvedBody& body) {
    std::vector<BodyPlane> planes;
    for (const Plane& plane : planes_of(body.sides, body.lines)) {
        BodyPlane made;
        made.side = plane.side;
        made.eaves = eaves_of(plane.side, body.lines);
        for (const std::vector<std::size_t>& piece : plane.pieces) {
            made.pieces.emplace_back();
            for (const std::size_t place : piece) {
                made.pieces.back().push_back(in_space(body.lines.places[place]));
            }
        }
        made.plan_area = area_of(plane, body.lines);
        made.deck_area = made.plan_area * std::hypot(1, 1 / body.sides[plane.side].inward);
        if (!made.pieces.empty()) {
            planes.push_back(std::move(made));
        }
    }
    return planes;
}

PlacedBody placed(std::span<const BodySide> sides, const SolvedBody& body, const BodyPlace& place,
                  PlaceInRoof first) {
    PlacedBody made;
    for (const LaidSide& side : walk_in_space(body)) {
        made.walk.push_back({place.in_roof(side.from), place.in_roof(side.to)});
    }
    for (const Plane& plane : planes_of(body.sides, body.lines)) {
        if (!plane.pieces.empty()) {  // of an eave by a hair, nothing is left
            made.planes.push_back(placed_plane(plane, body, place, first));
        }
    }
    for (BodyEdge edge : body.edges) {
        for (std::size_t& side : edge.sides) {
            side += first.side;
        }
        for (std::size_t& plane : edge.planes) {
            plane += first.side;
        }
        edge.from = place.in_roof(edge.from);
        edge.to = place.in_roof(edge.to);
        made.edges.push_back(std::move(edge));
    }
    for (const InnerLine& line : body.lines.lines) {
        for (const std::size_t side : {line.left, line.right}) {
            const std::size_t other = side == line.left ? line.right : line.left;
            if (sides[side].kind == SideKind::open && body.sides[other].inward > 0) {
                made.open.push_back({first.side + side,
                                     place.in_roof(in_space(body.lines.places[line.from])),
                                     place.in_roof(in_space(body.lines.places[line.to]))});
            }
        }
    }
    return made;
}

}  // namespace hemline
