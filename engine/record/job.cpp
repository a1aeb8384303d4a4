#include "engine/record/job.h"

#include <algorithm>
#include <utility>

#include "engine/record/edge_back.h"
#include "engine/record/event.h"
#include "engine/record/fold.h"
#include "engine/record/job_places.h"
#include "engine/record/standing.h"

namespace hemline {
namespace {

void find_places_of_edges(Job& job) {
    job.places_of_edges.clear();
    for (std::size_t place = 0; place < job.edges.size(); ++place) {
        job.places_of_edges.emplace(job.edges[place].edge.id, place);
    }
}

void drop_taken_off(Job& job) {
    const std::set<std::string> with_metal = edges_with_metal(job);
    const auto is_gone = [&](const EdgeWork& work) {
        const auto is_edge = [](const Undecided& one) {
            return one.thing.subject == Subject::edge;
        };
        return work.taken_off && with_metal.count(work.edge.id) == 0 &&
               std::none_of(work.undecided.begin(), work.undecided.end(), is_edge);
    };
    job.edges.erase(std::remove_if(job.edges.begin(), job.edges.end(), is_gone), job.edges.end());
    find_places_of_edges(job);
}

/// Tells each edge what it waits for. Of the rules one is enough to hold them all.
void hold_edges(Job& job) {
    std::map<std::string, EdgeWork*> by_id;
    for (EdgeWork& work : job.edges) {
        by_id[work.edge.id] = &work;
    }
    const auto hold = [&](const std::string& edge, const Conflict& conflict) {
        if (const auto found = by_id.find(edge); found != by_id.end()) {
            found->second->undecided.push_back({conflict.thing, conflict.what()});
        }
    };
    const Conflict* rule = nullptr;
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.thing.subject == Subject::rule) {
            rule = rule == nullptr ? &conflict : rule;
        } else if (conflict.thing.subject == Subject::plan) {
            for (const std::string& edge : conflict.edges) {
                hold(edge, conflict);
            }
        } else if (is_on_edge(conflict.thing)) {
            hold(conflict.thing.name, conflict);
        }
    }
    for (EdgeWork& work : job.edges) {
        if (rule != nullptr) {
            work.undecided.push_back({rule->thing, rule->what()});
        }
    }
}

}  // namespace

bool has_metal(const Job& job, const EdgeWork& work) {
    const auto of_it = [&](const auto& metal) { return metal.edge == work.edge.id; };
    return !work.cut.empty() || work.spoiled > 0 ||
           std::any_of(job.offcuts.begin(), job.offcuts.end(), of_it);
}

std::set<std::string> edges_with_metal(const Job& job) {
    std::set<std::string> edges;
    for (const EdgeWork& work : job.edges) {
        if (!work.cut.empty() || work.spoiled > 0) {
            edges.insert(work.edge.id);
        }
    }
    for (const Offcut& offcut : job.offcuts) {
        edges.insert(offcut.edge);
    }
    return edges;
}

const EdgeWork* Job::find(std::string_view edge) const {
    const auto place = places_of_edges.find(edge);
    if (place != places_of_edges.end() && place->second < edges.size() &&
        edges[place->second].edge.id == edge) {
        return &edges[place->second];
    }
    if (places_of_edges.size() == edges.size()) {
        return nullptr;
    }
    // Put together by hand, as a test does.
    const auto found = std::find_if(edges.begin(), edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == edges.end() ? nullptr : &*found;
}

void apply(Job& job, const Event& event) {
    JobPlaces places(job);
    fold_in(job, places, event);
    places.sweep(job);
}

Edge said_anew(const EdgeWork& work, Edge edge) {
    edge.pitch = work.added.pitch;
    edge.looks = work.added.looks;
    return edge;
}

Job replay(std::span<const Event> events, const Practice& practice) {
    Job job;
    job.practice = practice;
    Standing standing = standing_of(events);
    job.struck = std::move(standing.struck);
    job.spoiled_cuts = std::move(standing.spoiled_cuts);
    job.spare_cuts = std::move(standing.spare_cuts);
    job.settling = std::move(standing.settling);
    job.conflicts = std::move(standing.conflicts);
    JobPlaces places(job);
    places.taken_off = edges_that_go(job, events);
    for (const Event& event : events) {
        if (!struck_by(event.fact)) {  // those that count are heard
            fold_in(job, places, event);
        }
    }
    places.sweep(job);
    add_edges_back(job, events);
    hold_edges(job);
    drop_taken_off(job);
    return job;
}

}  // namespace hemline
