// Records that no crew writes but any file may hold: each event is valid by itself, there are far
// too many of them, or what they say is past any roof.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/record/event.h"

namespace hemline {

/// A record written by a single device, one event every millisecond.
class HostileRecord {
  public:
    explicit HostileRecord(std::uint64_t device = 0x1111) : device_(device) {
        add(JobStarted{"Invented house", "common practice"});
    }

    EventId add(Fact fact, std::vector<EventId> supersedes = {}) {
        return add_as({device_, static_cast<std::uint32_t>(events.size() + 1)}, std::move(fact),
                      std::move(supersedes));
    }
    /// By a tablet and under a number that another event may have too.
    EventId add_as(EventId id, Fact fact, std::vector<EventId> supersedes = {}) {
        Event event;
        event.id = id;
        event.when.wall_ms = 1'700'000'000'001 + static_cast<std::int64_t>(events.size());
        event.by = "Ada";
        event.supersedes = std::move(supersedes);
        event.fact = std::move(fact);
        events.push_back(std::move(event));
        return events.back().id;
    }
    /// An eave between gables, with its pitch.
    void eave(const std::string& id, const std::string& metal = "") {
        Edge edge;
        edge.id = id;
        edge.left = edge.right = End::gable;
        edge.pitch = rise_in_12(5);
        edge.metal = metal;
        edge.looks = Looks::free;
        add(EdgeAdded{edge});
    }
    EventId read(const std::string& edge, Length length, std::vector<EventId> supersedes = {}) {
        return add(ReadingTaken{edge, ReadingOf::edge, length}, std::move(supersedes));
    }
    /// The same, read twice.
    void eave_read(const std::string& id, Length length, const std::string& metal = "") {
        eave(id, metal);
        const EventId first = read(id, length);
        read(id, length, {first});
    }
    /// Four eaves, read.
    void house() {
        for (int i = 0; i < 4; ++i) {
            eave_read(std::string(1, static_cast<char>('A' + i)), feet(46) + i * feet(3));
        }
    }

    std::vector<Event> events;

  private:
    std::uint64_t device_;
};

using HostileEvents = std::vector<Event>;

/// An edge read so often, every reading a foot from the reading before.
inline HostileEvents readings_of_one_edge(int many) {
    HostileRecord record;
    record.eave("A");
    std::vector<EventId> last;
    for (int i = 0; i < many; ++i) {
        // Two feet come round again after 700 m, never at the same place.
        last = {record.read("A", feet(30) + (i % 2000) * feet(1) + nanometres(i), last)};
    }
    return record.events;
}
inline HostileEvents same_reading_again(int many) {
    HostileRecord record;
    record.eave("A");
    std::vector<EventId> last;
    for (int i = 0; i < many; ++i) {
        last = {record.read("A", feet(30), last)};
    }
    return record.events;
}
/// Each reading settles the two before.
inline HostileEvents readings_that_settle(int many) {
    HostileRecord record;
    record.eave("A");
    std::vector<EventId> last;
    for (int i = 0; i < many; ++i) {
        last.push_back(record.read("A", feet(30) + nanometres(i), last));
        if (last.size() > 2) {
            last.erase(last.begin());
        }
    }
    return record.events;
}
inline HostileEvents stock_lengths(int many) {
    HostileRecord record;
    record.house();
    StockChosen stock;
    for (int i = 0; i < many; ++i) {
        stock.lengths.push_back(feet(10) - nanometres(i) * 1000);
    }
    record.add(stock);
    return record.events;
}
inline HostileEvents legs_of_one_section(int many) {
    HostileRecord record;
    record.house();
    record.add(SectionChosen{"eave_rolled", std::vector<LegChosen>(static_cast<std::size_t>(many),
                                                                   {inches(1), Hem::none, {}})});
    return record.events;
}
inline HostileEvents many_sections(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add(SectionChosen{"trim " + std::to_string(i), {{inches(1), Hem::none, {}}}});
    }
    return record.events;
}
inline HostileEvents many_edges(int many) {
    HostileRecord record;
    for (int i = 0; i < many; ++i) {
        record.eave_read("E" + std::to_string(i), feet(46) + i * sixteenths(1));
    }
    return record.events;
}
/// Names that differ in their last letters only, each edge a separate pool.
inline HostileEvents many_pools(int many) {
    HostileRecord record;
    for (int i = 0; i < many; ++i) {
        const std::string name = std::string(1000, 'm') + std::to_string(i);
        record.eave_read(name, feet(6) + i * sixteenths(1), name);
    }
    return record.events;
}
inline HostileEvents one_edge_again(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.eave("A");
    }
    return record.events;
}
inline HostileEvents edges_taken_off(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.eave("E" + std::to_string(i));
        record.add(EdgeTakenOff{"E" + std::to_string(i)});
    }
    for (int i = 0; i < many; ++i) {
        record.add(MetalCounted{"A", TrimRole::main, inches(10), 1});
    }
    return record.events;
}
/// Offcuts of as many lengths.
inline HostileEvents offcuts_counted(int many, std::int64_t of_each) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add(MetalCounted{"A", TrimRole::main, feet(9) + nanometres(i) * 1000, of_each});
    }
    return record.events;
}
/// As many sticks opened, and as many pieces cut from what they left, the first stick first.
inline HostileEvents offcuts_used_up(int many) {
    HostileRecord record;
    record.house();
    std::vector<EventId> cuts;
    for (int i = 0; i < many; ++i) {
        cuts.push_back(
            record.add(PieceCut{"A", TrimRole::main, 1 + i % 4, feet(1), {feet(10), {}}}));
    }
    for (int i = 0; i < many; ++i) {
        record.add(PieceCut{"A",
                            TrimRole::main,
                            1 + i % 4,
                            feet(1),
                            {feet(10), cuts[static_cast<std::size_t>(i)]}});
    }
    return record.events;
}
inline HostileEvents pieces_cut(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add(PieceCut{"A", TrimRole::main, 1 + i, feet(1), {feet(10), {}}});
    }
    return record.events;
}
inline HostileEvents pieces_spoiled(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        const EventId cut =
            record.add(PieceCut{"A", TrimRole::main, 1 + i % 900, feet(1), {feet(10), {}}});
        record.add(PieceSpoiled{"A", TrimRole::main, 1 + i % 900, feet(1), {feet(10), {}}}, {cut});
    }
    return record.events;
}
/// Steps that no procedure has, each noted by another name.
inline HostileEvents steps_ticked(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        StepDone step;
        step.edge = "A";
        step.step = "step " + std::to_string(i);
        step.piece = i % 300;
        step.exception = "for no reason";
        step.exception_by = "person " + std::to_string(i);
        record.add(step);
    }
    return record.events;
}
inline HostileEvents one_step_of_many_pieces(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        StepDone step;
        step.edge = "A";
        step.step = "fasten";
        step.piece = i;
        record.add(step);
    }
    return record.events;
}
inline HostileEvents rules_set(int many) {
    HostileRecord record;
    for (int i = 0; i < 1000; ++i) {
        record.eave("E" + std::to_string(i));
    }
    for (int i = 0; i < many; ++i) {
        record.add(RuleSet{"lap", std::to_string(6 + i % 2) + " in"});
    }
    return record.events;
}
inline HostileEvents rules_unknown(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add(RuleSet{"rule " + std::to_string(i), "1 in"});
    }
    return record.events;
}
inline HostileEvents job_started_again(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add(JobStarted{"house " + std::to_string(i), ""});
    }
    return record.events;
}
/// Plans picked, each of a run for every edge, many times over.
inline HostileEvents plans_picked(int many, int runs) {
    HostileRecord record;
    for (int i = 0; i < 1000; ++i) {
        record.eave("E" + std::to_string(i));
    }
    PlanChosen plan;
    for (int i = 0; i < runs; ++i) {
        plan.runs.push_back({"E" + std::to_string(i % 1000), TrimRole::main, {feet(10)}});
    }
    for (int i = 0; i < many; ++i) {
        record.add(plan);
    }
    return record.events;
}
inline HostileEvents cuts_of_one_run(int many) {
    HostileRecord record;
    record.house();
    PlanChosen plan;
    plan.runs.push_back(
        {"A", TrimRole::main, std::vector<Length>(static_cast<std::size_t>(many), inches(1))});
    record.add(plan);
    return record.events;
}
/// Supply is reported so often for a single edge, on a roof with as many pools as edges.
inline HostileEvents supplies_said(int many) {
    HostileRecord record;
    for (int i = 0; i < 500; ++i) {
        record.eave_read("E" + std::to_string(i), feet(6), "metal " + std::to_string(i));
    }
    for (int i = 0; i < many; ++i) {
        record.add(SupplyChosen{"E0", TrimRole::main, static_cast<Supply>(i % 2)});
    }
    return record.events;
}
/// Rules on which two tablets disagree, and edges added on both.
inline HostileEvents made_apart(int rules, int edges) {
    HostileRecord ada(0x1111), ben(0x2222);
    for (int i = 0; i < edges; ++i) {
        const std::string id = "E" + std::to_string(i);
        ada.eave_read(id, feet(20));
        ben.eave_read(id, feet(21), "another metal");
    }
    for (int i = 0; i < rules; ++i) {
        ada.add(RuleSet{"rule " + std::to_string(i), "1 in"});
        ben.add(RuleSet{"rule " + std::to_string(i), "2 in"});
    }
    ada.events.insert(ada.events.end(), ben.events.begin(), ben.events.end());
    return ada.events;
}
/// A number that stands for as many cuts of a piece, and as many tablets that lost it.
inline HostileEvents copies_of_one_cut(int many) {
    HostileRecord record;
    record.house();
    const EventId cut{0x2222, 1};
    for (int i = 0; i < many; ++i) {
        record.add_as(cut,
                      PieceCut{"A", TrimRole::main, 1, feet(5) + nanometres(i), {feet(10), {}}});
    }
    for (int i = 0; i < many; ++i) {
        record.add_as({0x3333 + static_cast<std::uint64_t>(i), 1},
                      PieceSpoiled{"A", TrimRole::main, 1, feet(5), {feet(10), {}}}, {cut});
    }
    return record.events;
}
/// Two numbers, each of as many readings, in turn.
inline HostileEvents copies_of_two_readings(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        for (const std::uint64_t device : {0x2222U, 0x3333U}) {
            record.add_as({device, 1}, ReadingTaken{"A", ReadingOf::edge,
                                                    feet(static_cast<std::int64_t>(device % 99)) +
                                                        nanometres(i)});
        }
    }
    return record.events;
}
/// The same number and the same time for as many events.
inline HostileEvents one_moment_again(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        record.add_as({0x2222, 1}, RuleSet{"rule " + std::to_string(i), "1 in"});
        record.events.back().when.wall_ms = 1'800'000'000'000;
    }
    return record.events;
}
/// As many edges, each taken off on one tablet while metal is counted for it on another.
inline HostileEvents edges_back(int many) {
    HostileRecord record;
    record.house();
    for (int i = 0; i < many; ++i) {
        const std::string id = "E" + std::to_string(i);
        record.eave(id);
        record.add(EdgeTakenOff{id});
        record.add_as({0x2222, static_cast<std::uint32_t>(i + 1)},
                      MetalCounted{id, TrimRole::main, feet(9), 1});
    }
    return record.events;
}
/// Readings of as many tablets, none of which had seen another, and a pick by each of them.
inline HostileEvents readings_picked_apart(int many) {
    HostileRecord record;
    record.house();
    std::vector<EventId> readings;
    for (int i = 0; i < many; ++i) {
        readings.push_back(record.add_as({0x2222 + static_cast<std::uint64_t>(i), 1},
                                         ReadingTaken{"A", ReadingOf::edge, feet(30 + i % 9)}));
    }
    Thing about;
    about.subject = Subject::reading;
    about.name = "A";
    for (std::size_t i = 0; i + 1 < readings.size(); ++i) {
        record.add_as({readings[i].device, 2}, Picked{readings[i], about},
                      {readings[i], readings[i + 1]});
    }
    return record.events;
}
/// As many picks of plans that disagree, each for as many runs of the same edges.
inline HostileEvents plans_apart(int many, int runs) {
    HostileRecord record;
    for (int i = 0; i < runs; ++i) {
        record.eave("E" + std::to_string(i));
    }
    for (int i = 0; i < many; ++i) {
        for (const int side : {0, 1}) {
            PlanChosen plan;
            plan.trim = "trim " + std::to_string(i);
            for (int run = 0; run < runs; ++run) {
                plan.runs.push_back(
                    {"E" + std::to_string(run), TrimRole::main, {feet(9) + side * inches(1)}});
            }
            record.add_as(
                {0x2222 + static_cast<std::uint64_t>(side), static_cast<std::uint32_t>(i + 1)},
                plan);
            record.events.back().moment = Moment{{1'700'000'000'000}, {}};
        }
    }
    return record.events;
}
/// Screws and seams as close as a nanometer, on sticks as long as a street.
inline HostileEvents spacing_of_nothing() {
    HostileRecord record;
    record.house();
    for (const char* rule : {"screw_spacing", "seam_spacing", "cut_grid"}) {
        record.add(RuleSet{rule, "0.000001 mm"});
    }
    record.add(RuleSet{"stock", "990 m"});
    record.add(StockChosen{{millimetres(990'000)}});
    return record.events;
}
/// As many runs of a thousand pieces.
inline HostileEvents pieces_planned(int edges) {
    HostileRecord record;
    record.add(RuleSet{"sliver", "0 in"});
    for (int i = 0; i < edges; ++i) {
        record.eave_read("E" + std::to_string(i), millimetres(900'000) + i * inches(1));
    }
    record.add(RuleSet{"stock", "5 ft"});
    return record.events;
}

}  // namespace hemline
