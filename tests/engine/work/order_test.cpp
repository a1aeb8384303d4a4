#include "engine/work/order.h"
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"

#include "eave_job.h"

using namespace hemline_test;

namespace {

Edge edge(const std::string& id, EdgeKind kind, End left, End right) {
    Edge edge = eave(id, left, right);
    edge.kind = kind;
    return edge;
}

/// An L with a hip end and a gable end, its eaves and its valley not finished.
Job house() {
    Job job;
    for (const Edge& each : {edge("R", EdgeKind::ridge, End::gable, End::hip),
                             edge("H", EdgeKind::hip, End::eave, End::ridge),
                             edge("G", EdgeKind::gable, End::eave, End::ridge),
                             edge("S", EdgeKind::sidewall, End::eave, End::wall),
                             edge("V", EdgeKind::valley, End::eave, End::ridge),
                             edge("A", EdgeKind::eave, End::gable, End::corner_out)}) {
        job.edges.push_back(read_twice(each, feet(20)));
    }
    return job;
}

EdgeWork& work(Job& job, const std::string& id) {
    for (EdgeWork& work : job.edges) {
        if (work.edge.id == id) {
            return work;
        }
    }
    FAIL(id);
    return job.edges.front();
}

Text wait(Job& job, const std::string& id) {
    return fitting_waits_for(work(job, id), job, own_catalogue());
}

}  // namespace

// The order: common practice, no published source: eave, valleys over the eave, what else lies
// under the panels, panels, then headwall, hips, ridge. Gable and sidewall lie where their trim
// does.

TEST_CASE("an eave waits for nothing, a valley for the eave its foot lies over") {
    Job job = house();
    CHECK(wait(job, "A").empty());
    CHECK(wait(job, "V") == "Finish eave A first: valley V goes over it.");
    work(job, "A").finished = EventId{1, 1};
    CHECK(wait(job, "V").empty());
}

TEST_CASE("what goes over the panels waits for all that lies under them") {
    Job job = house();
    for (const char* id : {"H", "R"}) {
        CHECK(wait(job, id).english().find("Finish eave A first: the panels lie on it") == 0);
    }
    CHECK(wait(job, "S") == "Finish eave A first: sidewall S goes over it.");
    CHECK(wait(job, "G") == "Finish eave A first: gable G goes over it.");
    work(job, "A").finished = EventId{1, 1};
    CHECK(wait(job, "S").empty());
    work(job, "S").edge.trim = "sidewall_channel";
    CHECK(wait(job, "S") ==
          "Finish valley V first: the panels lie on it, and sidewall S goes over the panels.");
}

TEST_CASE("a ridge waits for the gable and the hip that it ends at, the first to go on named") {
    Job job = house();
    work(job, "A").finished = work(job, "V").finished = EventId{1, 1};
    CHECK(wait(job, "R") ==
          "Finish sidewall S first: the panels lie on it, and ridge R goes over the panels.");
    work(job, "S").finished = EventId{1, 1};
    CHECK(wait(job, "R") ==
          "Finish gable G first: the panels lie on it, and ridge R goes over the panels.");
    work(job, "G").finished = EventId{1, 2};
    CHECK(wait(job, "R") == "Finish hip H first: ridge R goes over it.");
    work(job, "H").finished = EventId{1, 3};
    CHECK(wait(job, "R").empty());
    // A ridge from gable to gable has nothing to do with hips.
    work(job, "R").edge.right = End::gable;
    work(job, "H").finished.reset();
    CHECK(wait(job, "R").empty());
}

TEST_CASE("no two edges wait for each other, whatever their kinds and ends") {
    for (const KindOfEdge& a : kinds_of_edge()) {
        for (const KindOfEdge& b : kinds_of_edge()) {
            for (int e = 0; e <= static_cast<int>(End::valley); ++e) {
                Job job;
                const auto end = static_cast<End>(e);
                job.edges.push_back(read_twice(edge("1", a.kind, end, end), feet(9)));
                job.edges.push_back(read_twice(edge("2", b.kind, end, end), feet(9)));
                CHECK((wait(job, "1").empty() || wait(job, "2").empty()));
            }
        }
    }
}

TEST_CASE("what can be worked on comes first, in the order of fitting, each with its reason") {
    Procedures procedures;
    for (const char* kind : {"eave", "valley", "sidewall", "gable", "hip", "ridge"}) {
        const auto read = read_procedure(assets_file("procedures/" + std::string(kind) + ".csv"));
        REQUIRE(read.ok());
        procedures[*edge_kind_of(kind)] = *read;
    }
    const Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    Job job = house();
    work(job, "G").readings.pop_back();
    const auto next = whats_next(job, make_plan(job, catalogue), procedures, catalogue);
    REQUIRE(next.size() == 6);
    CHECK(next[0].edge == "A");
    CHECK(next[0].what == "Look: the deck is sound, nails are down, swept; soft spots marked.");
    // A reading waits for nothing.
    CHECK(next[1].edge == "G");
    CHECK(next[1].what == "Read the length of edge G a second time.");
    CHECK(next[2].edge == "V");
    CHECK(next[2].waits_for == "Finish eave A first: valley V goes over it.");
    CHECK(next[5].edge == "R");
    work(job, "A").finished = EventId{1, 1};
    CHECK(whats_next(job, make_plan(job, catalogue), procedures, catalogue).size() == 5);
    CHECK(whats_next({}, {}, procedures, catalogue).empty());
}

TEST_CASE("the metal that goes on first is cut first, whatever the order of the file") {
    const Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    const Job job = house();
    const auto cut = next_cut(job, make_plan(job, catalogue));
    REQUIRE(cut.has_value());
    CHECK(cut->edge == "A");
}
