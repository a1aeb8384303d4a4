#include "engine/record/wind.h"

#include <cmath>
#include <vector>

#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/outline.h"
#include "engine/roof/walk_rings.h"

namespace hemline {

namespace {

constexpr double square_within = 0.17;  // cosine: about 10° to either side

bool is_level(const EdgeWork& work) {
    return !is_sloped(work.edge.kind) && has_run(work.edge.kind) && !work.taken_off;
}

/// Along a ring from a side whose bearing was said: each corner turns the walk to the left, since
/// the building lies there.
void go_round(std::span<const WalkedEdge> ring, Tape tape, std::map<std::string, Angle>& bearings) {
    const Walk walk = lay_walk(ring, tape);
    const std::size_t count = walk.sides.size();
    for (std::size_t start = 0; start < count; ++start) {
        const auto& at = walk.sides[start].edge;
        const auto said = at ? bearings.find(walk.edges[*at].edge.id) : bearings.end();
        if (said == bearings.end()) {
            continue;
        }
        Angle bearing = said->second;
        for (std::size_t i = 0; i + 1 < count; ++i) {
            const WalkSide& side = walk.sides[(start + i) % count];
            const WalkSide& next = walk.sides[(start + i + 1) % count];
            if (!side.after.inside) {
                return;
            }
            bearing = within_a_turn(bearing - (half_turn - *side.after.inside));
            if (next.edge && !is_sloped(walk.edges[*next.edge].edge.kind)) {
                bearings.emplace(walk.edges[*next.edge].edge.id, bearing);
            }
        }
        return;
    }
}

}  // namespace

std::optional<Side> side_by_wind(Angle wind, Angle bearing) {
    const double along = std::cos(radians_of(wind - bearing));
    if (std::abs(along) <= square_within) {
        return {};
    }
    return along > 0 ? Side::left : Side::right;
}

std::map<std::string, Angle> bearings_of(const Job& job) {
    std::map<std::string, Angle> bearings;
    std::vector<WalkedEdge> edges;
    for (const EdgeWork& work : job.edges) {
        const auto said = job.practice.site.bearings.find(work.edge.id);
        if (is_level(work) && said != job.practice.site.bearings.end()) {
            bearings.emplace(work.edge.id, said->second);
        }
        if (!work.taken_off && is_around_house(work.edge.kind)) {
            edges.push_back({work.edge, {}});
        }
    }
    if (bearings.empty() || edges.size() > outline_edges_most) {
        return bearings;
    }
    for (const WalkRing& ring : rings_of(edges, job.practice.tape)) {
        std::vector<WalkedEdge> own;
        for (const std::size_t edge : ring.edges) {
            own.push_back(edges[edge]);
        }
        go_round(own, job.practice.tape, bearings);
    }
    return bearings;
}

std::map<std::string, Side> sides_by_wind(const Job& job) {
    std::map<std::string, Side> sides;
    const Site& site = job.practice.site;
    if (!site.wind_from) {
        return sides;
    }
    const auto bearings = bearings_of(job);
    for (const EdgeWork& work : job.edges) {
        const auto bearing = bearings.find(work.edge.id);
        const bool said = work.added.first == Side::right || site.firsts.count(work.edge.id) > 0;
        if (!is_level(work) || said || bearing == bearings.end()) {
            continue;
        }
        if (const auto side = side_by_wind(*site.wind_from, bearing->second)) {
            sides.emplace(work.edge.id, *side);
        }
    }
    return sides;
}

}  // namespace hemline
