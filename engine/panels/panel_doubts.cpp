#include "engine/panels/panel_doubts.h"

#include <algorithm>

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

Text way_out(const PanelLayout& layout, const SeamLayout& seams) {
    if (!seams.with_one_more) {
        return say("Move what is in the way, or build a curb.");
    }
    return say("One pan more keeps off everything: ends of {1} and {2}. Else build a curb.",
               seams.with_one_more->front() - layout.frame.left.at,
               layout.frame.right.at - seams.with_one_more->back());
}

int pan_at(const PanelLayout& layout, Length at) {
    for (const LaidPan& pan : layout.pans) {
        if (at < pan.from + pan.width) {
            return pan.number;
        }
    }
    return 0;
}

void doubt_seams(const PanelLayout& layout, const SeamLayout& seams,
                 std::vector<PanelDoubt>& doubts) {
    for (const KeepOff& hurt : seams.staying) {
        doubts.push_back(
            {pan_at(layout, hurt.at),
             {say("A seam lies {1} from {2}; {3} is asked.",
                  CloseLength{*nearest_seam(seams.seams, hurt.at)}, hurt.what, hurt.off),
              way_out(layout, seams)}});
    }
}

Problem unfit_width(const LaidPan& pan, Length width, const SeamFrame& frame) {
    if (width > frame.module) {
        return {say("Pan {1} is {2} wide, wider than from seam to seam.", pan.number, width),
                say("Cover what is left with flat metal, or square the side.")};
    }
    if (width < frame.end_least) {
        return {say("Pan {1} is {2} wide: too narrow to form.", pan.number, width),
                say("Cover the plane with flat metal, or take another module.")};
    }
    return {say("Pan {1} is {2} wide, less than half a pan: it shows.", pan.number, width),
            say("Ask whether that may be seen.")};
}

void doubt_widths(const PanelLayout& layout, std::vector<PanelDoubt>& doubts) {
    const SeamFrame& frame = layout.frame;
    for (const LaidPan& pan : layout.pans) {
        const bool first = pan.number == 1, last = pan.number == layout.pans.back().number;
        if (pan.piece > 1 || !((first && frame.left.square) || (last && frame.right.square))) {
            continue;
        }
        if (pan.top_width != pan.width) {
            doubts.push_back({pan.number,
                              {say("Pan {1} is {2} wide at its foot and {3} at its top: its side "
                                   "is out of square.",
                                   pan.number, pan.width, pan.top_width),
                               say("Bend its turn-up along the side as it lies, not along a "
                                   "seam.")}});
        }
        const Length narrow = std::min(pan.width, pan.top_width);
        const Length wide = std::max(pan.width, pan.top_width);
        if (narrow * 2 < frame.module || wide > frame.module) {
            doubts.push_back(
                {pan.number, unfit_width(pan, wide > frame.module ? wide : narrow, frame)});
        }
    }
}

void doubt_top(const PanelLayout& layout, std::vector<PanelDoubt>& doubts) {
    const Length rise = layout.plane.top_rise;
    if (rise != Length()) {
        doubts.push_back(
            {0,
             {rise > Length()
                  ? say("The top is not level to the eave: it rises {1} to the right.", rise)
                  : say("The top is not level to the eave: it rises {1} to the left.", -rise),
              say("Each pan has its own length, and is cut on the slant at its top.")}});
    }
}

void doubt_pinning(const PanelLayout& layout, std::vector<PanelDoubt>& doubts) {
    const bool over_valley =
        std::any_of(layout.pans.begin(), layout.pans.end(), [&](const LaidPan& pan) {
            return std::any_of(pan.flat.begin(), pan.flat.end(), [&](const DeckPart& part) {
                return layout.plane.bounds[part.foot].kind == EdgeKind::valley;
            });
        });
    if (over_valley && layout.ends.fixed == FixedLine::eave) {
        doubts.push_back(
            {0,
             {say("Pans end in a valley, where nothing pins them, and the plane is pinned at its "
                  "eave."),
              say("Pin this plane at the ridge.")}});
    }
    if (layout.ends.movement) {
        for (const Problem& refused : layout.ends.movement->refused) {
            doubts.push_back({0, refused});
        }
    }
}

/// Valleys that the plane's pans end in, each once.
std::vector<DeckBound> valleys_under(const PanelLayout& layout) {
    std::vector<DeckBound> valleys;
    for (const LaidPan& pan : layout.pans) {
        for (const DeckPart& part : pan.flat) {
            const DeckBound& bound = layout.plane.bounds[part.foot];
            const bool known =
                std::any_of(valleys.begin(), valleys.end(),
                            [&](const DeckBound& other) { return other.edge == bound.edge; });
            if (bound.kind == EdgeKind::valley && !known) {
                valleys.push_back(bound);
            }
        }
    }
    return valleys;
}

void doubt_valleys(const PanelLayout& layout, const PanelJob& job,
                   std::vector<PanelDoubt>& doubts) {
    for (const DeckBound& valley : valleys_under(layout)) {
        const Length open = layout.ends.valley_open;
        const Length at_head = half_open_valley(Length(), open);
        const Length at_foot =
            half_open_valley(nearest_nm(length_of(valley.to - valley.from)), open);
        if (job.valley_leg && *job.valley_leg - at_foot < panel_rule::valley_leg_under) {
            doubts.push_back(
                {0,
                 {say("At the foot of valley {1} its leg reaches {2} under the panels; {3} is "
                      "asked.",
                      Text(valley.edge), CloseLength{std::max(Length(), *job.valley_leg - at_foot)},
                      panel_rule::valley_leg_under),
                  say("Take a leg of {1} or more.",
                      round_up_to(at_foot + panel_rule::valley_leg_under, sixteenths(4)))}});
        }
        if (job.strip == ValleyStrip::screwed && at_head < panel_rule::screwed_strip_off) {
            doubts.push_back(
                {0,
                 {say("The screws of the strip in valley {1} would stand under {2} from its "
                      "center.",
                      Text(valley.edge), panel_rule::valley_screw_off),
                  say("Rivet the strip to the valley's leg and seal it, or open the valley {1} "
                      "at its head.",
                      panel_rule::screwed_strip_off * 2)}});
        }
    }
}

}  // namespace

std::vector<PanelDoubt> panel_doubts(const PanelLayout& layout, const SeamLayout& seams,
                                     const PanelJob& job) {
    std::vector<PanelDoubt> doubts;
    doubt_seams(layout, seams, doubts);
    doubt_widths(layout, doubts);
    doubt_top(layout, doubts);
    doubt_pinning(layout, doubts);
    doubt_valleys(layout, job, doubts);
    return doubts;
}

}  // namespace hemline
