// What a certificate says the job is, with equal lengths and equal sticks joined.
#pragma once

#include <map>

#include "tests/certificate/reader.h"

namespace certificate {

/// Pieces of the same length. `size`: length and one kerf.
struct Kind {
    Int size = 0, count = 0, worth = 0;
};

/// Sticks of the same length, on hand or not. `room`: length and one kerf.
struct Sticks {
    Int room = 0, supply = 0;
    bool unlimited = false, on_hand = false;
    Int holds_at_most = 0;
};

struct Task {
    std::vector<Kind> kinds;  ///< longest first
    std::vector<Sticks> sticks;
    Int kerf = 0, share = 0;
};

/// Throws nlohmann::json::exception where something is missing.
Task task_of(const nlohmann::json& certificate);

/// The most worth that a stick with this room can hold.
Int most_worth(const Task& task, Int room);

/// What a search for a plan from at most so many new sticks came to.
enum class Searched { no_plan, plan, not_finished };
Searched search_again(const Task& task, Int new_sticks, Int steps_most);

}  // namespace certificate
