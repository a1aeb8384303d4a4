// What is said of an edge, one thing at a time: what to ask for its kind and ends, and what may no
// longer change once metal is cut for it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/result_declared.h"

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

/// The fields of an edge of that kind with those ends, in the order they are asked.
std::vector<EdgeField> fields_of(const Edge& edge, const Catalogue& catalogue);

/// The trim, by name, of a new edge of the kind: where the catalogue has trims under the panels and
/// over them the first over them (common practice, no published source). Empty: the first of the
/// kind, as of an edge that names none.
std::string usual_trim(EdgeKind kind, const Catalogue& catalogue);

/// The edge changed to that kind, with its usual trim: fields it cannot have are reset.
Edge made_to(Edge edge, EdgeKind kind, const Catalogue& catalogue);
/// The edge with another end; an angle stated for the old end is dropped.
Edge with_end(Edge edge, Side side, End end);

/// The trims in the catalogue that fit the edge, the first of its kind first.
std::vector<const Trim*> trims_for(EdgeKind kind, const Catalogue& catalogue);

/// What is wrong with that plan angle inside the building there; none: nothing. A wall or an open
/// end of an eave or gable may have any angle: it closes the outline.
std::optional<Problem> check_corner(const Edge& edge, Side side, Angle angle);

/// Why the field may not change: a sentence that names the piece cut for it. Empty: it may. An end
/// is fixed once the piece at that end is cut, anything else once any piece is cut.
Text held_by_metal(const EdgeWork& work, const Plan& plan, EdgeField field);
/// The same for its lap: a piece of trim or wrap that laps a neighbor is cut, notched and sealed
/// for that lap.
Text lap_held_by_metal(const EdgeWork& work, const Plan& plan);

}  // namespace hemline
