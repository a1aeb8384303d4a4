#include "engine/body/worked_roof.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// A body that stands alone needs no placing.
Result<WorkedRoof> alone(const RoofBody& body, Tape tape, WalkThatIsOpen open,
                         const std::optional<PitchChange>& change) {
    const Result<ClosedSides> closed = close_sides(body.sides, tape);
    if (!closed) {
        return closed.problem();
    }
    WorkedRoof made;
    made.closes = closed->closes || open == WalkThatIsOpen::is_forced;
    made.miss = closed->miss;
    if (!made.closes) {
        return made;
    }
    Result<SolvedBody> solved = solve_body(body.sides, *closed, change);
    if (!solved) {
        return solved.problem();
    }
    made.walk = walk_in_space(*solved);
    made.edges = solved->edges;
    made.alone = *std::move(solved);
    return made;
}

}  // namespace

Result<WorkedRoof> work_out(std::span<const RoofBody> bodies, Tape tape, WalkThatIsOpen open,
                            const std::optional<PitchChange>& change) {
    if (bodies.size() == 1 && !bodies[0].host) {
        return alone(bodies[0], tape, open, change);
    }
    Result<PlacedBodies> placed = place_bodies(bodies, tape, open, change);
    if (!placed) {
        return placed.problem();
    }
    WorkedRoof made;
    made.closes = placed->closes;
    made.miss = placed->miss;
    if (!made.closes) {
        return made;
    }
    for (const PlacedBody& body : placed->bodies) {
        made.walk.insert(made.walk.end(), body.walk.begin(), body.walk.end());
    }
    made.joined = join_bodies(placed->bodies);
    Result<std::vector<BodyEdge>> edges = edges_of_roof(*made.joined, bodies);
    if (!edges) {
        return edges.problem();
    }
    made.edges = *std::move(edges);
    made.placed = *std::move(placed);
    return made;
}

}  // namespace hemline
