#include "engine/work/holed_plane.h"

#include <algorithm>
#include <utility>

namespace hemline {

namespace {

struct Cut {
    Space from, to;
};

double turned(const Space& a, const Space& b, const Space& p) {
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

bool is_same(const Space& a, const Space& b) { return a.x == b.x && a.y == b.y; }

/// In plan, ends that they share left aside.
bool cross_one_another(const Cut& a, const Cut& b) {
    if (is_same(a.from, b.from) || is_same(a.from, b.to) || is_same(a.to, b.from) ||
        is_same(a.to, b.to)) {
        return false;
    }
    return turned(a.from, a.to, b.from) * turned(a.from, a.to, b.to) <= 0 &&
           turned(b.from, b.to, a.from) * turned(b.from, b.to, a.to) <= 0;
}

bool is_crossed(const Cut& cut, const std::vector<Space>& walk) {
    for (std::size_t i = 0; i < walk.size(); ++i) {
        if (cross_one_another(cut, {walk[i], walk[(i + 1) % walk.size()]})) {
            return true;
        }
    }
    return false;
}

double doubled_plan_area(const std::vector<Space>& walk) {
    double area = 0;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        area += turned(walk.front(), walk[i], walk[(i + 1) % walk.size()]);
    }
    return area;
}

/// The hole joined to the walk round it by the shortest cut that crosses nothing.
bool join_hole(std::vector<Space>& round, std::vector<Space> hole,
               const std::vector<std::vector<Space>>& others, std::vector<Cut>& cuts) {
    if (doubled_plan_area(hole) * doubled_plan_area(round) > 0) {
        std::reverse(hole.begin(), hole.end());
    }
    std::vector<std::pair<double, std::pair<std::size_t, std::size_t>>> tries;
    for (std::size_t i = 0; i < round.size(); ++i) {
        for (std::size_t k = 0; k < hole.size(); ++k) {
            tries.push_back({length_of(hole[k] - round[i]), {i, k}});
        }
    }
    std::sort(tries.begin(), tries.end());
    for (const auto& [length, ends] : tries) {
        const auto at = static_cast<std::ptrdiff_t>(ends.first);
        const Cut cut = {round[ends.first], hole[ends.second]};
        const bool is_free = !is_crossed(cut, round) && !is_crossed(cut, hole) &&
                             std::none_of(others.begin(), others.end(), [&](const auto& other) {
                                 return is_crossed(cut, other);
                             });
        if (is_free) {
            std::rotate(hole.begin(), hole.begin() + static_cast<std::ptrdiff_t>(ends.second),
                        hole.end());
            hole.push_back(hole.front());
            hole.push_back(round[ends.first]);
            round.insert(round.begin() + at + 1, hole.begin(), hole.end());
            cuts.push_back(cut);
            return true;
        }
    }
    return false;
}

}  // namespace

std::vector<Facet> plane_facets(const std::vector<Space>& corners,
                                const std::vector<std::vector<Space>>& holes, std::size_t leg) {
    std::vector<Space> round = corners;
    std::vector<Cut> cuts;
    for (const std::vector<Space>& hole : holes) {
        join_hole(round, hole, holes, cuts);
    }
    std::vector<Facet> facets = plane_facets(round, leg);
    const auto lies_on = [](const Cut& cut, const Space& a, const Space& b) {
        return (is_same(cut.from, a) && is_same(cut.to, b)) ||
               (is_same(cut.from, b) && is_same(cut.to, a));
    };
    for (Facet& facet : facets) {
        for (std::size_t i = 0; i < facet.corners.size(); ++i) {
            const Space &a = facet.corners[i], &b = facet.corners[(i + 1) % facet.corners.size()];
            if (std::any_of(cuts.begin(), cuts.end(),
                            [&](const Cut& cut) { return lies_on(cut, a, b); })) {
                facet.rims[i] = Rim::none;
            }
        }
    }
    return facets;
}

}  // namespace hemline
