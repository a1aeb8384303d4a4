// Templates of a piece's ends at full size as a printable HTML page, tiled over sheets of paper.
//
//      ┌──────────────────────────┐
//      │ job · day    page 1 of 3 │   each sheet has its head and its
//      │ title     ▬▬▬▬▬ 4 in     │   check bars; sheets overlap, and the
//      │           ▬▬▬▬▬ 100 mm   │   crosses at the overlap are laid on
//      │ +                      + │   one another
//      │      (part of the end)   │
//      │ +                      + │
//      └──────────────────────────┘
#pragma once

#include <string>
#include <vector>

#include "engine/handover/drawing.h"
#include "engine/handover/page_words.h"
#include "engine/handover/paper.h"

namespace hemline {

/// An HTML document; every drawing is tiled over as many sheets as show some of its metal, at scale
/// 1:1. Prints right at 100 % only: measure the check bars, 4 in and 100 mm.
std::string template_page(const std::vector<Drawing>& ends, const std::string& title,
                          const PaperHead& head, Paper paper, const PageWords& words = {});

}  // namespace hemline
