// Whether the tape's hook is bent, as the readings of several edges tell together.
#pragma once

#include <string>

#include "engine/record/job.h"

namespace hemline {

/// One line when the second readings of several edges differ from the first in the same way, as a
/// bent hook makes them (see hook_suspected): the likely cause and the mend. Empty otherwise.
Text hook_doubt(const Job& job);

}  // namespace hemline
