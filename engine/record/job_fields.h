// What is decided for the whole job: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/job_facts.h"

namespace hemline {

template <class Bytes>
void fields(Bytes& bytes, JobStarted& fact) {
    bytes.text("name", fact.name);
    bytes.text("practice", fact.practice);
}

template <class Bytes>
void fields(Bytes& bytes, RuleSet& fact) {
    bytes.text("rule", fact.key);
    bytes.text("value", fact.value);
}

template <class Bytes>
void fields(Bytes& bytes, RunChosen& run) {
    bytes.text("edge", run.edge);
    bytes.choice("role", run.role, TrimRole::cleat);
    lengths(bytes, "cuts", run.cuts, AtMost<event_cuts_most>());
}

template <class Bytes>
void fields(Bytes& bytes, PlanChosen& fact) {
    bytes.choice("prefer", fact.prefer, Prefer::sticks);
    bytes.text("trim", fact.trim);
    bytes.number("extra laps", fact.extra_laps, std::int64_t{0}, count_most);
    bytes.number("unbalanced", fact.unbalanced, std::int64_t{0}, count_most);
    bytes.number("sticks", fact.sticks, std::int64_t{0}, count_most);
    // A run takes at least the size of its name, its role and its number of cuts.
    bytes.count("runs", fact.runs, 2 * sizeof(std::uint32_t) + 1, AtMost<event_runs_most>());
    for (RunChosen& run : fact.runs) {
        fields(bytes, run);
    }
}

template <class Bytes>
void fields(Bytes& bytes, StockChosen& fact) {
    lengths(bytes, "stock", fact.lengths, AtMost<event_stock_most>());
}

template <class Bytes>
void fields(Bytes& bytes, SectionChosen& fact) {
    bytes.text("trim", fact.trim);
    bytes.count("legs", fact.legs, sizeof(std::int64_t) + 2, AtMost<event_legs_most>());
    for (LegChosen& leg : fact.legs) {
        bytes.length("leg", leg.width);
        bytes.choice("hem", leg.hem, Hem::tear_drop);
        maybe(bytes, "bend", leg.bend,
              [&](Angle& bend) { fields(bytes, "bend", bend, -half_turn, half_turn); });
    }
}

}  // namespace hemline
