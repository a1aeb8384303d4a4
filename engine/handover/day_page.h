// The day sheet as a printable HTML page.
#pragma once

#include <functional>
#include <string>

#include "engine/handover/page_words.h"
#include "engine/handover/paper.h"
#include "engine/work/day_sheet.h"

namespace hemline {

/// `day`: its name for people; `clock`: the time of day as the crew's clocks show it; `names`: what
/// the crew calls steps and trims.
std::string day_page(const DaySheet& sheet, const Text& day, Paper paper,
                     const std::function<std::string(WallTime)>& clock, const Names& names = {},
                     const PageWords& words = {});

}  // namespace hemline
