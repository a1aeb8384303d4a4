// Where the program was left, and what was half keyed in: there, and at places left before.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "field/state/drafts.h"
#include "field/state/where.h"

namespace hemline {

struct LeftAt {
    std::string job;  ///< the folder of the one that was open; empty: none
    Where where;
    Drafts drafts;
};

constexpr std::size_t aside_most = 64;

struct LeftOff : LeftAt {
    /// What waits elsewhere, the latest last; of no job where the screen needs none.
    std::vector<LeftAt> aside;
};

/// The screens that are shown without a job.
constexpr bool needs_job(Screen screen) {
    return screen != Screen::jobs && screen != Screen::person && screen != Screen::tablet &&
           screen != Screen::calibrate && screen != Screen::notices;
}

}  // namespace hemline
