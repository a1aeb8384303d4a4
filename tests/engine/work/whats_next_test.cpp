#include <doctest/doctest.h>

#include "eave_job.h"
#include "engine/record/job.h"
#include "engine/work/procedure.h"

using namespace hemline_test;

namespace {

EdgeStatus status(const Planned& planned, const std::vector<Step>& steps = {}) {
    return status_of(planned.job.edges[0], steps, planned.job.practice);
}

/// "A wrap 2", or "none".
std::string next(const Planned& planned) {
    const auto cut = next_cut(planned.job, planned.plan);
    return cut ? cut->edge + " " + std::string(word_of(cut->role)) + " " +
                     std::to_string(cut->piece)
               : "none";
}

}  // namespace

TEST_CASE("an edge stands where its readings let it stand") {
    Planned planned = forty_six_feet();
    EdgeWork& work = planned.job.edges[0];
    CHECK(status(planned) == EdgeStatus::ready);
    work.edge.pitch.reset();
    CHECK(status(planned) == EdgeStatus::pitch_missing);
    work.readings.pop_back();
    CHECK(status(planned) == EdgeStatus::one_reading);
    work.readings.push_back(work.readings[0]);
    work.readings[1].length += inches(7);
    CHECK(status(planned) == EdgeStatus::readings_disagree);
    work.readings.clear();
    CHECK(status(planned) == EdgeStatus::no_reading);
    work.finished = EventId{1, 1};
    CHECK(status(planned) == EdgeStatus::finished);
}

TEST_CASE("an edge is cutting once a piece is cut and fitting once one is on the roof") {
    const auto read = read_procedure(assets_file("procedures/eave.csv"));
    REQUIRE(read.ok());
    Planned planned = forty_six_feet();
    const auto steps = [&] {
        return steps_of(planned.job.edges[0], planned.plan, planned.job.practice, *read,
                        planned.catalogue);
    };
    planned.record_step("cleat_line", 0);
    CHECK(status(planned, steps()) == EdgeStatus::ready);
    planned.cut(TrimRole::main, 1);
    CHECK(status(planned, steps()) == EdgeStatus::cutting);
    planned.record_step("hook", 1);
    CHECK(status(planned, steps()) == EdgeStatus::fitting);
}

TEST_CASE("wrap is cut before cleat and cleat before trim") {
    Planned planned;
    Edge edge = eave("A", End::wall, End::wall);
    edge.wrap = true;
    planned.add(edge, inches(200));
    planned.add_cleat(edge, inches(100));
    CHECK(next(planned) == "A wrap 1");
    planned.cut(TrimRole::wrap, 1);
    // A wrap's last piece waits for no remainder.
    CHECK(next(planned) == "A wrap 2");
    planned.cut(TrimRole::wrap, 2);
    CHECK(next(planned) == "A cleat 1");
    planned.cut(TrimRole::cleat, 1);
    CHECK(next(planned) == "A main 1");
    planned.cut(TrimRole::main, 1);
    CHECK(next(planned) == "none");
    planned.record_step("fasten", 1);
    planned.record_remainder(inches(90));
    CHECK(next(planned) == "A main 2");
    planned.cut(TrimRole::main, 2);
    CHECK(next(planned) == "none");
}

TEST_CASE("while one edge's last piece waits, the next edge is cut") {
    Planned planned = forty_six_feet();
    planned.add(eave("B", End::wall, End::wall), feet(9));
    for (int piece = 1; piece <= 4; ++piece) {
        CHECK(next(planned) == "A main " + std::to_string(piece));
        planned.cut(TrimRole::main, piece);
    }
    CHECK(next(planned) == "B main 1");
}

TEST_CASE("an edge without agreed length or pitch, and a finished one, is passed over") {
    Planned planned = forty_six_feet();
    planned.add(eave("B", End::wall, End::wall), feet(9));
    EdgeWork& work = planned.job.edges[0];
    CHECK(next(planned) == "A main 1");
    work.edge.pitch.reset();
    CHECK(next(planned) == "B main 1");
    work.edge.pitch = rise_in_12(4);
    work.readings[1].struck = true;
    CHECK(next(planned) == "B main 1");
    work.readings[1].struck = false;
    work.finished = EventId{1, 1};
    CHECK(next(planned) == "B main 1");
    CHECK(next_cut({}, {}).has_value() == false);
}

TEST_CASE("a piece no stick holds does not hold up the rest of the job") {
    Planned planned = forty_six_feet();
    planned.add(eave("B", End::wall, End::wall), feet(9));
    planned.plan.runs[0].pieces[0].source.reset();
    CHECK(next(planned) == "B main 1");
}
