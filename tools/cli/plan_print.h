// A plan as the desk reads it: JSON for programs, a cut list for people.
#pragma once

#include <string>

#include "engine/work/fixing.h"
#include "tools/cli/desk.h"
#include "tools/cli/print.h"

namespace hemline {

/// Closures of one edge; none where its length is not agreed.
Closures closures_on(const EdgeWork& work, const Desk& desk);

/// Screws and sealant of one run.
FixingTally fixing_on(const Run& run, const Desk& desk);

/// `{"edges":[…],"sticks":[…],"proof":[…],"problems":[…],"choices":[…],"closures":[…],"fixing":[…]}`
Json plan_json(const Desk& desk);

/// One problem of the plan, at its cell of the table.
Json problem_json(const PlanProblem& problem, const Desk& desk);

/// Cut list by edge and by stick, the count beside its bound, then what is wrong. `file`: the name
/// the problems stand under.
std::string plan_text(const Desk& desk, const std::string& file);

std::string_view word_of(Severity severity);

}  // namespace hemline
