// Templates of a piece's ends at full size as one printable HTML page, tiled over sheets of paper.
//
//      ┌──────────────────────────┐
//      │ title     ▬▬▬▬▬ 4 in     │   each sheet has its check bars;
//      │           ▬▬▬▬▬ 100 mm   │   sheets overlap, and the crosses at the
//      │ +                      + │   overlap are laid on one another
//      │      (part of the end)   │
//      │ +                      + │
//      └──────────────────────────┘
#pragma once

#include <string>
#include <vector>

#include "engine/handover/drawing.h"
#include "engine/handover/page_words.h"

namespace hemline {

enum class Paper { letter, a4 };

/// One HTML document; every drawing is tiled over as many sheets as it needs, at scale 1:1. Prints
/// right at 100 % only: the check bars, 4 in and 100 mm, are there to be measured.
std::string template_page(const std::vector<Drawing>& ends, const std::string& title, Paper paper,
                          const PageWords& words = {});

}  // namespace hemline
