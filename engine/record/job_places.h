// Index of where things are in the lists of a job that is being folded.
#pragma once

#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "engine/record/job.h"
#include "engine/record/places.h"

namespace hemline {

using PieceKey = std::pair<TrimRole, int>;
/// Id of the step, piece, and by whom where everybody answers for himself.
using StepKey = std::tuple<std::string, int, std::string>;

struct EdgePlaces {
    Places<PieceKey> cut;
    std::multimap<EventId, PieceKey> cut_by;
    Places<StepKey> steps;
};

struct JobPlaces {
    explicit JobPlaces(const Job& job);

    std::vector<EdgePlaces> edges;
    Places<EventId> offcuts;  ///< by what left them
    Places<std::pair<std::string, TrimRole>> supplies;
    std::map<EventId, std::size_t> gates;
    std::set<std::size_t> picked;  ///< edges that a picked plan divides, nothing cut yet
    /// Not on the job in the end: they do not count against the most edges a job can hold.
    std::set<std::string> taken_off;
    std::size_t edges_kept = 0;  ///< that are not
    std::set<std::string> edges_left_out;
    std::string first_left_out;

    /// A rule may have changed: if it divides runs, those picked and not begun are divided again.
    void divide_anew(Job& job, const Practice& before);
    /// Takes what is gone out of the job's lists.
    void sweep(Job& job);
};

/// The key of a cut's piece: all numbers longer than any run share a key.
PieceKey key_of(TrimRole role, int piece);
StepKey key_of(const StepSaid& step, const std::string& by);

}  // namespace hemline
