// The roof from above, to scale: planes toned by their fall, every edge its own line with its
// letter and its length, as far as it is read or worked out.
//
//   ┏━━━○A━━━┓     a letter's circle shows the edge's status; grey lengths are what the roof says
//   ┃╲  6/12╱┃     a touch near an edge opens it; near two, it asks which; near many, it shows
//   ┃ ╲____╱ ○B    that place larger
//   ┗━━━━━━━━┛
#pragma once

#include <string>
#include <vector>

#include "field/screens/roof/roof_reach.h"
#include "field/screens/roof/roof_sheet.h"
#include "field/state/roof_draft.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws all roofs in the box, `next` ringed; returns the id of the edge that was touched, or
/// empty.
std::string draw_roof_plan(Ui& ui, const State& state, RoofDraft& draft, const std::string& next,
                           Box box);
/// What is laid out; words stay on the page. Returns where its letters are, those of long edges
/// first.
std::vector<LetterDrawn> draw_sheet(Ui& ui, const RoofSheet& sheet, Box page);
/// Says whether it closes, and which single reading would close it; returns the height used. Needs
/// state.outline.
float draw_roof_words(Ui& ui, const State& state, Box box);

/// The smallest box worth drawing in, mm.
constexpr float roof_plan_mm_least = 40;

}  // namespace hemline
