// Whether whoever holds the tablet may go on with work on the roof today.
#pragma once

#include <optional>
#include <string>

#include "engine/work/procedure.h"
#include "engine/work/wind.h"
#include "field/state/state.h"

namespace hemline {

/// What he said last of all that is to be looked at, today; null: not yet. A no of his holds the
/// roof by itself.
const KeptGate* gate_passed(const State& state);
bool has_passed_gate(const State& state);
/// This step is on the roof, and he has not passed the day's gate yet; not where the edge is held.
bool wants_gate(const State& state, const Step& step);
/// Nobody has said yet where this roof's panels are pinned, or where its rain comes from.
bool asks_of_roof(const State& state);
/// The fact is work on the roof, which nobody writes before he has passed the gate.
bool is_roof_work(const Fact& fact);

/// What stands above the edge's roof steps until he has answered one of them today: tie off; null
/// after that.
const StepRule* prompt_for(const State& state, const EdgeWork& work);

/// The nearest hospital as it was said last on this job; empty: nobody has.
std::string hospital_known(const State& state);
/// The longest piece of the edge's trim, or that piece, as it is carried.
std::optional<Sheet> sheet_on(const State& state, const EdgeWork& work, int piece = 0);

}  // namespace hemline
