// Says in words whether the place where jobs are kept lasts.
#pragma once

#include <string>

#include "field/state/state.h"

namespace hemline {

/// Empty where jobs lie on a disk.
Text promise_words(Promised promised);

}  // namespace hemline
