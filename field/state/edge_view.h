// What screens ask about an edge: its work, its steps, what comes next on it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/work/card.h"
#include "engine/work/edge_values.h"
#include "engine/work/procedure.h"
#include "field/state/state.h"

namespace hemline {

/// "Eave C".
Text title_of(const Edge& edge);
const EdgeWork* edge_of(const State& state, std::string_view edge);
std::vector<Step> steps_on(const State& state, const EdgeWork& work);
/// The next step for whoever holds the tablet: an installer cuts a whole wrap or cleat first.
std::optional<std::size_t> next_on(const State& state, const std::vector<Step>& steps);
/// Its values against practice, those outside it first.
std::vector<EdgeValue> values_on(const State& state, const EdgeWork& work);
EdgeStatus status_on(const State& state, const EdgeWork& work);

/// The card for the metal in hand: a stick not opened yet is measured from its end, whatever else
/// the plan cuts from it later.
Result<Card> card_in_hand(const State& state, const Where& where);

/// The place where the edge's next piece of work is done, and what to call it.
struct NextWork {
    Where where;
    Text label;           ///< of the button: "Next cut", "Read again"
    Text what;            ///< a line: "Cut piece 2 of eave C"
    Text waits_for = {};  ///< for the whole roof: why nothing can be done yet
};
/// An apprentice stays with the steps, which lead to the card and the reading.
NextWork next_work_on(const State& state, const EdgeWork& work);
/// Where the cut or the reading that a step asks for is made.
Where made_at(const EdgeWork& work, const Step& step);
/// What comes next on the whole roof, in the order of fitting, for whoever holds the tablet: the
/// foreman gets what waits for his sign-off, the others skip it as long as there is other work.
/// nullopt when all is finished.
std::optional<NextWork> next_work(const State& state);
/// Where a touch on the edge leads: the foreman to its values, the others to its next work, of
/// panels to their plane.
Where opened(const State& state, const EdgeWork& work);

}  // namespace hemline
