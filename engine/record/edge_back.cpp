#include "engine/record/edge_back.h"

#include <algorithm>
#include <map>
#include <set>

#include "engine/record/about_thing.h"

namespace hemline {
namespace {

bool is_of_metal(const Fact& fact) {
    return std::holds_alternative<PieceCut>(fact) || std::holds_alternative<PieceSpoiled>(fact) ||
           std::holds_alternative<MetalCounted>(fact) ||
           std::holds_alternative<StickMeasured>(fact);
}

/// What was done last with metal for each edge; a cut that stands goes before anything else.
std::map<std::string, EventId> metal_for(const Job& job, std::span<const Event> events) {
    std::map<std::string, EventId> last;
    for (const Event& event : events) {
        if (is_of_metal(event.fact) && job.struck.count(event.id) == 0) {
            last[edge_in(event.fact)] = event.id;
        }
    }
    for (const EdgeWork& work : job.edges) {
        if (!work.cut.empty()) {
            last[work.edge.id] = work.cut.back().id;
        }
    }
    return last;
}

/// Whether they are on the job at all.
std::set<std::string> edges_undecided(const Job& job) {
    std::set<std::string> undecided;
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.thing.subject == Subject::edge) {
            undecided.insert(conflict.thing.name);
        }
    }
    return undecided;
}

}  // namespace

std::set<std::string> edges_that_go(const Job& job, std::span<const Event> events) {
    std::set<std::string> gone, stay = edges_undecided(job);
    for (const Event& event : events) {
        if (is_of_metal(event.fact)) {
            stay.insert(edge_in(event.fact));
        }
        if (job.struck.count(event.id) > 0) {
            continue;
        }
        if (const auto* const off = std::get_if<EdgeTakenOff>(&event.fact)) {
            gone.insert(off->edge);
        } else if (const auto* const added = std::get_if<EdgeAdded>(&event.fact)) {
            gone.erase(added->edge.id);
        }
    }
    for (const std::string& edge : stay) {
        gone.erase(edge);
    }
    return gone;
}

void add_edges_back(Job& job, std::span<const Event> events) {
    std::vector<const EdgeWork*> back;
    const std::set<std::string> with_metal = edges_with_metal(job);
    for (const EdgeWork& work : job.edges) {
        if (work.taken_off && with_metal.count(work.edge.id) > 0) {
            back.push_back(&work);
        }
    }
    if (back.empty()) {
        return;
    }
    const std::set<std::string> undecided = edges_undecided(job);
    const std::map<std::string, EventId> metal = metal_for(job, events);
    for (const EdgeWork* const work : back) {
        const auto done = metal.find(work->edge.id);
        if (undecided.count(work->edge.id) > 0 || done == metal.end()) {
            continue;
        }
        Conflict conflict;
        conflict.apart = Apart::edge_back;
        conflict.thing.subject = Subject::edge;
        conflict.thing.name = work->edge.id;
        if (!work->cut.empty()) {
            conflict.thing.role = work->cut.back().role;
            conflict.thing.piece = work->cut.back().piece;
        }
        conflict.sides = {{*work->taken_off, *work->taken_off}, {done->second, done->second}};
        job.conflicts.push_back(std::move(conflict));
    }
}

}  // namespace hemline
