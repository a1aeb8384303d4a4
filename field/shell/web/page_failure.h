// Why the page did not keep something: for each kind what is wrong and what to do.
#pragma once

#include "engine/words/result_declared.h"

namespace hemline {

/// The numbers of not_kept.js; 0: it is kept.
enum class NotKept { nothing, full, lost, elsewhere, refused };

Problem problem_of(NotKept why);

}  // namespace hemline
