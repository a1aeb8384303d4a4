// Whether the tape's hook is bent, judged from the readings of several edges together.
#pragma once

#include <string>

#include "engine/record/job.h"

namespace hemline {

/// A line when the second readings of several edges differ from the first in the same direction, as
/// a bent hook makes them (see hook_suspected): the likely cause and what to do. Empty otherwise.
Text hook_doubt(const Job& job);

}  // namespace hemline
