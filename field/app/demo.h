// The demo roof: an invented house whose edges a newcomer can read, cut and fit.
#pragma once

#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/result.h"

namespace hemline {

struct DemoRoof {
    std::string name;
    std::vector<Edge> edges;  ///< with no readings: those the newcomer takes
};

/// Reads the demo's readings file from the assets. Problem: names what is wrong in it.
Result<DemoRoof> read_demo(const Catalogue& catalogue);
/// What a journal of it begins with.
std::vector<Fact> facts_of(const DemoRoof& demo);

}  // namespace hemline
