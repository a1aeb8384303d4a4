#include "engine/panels/pan_closures.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include "engine/roof/nearest.h"
#include "engine/trim/practice.h"

namespace hemline {

namespace {

/// What of an edge's line a pan lies under.
struct Touch {
    double across = 0;   ///< square to the seams
    double stretch = 1;  ///< along the line for each unit of that
};

std::map<std::string, Touch> touched_by(const DeckPlane& plane, const LaidPan& pan) {
    std::map<std::string, Touch> touched;
    Touch* last = nullptr;
    for (const DeckPart& part : pan.flat) {
        const DeckBound& bound = plane.bounds[part.top];
        if (bound.kind && facts_of(*bound.kind).closed != Closed::no_side) {
            Touch& touch = touched[bound.edge];
            touch.across += part.x2 - part.x1;
            touch.stretch = std::hypot(1.0, bound.slope());
            last = &touch;
        }
    }
    if (last) {
        last->across += static_cast<double>((pan.top_width - pan.width).nm());
    }
    return touched;
}

Length blank_of(const Touch& touch, const Practice& practice) {
    const double clear = std::max(0.0, touch.across - static_cast<double>(practice.seam_foot.nm()));
    return round_up_to(nearest_nm(clear * touch.stretch) + practice.closure_ear * 2 - nanometres(1),
                       practice.cut_grid);
}

}  // namespace

std::vector<PanClosures> pan_closures(const DeckPlane& plane, std::span<const LaidPan> pans,
                                      const Practice& practice) {
    std::map<std::string, std::map<Length, std::int64_t, std::greater<>>> by_edge;
    for (const LaidPan& pan : pans) {
        for (const auto& [edge, touch] : touched_by(plane, pan)) {
            if (touch.across > same_place_nm) {
                ++by_edge[edge][blank_of(touch, practice)];
            }
        }
    }
    std::vector<PanClosures> closures;
    for (const DeckBound& bound : plane.bounds) {
        const auto found = by_edge.find(bound.edge);
        if (found == by_edge.end()) {
            continue;
        }
        PanClosures of_edge{bound.edge, 0, found->second.begin()->first, {}};
        for (const auto& [blank, count] : found->second) {
            of_edge.count += count;
            of_edge.blanks.push_back({count, blank});
        }
        closures.push_back(std::move(of_edge));
        by_edge.erase(found);
    }
    return closures;
}

}  // namespace hemline
