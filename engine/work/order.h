// The whole roof: what must be on before what, and what comes next on every edge.
//
//   under the panels                              over the panels
//   eave ─▶ valley ─▶ sidewall ─▶ gable ─▶ panels ─▶ sidewall, headwall, transition, penetration
//                                                 ─▶ gable ─▶ high eave ─▶ hip ─▶ ridge
//   A trim says in the catalogue where it lies: a kind of edge may have one of each.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/work/procedure.h"

namespace hemline {

struct EdgeWork;
struct Job;
struct Plan;

using Procedures = std::map<EdgeKind, std::vector<StepRule>>;

/// The turn of a kind in the order of fitting, 0 for the eave; what lies over the panels comes
/// after all that lies under them. Kinds that share a turn do not wait for each other (common
/// practice, no published source).
int turn_of(EdgeKind kind, Panels panels);
/// The same of an edge with its trim. A penetration has no trim: it stands on the panels.
int turn_of(const Edge& edge, const Catalogue& catalogue);

/// Why the edge cannot be fitted yet: a sentence that names the edge that goes on before it. What
/// goes over the panels waits for all that lies under them; and any edge waits for the edges that
/// its ends cover: a ridge that ends at a hip waits for the hips. A dormer's headwall and sidewalls
/// wait by the corners at their ends (wall_corners.h). Which edge touches which is not
/// recorded, so it waits for all edges of that kind. Empty when nothing is in the way. Readings and
/// cuts never wait for it.
Text fitting_waits_for(const EdgeWork& work, const Job& job, const Catalogue& catalogue);

struct EdgeNext {
    std::string edge;
    EdgeStatus status = EdgeStatus::no_reading;
    Text what;       ///< a sentence: the next reading, cut or step
    Text waits_for;  ///< empty, or what goes on before it, or what the step waits for
};

/// What comes next on every edge that is not finished: first the edges that can be worked on, then
/// the others, both in the order of fitting. An edge of a kind without a procedure says so.
std::vector<EdgeNext> whats_next(const Job& job, const Plan& plan, const Procedures& procedures,
                                 const Catalogue& catalogue);

}  // namespace hemline
