// The joint plan that comes first by preference, and the few that are worth choosing from.
#include <algorithm>
#include <tuple>

#include "engine/joint/joint_search.h"

namespace hemline {

namespace {

std::tuple<std::int64_t, std::int64_t, std::int64_t> order_of(const JointPlan& plan,
                                                              Prefer prefer) {
    switch (prefer) {
        case Prefer::looks:
            break;
        case Prefer::laps:
            return {plan.extra_laps, plan.unbalanced, plan.sticks};
        case Prefer::sticks:
            return {plan.sticks, plan.extra_laps, plan.unbalanced};
    }
    return {plan.unbalanced, plan.extra_laps, plan.sticks};
}

}  // namespace

const JointPlan* first_choice(const std::vector<JointPlan>& among, Prefer prefer) {
    const auto first =
        std::min_element(among.begin(), among.end(), [&](const JointPlan& a, const JointPlan& b) {
            return std::make_tuple(a.cutting.missing.size(), order_of(a, prefer)) <
                   std::make_tuple(b.cutting.missing.size(), order_of(b, prefer));
        });
    return first == among.end() ? nullptr : &*first;
}

std::vector<JointPlan> choices(const JointJob& job, Prefer prefer, const CuttingEffort& effort) {
    JointSearch search(job, effort);
    search.find_first(prefer);
    search.find_choices();
    return search.plans();
}

JointPlan plan_joint(const JointJob& job, Prefer prefer, const CuttingEffort& effort) {
    JointSearch search(job, effort);
    search.find_first(prefer);
    const std::vector<JointPlan> plans = search.plans();
    const JointPlan* first = first_choice(plans, prefer);
    return first == nullptr ? JointPlan() : *first;
}

}  // namespace hemline
