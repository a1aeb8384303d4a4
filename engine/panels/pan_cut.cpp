#include "engine/panels/pan_cut.h"

#include <algorithm>

#include "engine/roof/nearest.h"

namespace hemline {

PanCut pan_cut(const DeckPlane& plane, const LaidPan& pan, const PanEnds& ends) {
    PanCut cut;
    const auto add = [&](std::vector<CutCorner>& end, double x, double y) {
        const CutCorner corner{nearest_nm(x) - pan.from, nearest_nm(y)};
        const bool again = !end.empty() && absolute(end.back().x - corner.x) <= same_place &&
                           absolute(end.back().y - corner.y) <= same_place;
        if (!again) {
            end.push_back(corner);
        }
    };
    for (const DeckPart& part : pan.flat) {
        const DeckBound &below = plane.bounds[part.foot], &above = plane.bounds[part.top];
        add(cut.foot, part.x1, part.foot1 - past_foot(ends, below, part.x1));
        add(cut.foot, part.x2, part.foot2 - past_foot(ends, below, part.x2));
        add(cut.top, part.x1, part.top1 + past_top(ends, above, part.x1));
        add(cut.top, part.x2, part.top2 + past_top(ends, above, part.x2));
    }
    const Length lowest =
        std::min_element(cut.foot.begin(), cut.foot.end(),
                         [](const CutCorner& a, const CutCorner& b) { return a.y < b.y; })
            ->y;
    for (std::vector<CutCorner>* const end : {&cut.foot, &cut.top}) {
        for (CutCorner& corner : *end) {
            corner.y -= lowest;
        }
    }
    return cut;
}

}  // namespace hemline
