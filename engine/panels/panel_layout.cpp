#include "engine/panels/panel_layout.h"

#include <algorithm>

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

Result<std::optional<Movement>> movement_on(const DeckPlane& plane, const PanelJob& job) {
    const FixedLine fixed = fixed_line_of(job.practice);
    if (!job.at) {
        if (fixed == FixedLine::ridge) {
            return Problem{say("Pinned at the ridge, the hems hang on how warm the metal is."),
                           say("Give its temperature now, its coldest and its hottest.")};
        }
        return std::optional<Movement>();
    }
    const std::string& said = job.practice.site.panel_metal;
    const MetalFamily metal = said.empty() ? MetalFamily::galvanized : metal_family(said);
    const Result<Movement> movement = movement_of({metal, nearest_nm(plane.top), *job.at, fixed});
    if (!movement) {
        return movement.problem();
    }
    return std::optional(*movement);
}

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

void doubt_seams(PanelLayout& layout, const SeamLayout& seams) {
    for (const KeepOff& hurt : seams.staying) {
        layout.doubts.push_back(
            {pan_at(layout, hurt.at),
             {say("A seam lies {1} from {2}; {3} is asked.",
                  CloseLength{*nearest_seam(seams.seams, hurt.at)}, hurt.what, hurt.off),
              way_out(layout, seams)}});
    }
}

void doubt_widths(PanelLayout& layout) {
    const Length module = layout.frame.module;
    for (const LaidPan& pan : layout.pans) {
        const bool first = pan.number == 1, last = pan.number == layout.pans.back().number;
        const bool beside_square =
            (first && layout.frame.left.square) || (last && layout.frame.right.square);
        if (!beside_square || pan.piece > 1 || pan.width * 2 >= module) {
            continue;
        }
        const bool least = pan.width >= panel_rule::end_pan_least;
        layout.doubts.push_back(
            {pan.number,
             {least ? say("Pan {1} is {2} wide, less than half a pan: it shows.", pan.number,
                          pan.width)
                    : say("Pan {1} is {2} wide: too narrow to form.", pan.number, pan.width),
              least ? say("Ask whether that may be seen.")
                    : say("Cover the plane with flat metal, or take another module.")}});
    }
}

void doubt_pinning(PanelLayout& layout) {
    const bool over_valley =
        std::any_of(layout.pans.begin(), layout.pans.end(), [&](const LaidPan& pan) {
            return std::any_of(pan.flat.begin(), pan.flat.end(), [&](const DeckPart& part) {
                return layout.plane.bounds[part.foot].kind == EdgeKind::valley;
            });
        });
    if (over_valley && layout.ends.fixed == FixedLine::eave) {
        layout.doubts.push_back(
            {0,
             {say("Pans end in a valley, where nothing pins them, and the plane is pinned at its "
                  "eave."),
              say("Pin this plane at the ridge.")}});
    }
    if (layout.ends.movement) {
        for (const Problem& refused : layout.ends.movement->refused) {
            layout.doubts.push_back({0, refused});
        }
    }
}

}  // namespace

PanelJob usual_panel_job() { return {Practice(), panel_rule::side_gap, {}, {}}; }

Result<PanelLayout> lay_panels(const DeckPlane& plane, const PanelJob& job,
                               std::span<const Penetration> through) {
    const Practice& practice = job.practice;
    if (practice.seam_spacing <= practice.seam_foot) {
        return Problem{
            say("A module of {1} leaves no pan between its seams.", practice.seam_spacing),
            say("Give the width from seam to seam.")};
    }
    const Result<std::optional<Movement>> movement = movement_on(plane, job);
    if (!movement) {
        return movement.problem();
    }
    PanelLayout layout;
    layout.plane = plane;
    layout.frame = seam_frame(plane, practice.seam_spacing, job.side_gap);
    layout.ends = pan_ends(fixed_line_of(practice), *movement, job.side_gap, practice.seam_height);
    const SeamLayout seams =
        lay_seams(layout.frame, keep_offs(plane, {through.begin(), through.end()}, practice));
    layout.shift = seams.shift;
    layout.pans = laid_pans(plane, layout.frame, seams.seams, layout.ends);
    layout.seams = laid_seams(seams.seams, layout.pans);
    layout.closures = pan_closures(plane, layout.pans, practice);
    layout.pairs = pan_pairs(layout.pans, job.legs);
    doubt_seams(layout, seams);
    doubt_widths(layout);
    doubt_pinning(layout);
    return layout;
}

}  // namespace hemline
