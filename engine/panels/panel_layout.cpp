#include "engine/panels/panel_layout.h"

#include "engine/panels/panel_doubts.h"
#include "engine/panels/panel_rules.h"
#include "engine/panels/roof_panels.h"
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
    const Result<Movement> movement =
        movement_of({metal, nearest_nm(plane.top), *job.at, fixed, job.practice.panel_lip});
    if (!movement) {
        return movement.problem();
    }
    return std::optional(*movement);
}

}  // namespace

std::optional<Problem> no_pans(const PanelJob& job) {
    const Practice& practice = job.practice;
    if (practice.seam_spacing > practice.seam_foot) {
        return {};
    }
    return Problem{say("A module of {1} leaves no pan between its seams.", practice.seam_spacing),
                   say("Give the width from seam to seam.")};
}

SeamTask seam_task(const PlaneAsked& asked) {
    const Practice& practice = asked.job.practice;
    return {
        seam_frame(asked.plane, practice.seam_spacing, practice.side_gap, practice.end_pan_least),
        keep_offs(asked.plane, asked.through, practice), asked.job.chosen};
}

Result<PanEnds> ends_on(const DeckPlane& plane, const PanelJob& job) {
    const Result<std::optional<Movement>> movement = movement_on(plane, job);
    if (!movement) {
        return movement.problem();
    }
    return pan_ends(job.practice, *movement);
}

Result<PanelLayout> lay_panels(const PlaneAsked& asked, const SeamLayout& seams) {
    const auto& [plane, job, through] = asked;
    const Practice& practice = job.practice;
    const Result<PanEnds> ends = ends_on(plane, job);
    if (!ends) {
        return ends.problem();
    }
    PanelLayout layout;
    layout.plane = plane;
    layout.frame = seam_task(asked).frame;
    layout.ends = *ends;
    layout.shift = seams.shift;
    layout.pans = laid_pans(plane, layout.frame, seams.seams, layout.ends);
    layout.seams = laid_seams(plane, seams.seams, layout.pans, clip_rules(practice));
    layout.closures = pan_closures(plane, layout.pans, practice);
    layout.pairs = pan_pairs(layout.pans, job.legs, practice.order_grid);
    layout.doubts = panel_doubts(layout, seams, job);
    return layout;
}

Result<PanelLayout> lay_panels(const DeckPlane& plane, const PanelJob& job,
                               std::span<const Penetration> through) {
    const std::vector<PlaneAsked> alone = {{plane, job, {through.begin(), through.end()}}};
    const auto layouts = lay_roof(alone);
    if (!layouts) {
        return layouts.problem();
    }
    return layouts->front();
}

}  // namespace hemline
