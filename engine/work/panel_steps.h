// What the steps of a plane's panels tell and ask: which pans and seams, where they lie, how many
// clips.
//
//   laying begins at one end of the eave; every fifth seam is measured from there, so that small
//   errors do not add up
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "engine/quantity/length.h"
#include "engine/words/text.h"

namespace hemline {

enum class Each;
struct PlannedPanels;
struct StepRule;

struct LengthLimits {
    std::optional<Length> least, most;
};

/// Id of the step that measures a fifth seam.
constexpr std::string_view fifth_seam_step = "fifth_seam";

/// The seams or pans that such a step comes for: seams counted from where laying begins, pans by
/// their numbers from the eave's left end; empty while nothing is laid out.
std::vector<int> panel_pieces(Each each, const PlannedPanels* panels);
/// What a word of an action stands for; none: no word of panels.
std::optional<Text> panel_words(std::string_view word, int piece, const PlannedPanels& panels);
/// A plane measures what the walk gives within 3 in, a fifth seam lies within 1/8 in of its place,
/// the gap at the hook within 1/16 in (common practice, no published source).
LengthLimits panel_limits(const StepRule& rule, int piece, const PlannedPanels& panels);
std::int64_t clips_of(const PlannedPanels& panels);

/// From the end of the eave where laying begins to that seam, counted from there.
Length seam_from_begin(const PlannedPanels& panels, int seam);

}  // namespace hemline
