// The demo roof: an invented house whose edges a newcomer can read, cut and fit.
#pragma once

#include <string>
#include <vector>

#include "engine/roof/edge.h"
#include "engine/words/result.h"
#include "field/store/assets.h"

namespace hemline {

struct DemoRoof {
    std::string name;
    std::vector<Edge> edges;  ///< with no readings: those the newcomer takes
};

/// Reads the demo's readings file from the assets. Problem: names what is wrong in it.
Result<DemoRoof> read_demo(const Assets& assets);

}  // namespace hemline
