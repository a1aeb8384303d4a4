#include "engine/work/staged_pictures.h"

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/procedure_words.h"
#include "engine/work/readiness.h"
#include "engine/work/step_scene.h"

namespace hemline {

namespace {

constexpr std::string_view seal_step = "seal";  // its beads lie on the neighbor
constexpr Length staged_least = inches(14);
constexpr double bare_deck_mm = 60;  // shown where the piece has no leg on the deck

/// The piece that a scene is about, and the end of it that is shown.
StepMetal staged_metal(const Step& step, const EdgeWork& work, const Plan& plan) {
    StepMetal metal = metal_of(step, work, plan);
    const TrimRole role = role_of(step.rule->each);
    const Side first = first_fitted(work.edge);
    const bool on_neighbor = step.rule->id == seal_step;
    if (metal.shows == Shows::nothing || on_neighbor) {
        metal = {Shows::nothing, role, step.piece, on_neighbor ? other(first) : first};
        metal.side = lies_mirrored(work) ? other(metal.side) : metal.side;
    }
    metal.piece -= on_neighbor ? 1 : 0;
    if (metal.piece == 0) {
        metal.piece = piece_at(find_run(plan, work.edge.id, role), work.edge, first);
    }
    return metal;
}

/// The stage with that piece on it; where the edge has no metal of its own, a pan. None: nothing is
/// planned there.
std::optional<Scenery> stage_of(const MeetingOf& of, const StepMetal& metal, const EdgeWork& work,
                                StepPictures& pictures) {
    if (!has_run(work.edge.kind)) {
        Scenery stage = pan_stage(degrees_of(work.edge.pitch.value_or(rise_in_12(6))));
        stage.is_plane = work.edge.kind == EdgeKind::panels;
        return stage;
    }
    const auto card =
        make_card(of.job, of.plan, of.catalogue, work.edge.id, metal.role, metal.piece);
    const auto pattern =
        card ? piece_pattern(*card, work.edge, of.sections) : Result<FlatPattern>(card.problem());
    if (!pattern) {
        return {};
    }
    Scenery stage;
    stage.piece = folded_end(*card, work.edge, *pattern, metal.side, step_of(FoldStep::finished),
                             staged_least);
    std::optional<LegPatch> flange, face;
    for (std::size_t leg = 0; leg < pattern->legs.names.size(); ++leg) {
        const LegName name = pattern->legs.names[leg];
        if (name == LegName::flange && !flange) {
            flange = patch_of(stage.piece, leg);
        } else if (name == LegName::face && !face) {
            face = patch_of(stage.piece, leg);
        }
    }
    if (!face) {
        return {};
    }
    stage.face = *face;
    stage.flange = flange.value_or(
        LegPatch{face->x0, face->x1, bare_deck_mm, face->at_bend, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
    stage.end = metal.side == Side::left ? face->x0 : face->x1;
    stage.inward = metal.side == Side::left ? 1 : -1;
    const Trim* const trim = of.catalogue.find(card->trim);
    stage.two_roofs = metal.role == TrimRole::main && facts_of(work.edge.kind).roofs == 2;
    stage.over_panels = trim != nullptr && trim->panels == Panels::over;
    stage.strip = of.catalogue.strip_for(work.edge);
    pictures.legs = pattern->legs.names;
    pictures.trim = card->trim;
    return stage;
}

}  // namespace

int piece_at(const Run* run, const Edge& edge, Side side) {
    if (run == nullptr || run->pieces.empty()) {
        return 0;
    }
    return side == first_fitted(edge) ? run->pieces.front().number : run->pieces.back().number;
}

std::optional<StepPictures> staged_pictures(const MeetingOf& of, const Step& step,
                                            std::string_view scene, const EdgeWork& work) {
    const StepMetal metal = staged_metal(step, work, of.plan);
    StepPictures pictures;
    pictures.side = metal.side;
    const auto stage = stage_of(of, metal, work, pictures);
    const auto shots = stage ? scene_of(scene, *stage) : std::nullopt;
    if (!shots) {
        return {};
    }
    for (std::size_t i = 0; i < shots->size(); ++i) {
        const Shot& shot = (*shots)[i];
        pictures.before_during_done[i] = {
            shot.says,
            shot.piece_at ? moved(stage->piece, *shot.piece_at) : std::vector<Facet>(),
            {},
            shot.props};
    }
    return pictures;
}

}  // namespace hemline
