// What to write to settle a disagreement.
#pragma once

#include <span>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct Job;

/// An event to write, and what it supersedes besides what was seen of its thing.
struct ToWrite {
    Fact fact;
    std::vector<EventId> supersedes;
};

/// What to write so that of a disagreement only `chosen` stands, which is a side or what a side
/// says. An edge that is back is kept by choosing what was done for it. Problem: `chosen` is in no
/// disagreement, or its number stands for two events (then measure again).
Result<ToWrite> pick(const Job& job, std::span<const Event> events, EventId chosen);

/// What to write so that the notice about that number goes away. Problem: there is no such notice.
Result<ToWrite> put_away(const Job& job, EventId number);

}  // namespace hemline
