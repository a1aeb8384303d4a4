// Corners decide as pairs: exactly one side of each carries the tab.
#include <doctest/doctest.h>

#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"
#include "tests/engine/assets.h"

using namespace hemline;

namespace {

EdgeWork eave(const std::string& id, End left, End right, Side first) {
    EdgeWork work;
    work.edge.id = id;
    work.edge.left = left;
    work.edge.right = right;
    work.edge.first = first;
    work.edge.pitch = rise_in_12(5);
    for (int i = 0; i < 2; ++i) {
        RecordedReading reading;
        reading.length = feet(20);
        work.readings.push_back(reading);
    }
    return work;
}

/// How many ends at the corner between these edges carry a tab, by the planned runs.
int tabs_at(const Job& job, const Plan& plan, const char* before, const char* after) {
    const Trim trim = *Catalogue::read(asset("catalogue/trims.csv")).value().find("eave_rolled");
    const auto carries = [&](const char* id, Side side) {
        const Run* const run = find_run(plan, id, TrimRole::main);
        REQUIRE(run != nullptr);
        return end_metal(job.find(id)->edge, side, trim, job.practice, run->tabs).tab > Length()
                   ? 1
                   : 0;
    };
    return carries(before, Side::right) + carries(after, Side::left);
}

Plan planned(const Job& job) {
    return make_plan(job, Catalogue::read(asset("catalogue/trims.csv")).value());
}

Length covered_and_cut(const Plan& plan, const char* id) {
    Length cut;
    for (const PlannedPiece& piece : find_run(plan, id, TrimRole::main)->pieces) {
        cut += piece.cut - piece.covers;
    }
    return cut;
}

}  // namespace

// Common practice, no published source: 1 in on the run fitted first, 0 on the other.
TEST_CASE("whatever sides four eaves are fitted from, each corner has one tab") {
    for (int sides = 0; sides < 16; ++sides) {
        CAPTURE(sides);
        Job job;
        const char* const ids[] = {"A", "B", "C", "D"};
        for (int i = 0; i < 4; ++i) {
            job.edges.push_back(eave(ids[i], End::corner_out, End::corner_out,
                                     (sides >> i & 1) == 0 ? Side::left : Side::right));
        }
        const Plan plan = planned(job);
        Length added;
        for (int i = 0; i < 4; ++i) {
            CHECK(tabs_at(job, plan, ids[i], ids[(i + 1) % 4]) == 1);
            added += covered_and_cut(plan, ids[i]);
        }
        // Four tabs of 1 in, and the laps: two 6 in laps on each 20 ft eave at least.
        const auto laps = [&](const char* id) {
            return inches(6) *
                   (static_cast<std::int64_t>(find_run(plan, id, TrimRole::main)->pieces.size()) -
                    1);
        };
        CHECK(added == inches(4) + laps("A") + laps("B") + laps("C") + laps("D"));
    }
}

TEST_CASE("an inside corner has one flange that runs on under the other") {
    for (const auto& [a, b] : {std::pair(Side::left, Side::right), {Side::right, Side::left}}) {
        Job job;
        job.edges.push_back(eave("A", End::gable, End::corner_in, a));
        job.edges.push_back(eave("B", End::corner_in, End::gable, b));
        CHECK(tabs_at(job, planned(job), "A", "B") == 1);
    }
}

TEST_CASE("the corner of a dormer added after the house is its own") {
    Job job;
    for (const char* id : {"A", "B", "C", "D"}) {
        job.edges.push_back(eave(id, End::corner_out, End::corner_out, Side::left));
    }
    // Its eaves are fitted from their right ends: D and E do not meet.
    for (const char* id : {"E", "F", "G", "H"}) {
        job.edges.push_back(eave(id, End::corner_out, End::corner_out, Side::right));
    }
    job.edges.back().edge.first = Side::left;
    const Plan plan = planned(job);
    CHECK(tabs_at(job, plan, "D", "A") == 1);
    CHECK(tabs_at(job, plan, "G", "H") == 1);
    CHECK(tabs_at(job, plan, "H", "E") == 1);
    CHECK(find_run(plan, "D", TrimRole::main)->tabs == CornerTabs());
}
