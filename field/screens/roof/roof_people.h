// Who holds the tablet, and in which role, on the roof's screen: a touch changes it.
//
//   [ Ada      ] [ Ben      ] [ Apprentice ]
//   [ cut      ] [ tick off ] [ learn      ]   who holds it now on chalk; a touch on them: somebody
//   else
#pragma once

#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

/// The people offered: for each role the latest, on this tablet or on this job, then others as far
/// as there is room; `most` is at least three. In the order of the roles, so that nobody's button
/// moves while the same people take turns.
std::vector<Person> people_near(const State& state, std::size_t most);

/// Draws them at the top of `box` and cuts them off it.
void draw_people(Ui& ui, const State& state, Box& box, Wished& wish);

}  // namespace hemline
