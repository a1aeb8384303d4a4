// Whether the place where jobs are kept lasts, said in words.
#pragma once

#include <string>

#include "field/state/state.h"

namespace hemline {

/// Empty where jobs lie on a disk.
Text promise_words(Promised promised);

}  // namespace hemline
