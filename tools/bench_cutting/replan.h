// How long the plan takes after each event on a roof of seventy edges.
#pragma once

namespace hemline {

/// Plans an invented roof again after readings, cuts, spoiled pieces and offcuts, in each style of
/// planning; prints medians. False when a median is over 16 ms.
bool time_replans();

}  // namespace hemline
