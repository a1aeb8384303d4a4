// Why the page did not keep something: each kind with its own words and its own mend.
#pragma once

#include "engine/words/result.h"

namespace hemline {

/// The numbers of not_kept.js; 0: it is kept.
enum class NotKept { nothing, full, lost, elsewhere, refused };

Problem problem_of(NotKept why);

}  // namespace hemline
