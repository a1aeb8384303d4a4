// The whole roof: what must be on before what, and what comes next on every edge.
//
//   eave ─▶ valley ─▶ panels ─▶ sidewall, headwall, transition, penetration
//        ─▶ gable ─▶ high eave ─▶ hip ─▶ ridge
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

/// The turn of a kind in the order of fitting, 0 for the eave. Kinds that share a turn do not wait
/// for each other (common practice, no published source).
int turn_of(EdgeKind kind);

/// Why the edge is not fitted yet: one sentence that names the edge that goes on before it. Past
/// the valleys every kind waits for all eaves and valleys, since the panels lie on them; and any
/// edge waits for the ones that its ends say it covers: a ridge that ends at a hip for the hips.
/// Which edge touches which is not recorded, so it counts all of that kind. Empty when nothing is
/// in the way. Readings and cuts never wait for it.
Text fitting_waits_for(const EdgeWork& work, const Job& job);

struct EdgeNext {
    std::string edge;
    EdgeStatus status = EdgeStatus::no_reading;
    Text what;       ///< one sentence: the next reading, cut or step
    Text waits_for;  ///< empty, or what goes on before it, or what the step itself waits for
};

/// What comes next on every edge that is not finished, those that can be worked on first, each part
/// in the order of fitting. An edge of a kind without a procedure says so.
std::vector<EdgeNext> whats_next(const Job& job, const Plan& plan, const Procedures& procedures,
                                 const Catalogue& catalogue);

}  // namespace hemline
