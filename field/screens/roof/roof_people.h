// Who holds the tablet, and what for: one touch to change, on the roof.
//
//   [ Ada      ] [ Ben      ] [ Apprentice ]
//   [ cut      ] [ tick off ] [ learn      ]   who holds it now on chalk; a touch on them: somebody
//   else
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Those one touch away: for each way the latest, on this tablet or on this job, then others as far
/// as there is room; `most` is at least three. In the order of the ways, so that nobody's button
/// moves while the same people hold it in turn.
std::vector<Person> people_near(const State& state, std::size_t most);

/// Draws them at the top of `box` and cuts them off it.
void draw_people(Ui& ui, const State& state, Box& box, Wish& wish);

}  // namespace hemline
