// Where tablets disagree, for people and programs: value, person, device and time of each side.
#pragma once

#include <span>
#include <string>

#include "engine/record/job.h"
#include "tools/cli/print.h"

namespace hemline {

/// `[{"edge", "about", "piece", "step", "what", "events": [{"id", "device", "by", "time", "value",
/// "length_nm", "picked", "said_by"}]}]`, keys only where they apply: for a side that somebody
/// picked, `id`, `by` and `time` are those of the pick, `picked` is the event that says the value.
Json conflicts_json(const Job& job, std::span<const Event> events, Marks marks);

/// A line for each disagreement and each of its sides; empty when there are none.
std::string conflicts_text(const Job& job, std::span<const Event> events, Marks marks);

}  // namespace hemline
