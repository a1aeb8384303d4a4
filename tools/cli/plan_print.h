// A plan for a desk: JSON for programs, a cut list for people.
#pragma once

#include <string>

#include "engine/work/closures.h"
#include "engine/work/end_cap.h"
#include "engine/work/fixing.h"
#include "engine/work/strips.h"
#include "tools/cli/desk.h"
#include "tools/cli/print.h"

namespace hemline {

/// Closures of an edge; none where its length is not agreed.
Closures closures_on(const EdgeWork& work, const Desk& desk);
Strips strips_on(const EdgeWork& work, const Desk& desk);
/// None where no end of the edge takes a cap.
std::optional<Result<EndCap>> end_cap_on(const EdgeWork& work, const Desk& desk);

/// Screws and sealant of a run.
FixingTally fixing_on(const Run& run, const Desk& desk);

/// `{"edges":[…],"sticks":[…],"proof":[…],"problems":[…],"choices":[…],"closures":[…],
/// "strips":[…],"end_caps":[…],"fixed_line":{…},"fixing":[…]}`, and "expected" where lengths were
/// worked out.
Json plan_json(const Desk& desk);

/// A problem of the plan, at its cell of the table.
Json problem_json(const PlanProblem& problem, const Desk& desk);

/// Cut list by edge and by stick, the count beside its bound, then what is wrong. `file`: the file
/// name shown with the problems.
std::string plan_text(const Desk& desk, const std::string& file);

std::string_view word_of(Severity severity);

}  // namespace hemline
