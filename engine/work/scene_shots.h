// What most scenes of a step are: something comes to its place, is put right, judged, fastened or
// measured.
#pragma once

#include "engine/work/step_scene.h"

namespace hemline {

inline constexpr Space in_place{};
inline constexpr std::optional<Space> nowhere = std::nullopt;

/// So far off a leg, in mm, is what comes to its place.
inline constexpr double near_mm = 45;
inline Space above(const LegPatch& on, double mm = near_mm) { return on.normal * mm; }

/// What is put on.
Shots comes(const Props& base, const Props& thing, const Space& from,
            std::optional<Space> piece = in_place);
Shots piece_comes(const Props& base, const Space& from);
/// The piece itself: wrong, nearly right, right.
Shots piece_put_right(const Props& base, const Space& off);
Shots judged(const Props& base, const Props& wrong, const Props& look, const Props& right,
             std::optional<Space> piece = in_place);
/// Screws or rivets on the leg, `a` from its bend.
Shots fastened(const Props& base, const LegPatch& on, const std::vector<double>& xs, double a,
               double up = 2, std::optional<Space> piece = in_place);
/// The tape, along the leg or across it.
Shots measured(const Props& base, const LegPatch& on, double x0, double x1, double a0, double a1,
               std::optional<Space> piece = in_place, double up = 7);

/// A bead of sealant across the leg, so far from the end shown.
Prop bead(const Scenery& stage, const LegPatch& on, double from_end);

/// The scenes, each by the ids of its steps; nullopt: not one of its.
std::optional<Shots> setting_scene(std::string_view step, const Scenery& stage);
std::optional<Shots> closing_scene(std::string_view step, const Scenery& stage);
std::optional<Shots> looking_scene(std::string_view step, const Scenery& stage);
std::optional<Shots> water_scene(std::string_view step, const Scenery& stage);
std::optional<Shots> pipe_scene(std::string_view step, const Scenery& stage);
std::optional<Shots> panel_scene(std::string_view step, const Scenery& stage);

}  // namespace hemline
