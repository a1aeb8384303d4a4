// What is said of an edge, one thing at a time: what its kind and ends can be asked, and what may
// no longer change once metal is cut for it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/result.h"

namespace hemline {

struct EdgeWork;
struct Job;
struct Plan;

enum class EdgeField : std::uint8_t {
    name,
    kind,
    left,
    right,
    corner_left,
    corner_right,
    first,
    wrap,
    trim,
    fascia,
    other_pitch,
    seam,
};

/// What an edge of that kind with those ends has to say, in the order it is asked.
std::vector<EdgeField> fields_of(const Edge& edge, const Catalogue& catalogue);

/// The edge as one of that kind: what it cannot have is as nobody had said anything.
Edge made_to(Edge edge, EdgeKind kind, const Catalogue& catalogue);
/// With another end; an angle that was stated of the old one goes.
Edge with_end(Edge edge, Side side, End end);

/// The edge's own trims in the catalogue, its kind's default first.
std::vector<const Trim*> trims_for(EdgeKind kind, const Catalogue& catalogue);

/// What is wrong with that plan angle inside the building there; none: it can stand. A wall or an
/// open end of an eave or gable may have any: it closes the outline.
std::optional<Problem> check_corner(const Edge& edge, Side side, Angle angle);

/// Why the field may not change: one sentence that names the piece cut for it. Empty: it may. An
/// end is held by the piece that carries it, all else by any piece.
Text held_by_metal(const EdgeWork& work, const Plan& plan, EdgeField field);
/// The same of its lap: what is cut to lap a neighbour, trim or wrap, is cut, notched and beaded
/// for that lap.
Text lap_held_by_metal(const EdgeWork& work, const Plan& plan);

}  // namespace hemline
