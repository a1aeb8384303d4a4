// A cutting plan for a desk: JSON for programs, layouts for people, and the proof.
#pragma once

#include "engine/cutting/cutting.h"
#include "tools/cli/print.h"

namespace hemline {

/// Which pieces lie on which stick: `[{"times","stock","on_hand","cuts":[…]}]`, lengths in nm.
Json layouts_json(const CuttingJob& job, const CuttingPlan& plan);

/// `{"sticks","new_sticks","lower_bound","proved","bound_from","layouts":[…],"missing":[…]}`,
/// lengths in nm. `sticks` counts those on hand too; the bound is for new sticks.
Json cut_json(const CuttingJob& job, const CuttingPlan& plan);

/// The job, the plan and the worths that bound it, lengths in nm: all that a check needs.
Json certificate_json(const CuttingJob& job, const CuttingPlan& plan);

std::string cut_text(const CuttingJob& job, const CuttingPlan& plan, Marks marks);

}  // namespace hemline
