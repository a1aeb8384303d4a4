// The uphill side of a curb: what its ends add, what it waits for, and when it takes a cricket.
#include <algorithm>

#include "eave_job.h"
#include "engine/plan/make_plan.h"
#include "engine/record/event_bytes.h"
#include "engine/record/job.h"
#include "engine/trim/end_metal.h"
#include "engine/work/order.h"
#include "tests/engine/record/eave_record.h"

using namespace hemline_test;

namespace {

Edge curb_head() {
    Edge edge;
    edge.id = "K";
    edge.kind = EdgeKind::curb_head;
    edge.left = edge.right = End::corner_out;
    edge.pitch = rise_in_12(6);
    return edge;
}

}  // namespace

// Common practice, no published source: the sides are under the head, so it closes both corners.
TEST_CASE("a curb's head wraps both corners, whichever is fitted first") {
    const Catalogue catalogue = own_catalogue();
    for (const Side first : {Side::left, Side::right}) {
        Edge edge = curb_head();
        edge.first = first;
        for (const Side side : {Side::left, Side::right}) {
            const EndMetal metal = end_metal(edge, side, *catalogue.of(edge), {});
            CHECK(metal.work == EndWork::corner_tab);
            CHECK(metal.added() == Practice().tab_corner_out);
        }
    }
}

TEST_CASE("a 24 in curb head is one piece of 26 in, and is fitted after the sides") {
    Job job;
    job.edges.push_back(read_twice(curb_head(), inches(24)));
    Edge side = eave("S", End::corner_out, End::corner_out);
    side.kind = EdgeKind::sidewall;
    job.edges.push_back(read_twice(side, feet(3)));
    const Plan plan = make_plan(job, own_catalogue());
    const Run* const run = find_run(plan, "K", TrimRole::main);
    REQUIRE(run != nullptr);
    REQUIRE(run->pieces.size() == 1);
    CHECK(run->pieces[0].cut == inches(26));
    CHECK(run->pieces[0].covers == inches(24));
    CHECK(fitting_waits_for(job.edges[0], job, own_catalogue()) ==
          "Finish sidewall S first: curb head K goes over it.");
    CHECK(fitting_waits_for(job.edges[1], job, own_catalogue()).empty());
}

// IRC R903.2.2, as building departments quote it.
TEST_CASE("a curb wider than 30 in is asked for a cricket, and the local code goes first") {
    Job job;
    job.edges.push_back(read_twice(curb_head(), inches(31)));
    const Catalogue catalogue = own_catalogue();
    const auto rules = read_procedure(assets_file("procedures/curb_head.csv"));
    REQUIRE(rules.ok());
    const auto steps =
        steps_of(job.edges[0], make_plan(job, catalogue), job.practice, *rules, catalogue);
    const auto wide = std::find_if(steps.begin(), steps.end(),
                                   [](const Step& step) { return step.rule->id == "cricket"; });
    REQUIRE(wide != steps.end());
    CHECK(wide->rule->caution.find("local code") != std::string::npos);
    CHECK(wide->rule->caution.find("maker's instructions") != std::string::npos);
}

TEST_CASE("a curb's head is written and read back") {
    const Event event{{1, 1}, {}, "", {}, EdgeAdded{curb_head()}};
    const JournalRead read = read_journal(journal_of({event}));
    REQUIRE(read.events.size() == 1);
    CHECK(std::get<EdgeAdded>(read.events[0].fact).edge == curb_head());
}
