// Which trim goes on an edge, in words: of gable and sidewall one lies under the panels, the other
// over them.
#pragma once

#include "engine/work/edge_change.h"

namespace hemline {

/// Where the trim lies, where that is a choice, with its name where the choice is wider.
Text trim_words(const Trim& trim, EdgeKind kind, const Catalogue& catalogue);
/// What helps to choose between under and over; empty where there is no such choice.
Text under_or_over(const Edge& edge, const Catalogue& catalogue);

}  // namespace hemline
