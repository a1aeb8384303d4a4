// What to write so that a conflict is settled.
#pragma once

#include <span>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result.h"

namespace hemline {

struct Job;

/// An event to write, and what it supersedes besides what was seen of its thing.
struct ToWrite {
    Fact fact;
    std::vector<EventId> supersedes;
};

/// What to write so that of a conflict only `chosen` stands, which is a side or what a side says;
/// an edge that is back stays by what was done for it. Problem: it is in no conflict, or its number
/// stands for two events (measure again, then).
Result<ToWrite> pick(const Job& job, std::span<const Event> events, EventId chosen);

/// What to write so that the notice of that number goes. Problem: there is none.
Result<ToWrite> put_away(const Job& job, EventId number);

}  // namespace hemline
