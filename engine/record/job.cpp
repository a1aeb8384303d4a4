#include "engine/record/job.h"

#include <algorithm>
#include <utility>

#include "engine/record/body_pitch.h"
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

/// Tells each edge what it waits for. A disagreement about any rule holds up every edge.
void hold_edges(Job& job) {
    std::map<std::string, EdgeWork*> by_id;
    for (EdgeWork& work : job.edges) {
        by_id[work.edge.id] = &work;
    }
    const auto hold = [&](const std::string& edge, const Thing& thing, const Text& what) {
        if (const auto found = by_id.find(edge); found != by_id.end()) {
            found->second->undecided.push_back({thing, what});
        }
    };
    const Conflict* rule = nullptr;
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.thing.subject == Subject::rule) {
            rule = rule == nullptr ? &conflict : rule;
        } else if (conflict.thing.subject == Subject::plan) {
            const Text what = conflict.what();
            for (const std::string& edge : conflict.edges) {
                hold(edge, conflict.thing, what);
            }
        } else if (is_on_edge(conflict.thing)) {
            hold(conflict.thing.name, conflict.thing, conflict.what());
        }
    }
    for (EdgeWork& work : job.edges) {
        if (rule != nullptr) {
            work.undecided.push_back({rule->thing, rule->what()});
        }
    }
}

bool stands(const KeptGate& gate) { return !gate.lifted && !noes_in(gate).empty(); }

/// Tells each edge who said no to it, or to the whole roof: that goes first.
void hold_by_gates(Job& job) {
    std::optional<SaidNo> to_all;
    std::map<std::string, std::optional<SaidNo>> to_one;
    for (const KeptGate& gate : job.gates) {
        if (stands(gate)) {
            (gate.edge.empty() ? to_all : to_one[gate.edge]) = SaidNo{gate.by, noes_in(gate)};
        }
    }
    for (EdgeWork& work : job.edges) {
        const auto one = to_one.find(work.edge.id);
        work.said_no = to_all || one == to_one.end() ? to_all : one->second;
    }
}

}  // namespace

std::vector<GateCheck> noes_in(const KeptGate& gate) {
    std::vector<GateCheck> noes;
    for (const GateFound& found : gate.found) {
        if (found.finding != Finding::good) {
            noes.push_back(found.check);
        }
    }
    return noes;
}

std::vector<EventId> noes_on(const Job& job, std::string_view edge) {
    std::vector<EventId> noes;
    for (const KeptGate& gate : job.gates) {
        if (stands(gate) && (gate.edge.empty() || gate.edge == edge) &&
            noes.size() < event_noes_most) {
            noes.push_back(gate.id);
        }
    }
    return noes;
}

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
    edge.first = edge.first == work.edge.first ? work.added.first : edge.first;
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
        if (!struck_by(event.fact)) {  // strikes that count are in `struck`
            fold_in(job, places, event);
        }
    }
    places.sweep(job);
    add_edges_back(job, events);
    hold_edges(job);
    hold_by_gates(job);
    drop_taken_off(job);
    share_pitches(job);
    return job;
}

}  // namespace hemline
