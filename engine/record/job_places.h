// Where everything stands in the lists of a job that is being folded.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "engine/record/job.h"
#include "engine/record/places.h"

namespace hemline {

using PieceKey = std::pair<TrimRole, int>;
using StepKey = std::pair<std::string, int>;  ///< id of the step, and piece

struct EdgePlaces {
    std::multimap<EventId, ReadingOf> readings;
    Places<PieceKey> cut;
    std::multimap<EventId, PieceKey> cut_by;
    Places<StepKey> steps;
};

struct JobPlaces {
    explicit JobPlaces(const Job& job);

    std::vector<EdgePlaces> edges;
    Places<EventId> offcuts;  ///< by what left them
    Places<std::pair<std::string, TrimRole>> supplies;
    std::set<std::size_t> picked;  ///< edges that a plan picked divides, and none of whose is cut
    /// Taken off in the end: they take no other edge's place.
    std::set<std::string> taken_off;
    std::size_t edges_kept = 0;  ///< that are not
    std::set<std::string> edges_left_out;
    std::string first_left_out;

    /// Takes what is gone out of the job's lists.
    void sweep(Job& job);
};

/// The key of a cut's piece: all numbers past any run are one.
PieceKey key_of(TrimRole role, int piece);

}  // namespace hemline
