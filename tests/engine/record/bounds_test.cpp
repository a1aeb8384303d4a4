// How many a list in an event may hold: as many are read, one more is set aside by name and kept
// byte for byte, and merged as any frame is.
#include <doctest/doctest.h>

#include "engine/record/event_fields.h"
#include "engine/record/merge.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

Event event_with(Fact fact, std::size_t supersedes = 0) {
    Event event{{7, 1}, {1000, 0}, "Ada", {}, std::move(fact)};
    for (std::size_t i = 0; i < supersedes; ++i) {
        event.supersedes.push_back({8, static_cast<std::uint32_t>(i + 1)});
    }
    return event;
}

PlanChosen plan_with(std::size_t runs, std::size_t cuts) {
    PlanChosen plan;
    plan.runs.resize(runs);
    for (RunChosen& run : plan.runs) {
        run = {"A", TrimRole::main, std::vector<Length>(cuts, inches(12))};
    }
    return plan;
}

/// Why it is set aside; empty: it is read, and written back to the same bytes.
std::string refusal(const Event& event) {
    const Bytes frame = frame_of(event);
    const JournalRead read = read_journal(frame);
    if (read.set_aside.empty()) {
        CHECK(same_events(read.events, {event}));
        return {};
    }
    CHECK(read.events.empty());
    CHECK(read.whole_size == frame.size());
    Merge merge;
    merge.add(0, frame);
    merge.add(0, frame);
    CHECK(merge.journals().of_device == std::map<std::uint64_t, Bytes>{{7, frame}});
    return read.set_aside[0].why.english();
}

std::string refused(int kind, const std::string& why) {
    return "an event of kind " + std::to_string(kind) + " that this program cannot read (" + why +
           ")";
}

TEST_CASE("As many as a list may hold are read; one more is set aside by name, and kept") {
    const Fact tick = EdgeFinished{"A", ""};
    CHECK(refusal(event_with(tick, supersedes_most)).empty());
    CHECK(refusal(event_with(tick, supersedes_most + 1)) ==
          refused(10, "supersedes: more than 4096"));
    const auto legs = [](std::size_t count) {
        return event_with(SectionChosen{"ridge_cap", std::vector<LegChosen>(count)});
    };
    CHECK(refusal(legs(event_legs_most)).empty());
    CHECK(refusal(legs(event_legs_most + 1)) == refused(30, "legs: more than 64"));
    const auto stock = [](std::size_t count) {
        return event_with(StockChosen{std::vector<Length>(count, feet(10))});
    };
    CHECK(refusal(stock(event_stock_most)).empty());
    CHECK(refusal(stock(event_stock_most + 1)) == refused(24, "stock: more than 64"));
    CHECK(refusal(event_with(plan_with(event_runs_most, 3))).empty());
    CHECK(refusal(event_with(plan_with(event_runs_most + 1, 3))) ==
          refused(20, "runs: more than 1000"));
    CHECK(refusal(event_with(plan_with(3, event_cuts_most))).empty());
    CHECK(refusal(event_with(plan_with(3, event_cuts_most + 1))) ==
          refused(20, "cuts: more than 1000"));
    CHECK(refusal(event_with(EdgeFinished{std::string(4096, 'x'), ""})).empty());
    CHECK(refusal(event_with(EdgeFinished{std::string(4097, 'x'), ""})) ==
          refused(10, "edge: longer than 4096 bytes"));
}

}  // namespace
}  // namespace hemline
