// What to do at each mark of a card, in words: angles, notches and clipped corners are read from
// the flat pattern, so that the card cannot ask for other metal than the pattern shows.
#pragma once

#include <optional>

#include "engine/trim/pattern.h"
#include "engine/work/card.h"

namespace hemline {

/// "tab folded 45° round the corner". Without a pattern: no angles, and no corners clipped.
Text deed_of(const Card& card, const Mark& mark, const std::optional<FlatPattern>& pattern);

/// Which leg lies toward you where the card's left end is at your left: the lowest on its pattern.
/// "wall leg away, deck leg toward you".
Text leg_toward_you(const Card& card);

/// What a crew calls the card's leg: "wall leg", "leg on the 4/12 roof", "flange".
Text leg_called(const Card& card, LegName leg);

/// The same of each leg, as a pattern has them.
std::vector<Text> legs_called(const Card& card, const std::vector<LegName>& legs);

/// "45°", "67.4°": without a sign.
std::string fold_words(double degrees);

}  // namespace hemline
