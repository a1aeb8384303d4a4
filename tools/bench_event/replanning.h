// How long a roof takes to be folded and planned again after each of its events.
#pragma once

#include <vector>

#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"
#include "tools/bench_event/figures.h"

namespace hemline {

/// An invented roof: eaves of many ends, `wrap` on every seventh.
std::vector<Edge> invented_edges(int count);

/// Reads each edge twice and its pitch, then cuts every piece as planned, the last of each run
/// after its remainder; after each event all that was written so far is replayed and planned from
/// scratch, as the app does. The processor's times of those.
Times replan_after_each_event(const std::vector<Edge>& edges, const Catalogue& catalogue,
                              const Practice& practice);

}  // namespace hemline
