// What an event changes in the job.
#pragma once

#include "engine/record/job.h"

namespace hemline {

struct JobPlaces;

/// Folds an event in. `places` are those of the job's lists, which may have gaps until they are
/// swept.
void fold_in(Job& job, JobPlaces& places, const Event& event);

}  // namespace hemline
