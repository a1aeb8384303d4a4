// Says from which side the wind has an edge fitted, and of which edge its bearing is not known.
#include "engine/measure/bearing.h"
#include "engine/plan/plan_parts.h"
#include "engine/record/wind.h"
#include "engine/roof/edge_shape.h"

namespace hemline {

void judge_wind(const Job& job, Plan& plan) {
    const Site& site = job.practice.site;
    if (!site.wind_from) {
        return;
    }
    const auto bearings = bearings_of(job);
    const auto sides = sides_by_wind(job);
    for (const EdgeWork& work : job.edges) {
        const Edge& edge = work.edge;
        if (is_sloped(edge.kind) || !has_run(edge.kind)) {
            continue;
        }
        const auto side = sides.find(edge.id);
        if (side != sides.end() && side->second == edge.first) {
            plan.problems.push_back(
                {edge.id, "first", Severity::note,
                 say("Fitted from the {1}: the wind comes from {2}, and its laps look away from "
                     "it.",
                     spoken(edge.first), print_bearing(*site.wind_from)),
                 say("Choose another side on the edge's page if this is wrong.")});
        } else if (bearings.count(edge.id) == 0) {
            plan.problems.push_back(
                {edge.id, "first", Severity::note,
                 say("The wind is said, and not which way {1} runs: it is fitted from the {2} as "
                     "before.",
                     edge.id, spoken(edge.first)),
                 say("Say its bearing among the rules, left end to right end.")});
        }
    }
}

}  // namespace hemline
