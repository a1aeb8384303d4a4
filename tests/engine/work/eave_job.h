// An invented job for the tests of work: eaves with two agreeing readings, planned on 10 ft sticks.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/work/procedure.h"
#include "engine/work/readiness.h"

namespace hemline_test {

using namespace hemline;

inline Catalogue invented_catalogue() {
    const auto read = Catalogue::read(
        "id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source\n"
        "eave_rolled,Eave trim,eave,main,under,4 in,4 in,1/2 in,1/2 in,,6/12,snap_lock,invented\n"
        "fascia_wrap,Fascia wrap,eave,wrap,under,1 in,8 in,,,,,snap_lock,invented\n"
        "cleat,Cleat,eave,cleat,under,,3 in,1/2 in,,,,snap_lock,invented\n");
    REQUIRE_MESSAGE(read.ok(), (read.ok() ? Text() : read.problem().what));
    return *read;
}

inline Edge eave(const std::string& id, End left, End right, Side first = Side::left) {
    Edge edge;
    edge.id = id;
    edge.left = left;
    edge.right = right;
    edge.first = first;
    edge.pitch = rise_in_12(6);
    return edge;
}

inline EdgeWork read_twice(const Edge& edge, Length length) {
    EdgeWork work;
    work.edge = edge;
    for (int i = 0; i < 2; ++i) {
        RecordedReading reading;
        reading.length = length;
        work.readings.push_back(reading);
    }
    return work;
}

/// A job and its plan, each piece from a separate new stick.
struct Planned {
    Job job;
    Plan plan;
    Catalogue catalogue = invented_catalogue();

    [[nodiscard]] const Trim& trim_named(const std::string& id) const {
        REQUIRE(catalogue.find(id) != nullptr);
        return *catalogue.find(id);
    }

    void add_run(const Edge& edge, TrimRole role, const std::string& trim, const RunRule& rule,
                 Style style) {
        const auto divided = divide_run(rule, style);
        REQUIRE(divided.ok());
        Run run{edge.id, trim, role, rule.lap, {}};
        Length begins;
        for (const Division& division : *divided) {
            const int number = static_cast<int>(run.pieces.size()) + 1;
            const int stick = static_cast<int>(plan.sticks.size()) + 1;
            run.pieces.push_back(
                {number, division.cut, division.covers, begins, FromStick{stick, Length()}, false});
            plan.sticks.push_back(
                {stick, "pool", trim, rule.stock, division.cut, rule.stock - division.cut, {}});
            begins += division.covers;
        }
        plan.runs.push_back(run);
    }

    void add(const Edge& edge, Length length, Style style = Style::balanced) {
        job.edges.push_back(read_twice(edge, length));
        add_run(edge, TrimRole::main, "eave_rolled",
                run_rule(edge, trim_named("eave_rolled"), length, job.practice), style);
        if (edge.wrap) {
            add_run(edge, TrimRole::wrap, "fascia_wrap",
                    run_rule(edge, trim_named("fascia_wrap"), length, job.practice), style);
        }
    }

    void add_cleat(const Edge& edge, Length length) {
        RunRule rule = run_rule(edge, trim_named("cleat"), length, job.practice);
        rule.lap = Length();
        add_run(edge, TrimRole::cleat, "cleat", rule, Style::equal);
    }

    Run& run(TrimRole role = TrimRole::main) {
        for (Run& run : plan.runs) {
            if (run.role == role) {
                return run;
            }
        }
        FAIL("no such run");
        return plan.runs.front();
    }

    void cut(TrimRole role, int piece) {
        PlannedPiece& planned = run(role).pieces[static_cast<std::size_t>(piece) - 1];
        planned.is_cut = true;
        planned.source.reset();
        job.edges[0].cut.push_back({EventId{}, role, piece, planned.cut});
    }

    void record_step(const std::string& id, int piece) {
        DoneStep done;
        done.step.edge = job.edges[0].edge.id;
        done.step.step = id;
        done.step.piece = piece;
        job.edges[0].steps.push_back(done);
    }

    void record_remainder(Length length, std::int64_t wall_ms = 0) {
        RecordedReading reading;
        reading.of = ReadingOf::remainder;
        reading.length = length;
        reading.place = wall_ms;
        job.edges[0].readings.push_back(reading);
    }
};

/// The usual example: 46 ft, a gable on the left, an outside corner on the right.
/// T = 552 + 1 = 553 in, so ⌈(553 − 6)/114⌉ = 5 pieces; three full ones between cover 3 · 114 =
/// 342, the two ends (552 − 342)/2 = 105 each.
inline Planned forty_six_feet(Side first = Side::left) {
    Planned planned;
    planned.add(eave("A", End::gable, End::corner_out, first), feet(46));
    return planned;
}

inline std::string assets_file(const std::string& name) {
    const char* assets = std::getenv("HEMLINE_ASSETS");
    std::ifstream file((assets != nullptr ? std::string(assets) : "assets") + "/" + name);
    REQUIRE_MESSAGE(file.good(), name);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline Catalogue own_catalogue() {
    return Catalogue::read(assets_file("catalogue/trims.csv")).value();
}

}  // namespace hemline_test
