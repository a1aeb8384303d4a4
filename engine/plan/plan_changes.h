// What a new plan changed of the plan before, for the crew who know the old plan.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/trim/catalogue.h"

namespace hemline {

struct Job;
struct Plan;

/// A piece still to cut whose cut length changed, or that came or went.
struct PieceChange {
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    std::optional<Length> before, after;
};

/// The changes of runs that are in both plans; a new run is not a change.
std::vector<PieceChange> changes_between(const Plan& before, const Plan& after);

/// Sticks of the whole job: those opened and those still to open.
std::int64_t sticks_in_all(const Job& job, const Plan& plan);

/// "Eave piece A/3: 9 ft 11 in, not 10 ft.": a sentence.
Text describe(const PieceChange& change);

}  // namespace hemline
