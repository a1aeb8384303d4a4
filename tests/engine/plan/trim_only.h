// Plans of the trim alone.
#pragma once

#include "engine/plan/make_plan.h"

namespace hemline {

inline const PlanOptions trim_only{false, false, {}};

}  // namespace hemline
