// Whether two events are the same, field by field: not by their bytes, so that a field left out of
// both writing and reading is missed by neither.
#pragma once

#include <algorithm>
#include <vector>

#include "engine/record/event.h"

namespace hemline {

inline bool same_event(const Event& a, const Event& b) { return a == b; }

inline bool same_events(const std::vector<Event>& a, const std::vector<Event>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same_event);
}

}  // namespace hemline
