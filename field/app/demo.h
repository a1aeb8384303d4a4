// The demo roof: an invented house whose edges a newcomer can read, cut and fit.
#pragma once

#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct DemoRoof {
    std::string name;
    std::vector<Edge> edges;  ///< with no readings: the newcomer takes them
    std::vector<WalkedBody> bodies;
    std::vector<EdgePlaced> places;  ///< of the edges that are not the walks' own
};

/// Reads the demo's readings and walks from the assets. Problem: names what is wrong in them.
Result<DemoRoof> read_demo(const Catalogue& catalogue);
/// The first events of its journal.
std::vector<Fact> facts_of(const DemoRoof& demo);

}  // namespace hemline
