// Corners: which side of an eave's corner carries the tab, and whether the low metal at the corners
// of walls reaches as far as what lies on it.
#include <algorithm>

#include "engine/plan/plan_parts.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/outline.h"
#include "engine/roof/walk_rings.h"

namespace hemline {

namespace {

/// Published practice: 3 to 4 in a side.
constexpr Length past_least = inches(4);

/// The sidewall whose deck leg is the widest, and that width.
struct WidestLeg {
    const Edge* edge = nullptr;
    Length width = past_least;
};

WidestLeg widest_sidewall(const Job& job, const Catalogue& catalogue) {
    WidestLeg widest;
    for (const EdgeWork& work : job.edges) {
        const Trim* const trim =
            work.edge.kind == EdgeKind::sidewall ? main_trim(work.edge, catalogue) : nullptr;
        const Length width =
            trim == nullptr ? Length() : leg_width(fitted_to(*trim, work.edge), LegName::flange);
        if (width > widest.width) {
            widest = {&work.edge, width};
        }
    }
    return widest;
}

std::vector<WalkedEdge> walked(const Job& job) {
    std::vector<WalkedEdge> edges;
    for (const EdgeWork& work : job.edges) {
        edges.push_back({work.edge, {}});
    }
    return edges;
}

/// Only an edge that is fitted from its right end can leave a corner without a tab.
bool is_settled_by_sides(const Job& job) {
    return std::none_of(job.edges.begin(), job.edges.end(), [](const EdgeWork& work) {
        return is_around_house(work.edge.kind) && first_fitted(work.edge) == Side::right;
    });
}

}  // namespace

std::map<std::string, CornerTabs, std::less<>> corner_tabs_of(const Job& job) {
    std::map<std::string, CornerTabs, std::less<>> tabs;
    if (is_settled_by_sides(job) || job.edges.size() > outline_edges_most) {
        return tabs;
    }
    const std::vector<WalkedEdge> edges = walked(job);
    for (const WalkPair& pair : corner_pairs(edges, job.practice.tape)) {
        const Edge &before = edges[pair.before].edge, &after = edges[pair.after].edge;
        const bool before_claims = first_fitted(before) == Side::right;
        const bool after_claims = first_fitted(after) == Side::left;
        if (before_claims == after_claims) {
            const bool on_before = pair.before < pair.after;
            tabs[before.id].right = on_before;
            tabs[after.id].left = !on_before;
        }
    }
    return tabs;
}

std::map<std::string, CornerNeighbors, std::less<>> corner_neighbors_of(const Job& job) {
    std::map<std::string, CornerNeighbors, std::less<>> neighbors;
    if (job.edges.size() > outline_edges_most) {
        return neighbors;
    }
    const std::vector<WalkedEdge> edges = walked(job);
    for (const WalkPair& pair : corner_pairs(edges, job.practice.tape)) {
        const Edge &before = edges[pair.before].edge, &after = edges[pair.after].edge;
        neighbors[before.id].right = after.id;
        neighbors[after.id].left = before.id;
    }
    return neighbors;
}

CornerTabs tabs_on(const Plan& plan, std::string_view edge) {
    const auto known = plan.corner_tabs.find(edge);
    return known == plan.corner_tabs.end() ? CornerTabs() : known->second;
}

void judge_wall_corners(const Job& job, const Catalogue& catalogue, Plan& plan) {
    const Length past = job.practice.apron_past;
    const WidestLeg widest = widest_sidewall(job, catalogue);
    if (widest.width <= past) {
        return;
    }
    for (const EdgeWork& work : job.edges) {
        const Edge& edge = work.edge;
        if (edge.kind != EdgeKind::headwall ||
            (edge.left != End::corner_out && edge.right != End::corner_out)) {
            continue;
        }
        plan.problems.push_back(
            {edge.id, edge.left == End::corner_out ? "left" : "right", Severity::problem,
             widest.edge == nullptr
                 ? say("Headwall {1} runs {2} past its corner; {3} is the least.", edge.id, past,
                       widest.width)
                 : say("Headwall {1} runs {2} past its corner, and the deck leg of sidewall {3} "
                       "that laps onto it is {4} wide.",
                       edge.id, past, widest.edge->id, widest.width),
             say("Set the rule \"{1}\" to {2}.", spoken_rule("apron_past"), widest.width)});
    }
}

}  // namespace hemline
