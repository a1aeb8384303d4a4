// Gable and sidewall without a trim: over the panels, said by name, the same from a file, from a
// job begun with it and from a walk. And the end cap of an open ridge.
#include <doctest/doctest.h>

#include <string>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

const std::string house =
    "edge,kind,trim,length,left,right,pitch,pitch2\n"
    "G,gable,,13 ft 5 in,eave,ridge,6/12,\n"
    "H,gable,gable,13 ft 5 in,eave,ridge,6/12,\n"
    "S,sidewall,,9 ft,corner_out,wall,6/12,\n"
    "R,ridge,,32 ft,open,gable,6/12,6/12\n";

}  // namespace

TEST_CASE("a gable and a sidewall without a trim have the usual one, by its name") {
    const Desk desk;
    const std::string file = desk.write("house.csv", house);
    const Json plan = fine(desk.run({"plan", file, "--json"})).json();
    REQUIRE(plan["edges"].size() == 4);
    CHECK(plan["edges"][0]["trim"] == "gable_channel");
    CHECK(plan["edges"][1]["trim"] == "gable");
    CHECK(plan["edges"][2]["trim"] == "sidewall_channel");
    CHECK(plan["problems"].empty());
    fine(desk.run({"new", "house", "--from", file}));
    const Json shown = fine(desk.run({"show", "house", "--json"})).json();
    CHECK(shown["edges"][0]["trim"] == "gable_channel");
    CHECK(shown["edges"][1]["trim"] == "gable");
    const std::string sides =
        desk.write("sides.csv",
                   "side,kind,length,corner,pitch\nA,eave,40 ft,,6/12\nB,gable,24 ft,,\nC,eave,,,\n"
                   "D,gable,,,\n");
    fine(desk.run({"new", "walked", "--roof", sides}));
    const Json walked = fine(desk.run({"show", "walked", "--json"})).json();
    int gables = 0;
    for (const Json& edge : walked["edges"]) {
        if (edge["kind"] == "gable") {
            CHECK(edge["trim"] == "gable_channel");
            ++gables;
        }
    }
    CHECK(gables == 4);
}

TEST_CASE("the plan has the cap of each open end: its metal, its folds, its words") {
    const Desk desk;
    const std::string file = desk.write("house.csv", house);
    const Json plan = fine(desk.run({"plan", file, "--json"})).json();
    REQUIRE(plan["end_caps"].size() == 1);
    const Json& cap = plan["end_caps"][0];
    CHECK(cap["edge"] == "R");
    CHECK(cap["end"] == "left");
    CHECK(cap["corner_deg"] == doctest::Approx(126.869898));
    CHECK(cap["flange_nm"] == 177'800'000);  // 7 in
    CHECK(cap["down_nm"] == 50'800'000);
    CHECK(cap["outline_nm"].size() == 13);
    CHECK(cap["folds_nm"].size() == 2);
    const std::string told = fine(desk.run({"plan", file})).out;
    CHECK(has(told, "end cap for edge R, left:\n    Cut it from flat metal "));
    CHECK(has(told, "10 3/4 in below."));
}
