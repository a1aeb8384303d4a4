#include <doctest/doctest.h>

#include <map>
#include <string>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// An invented house, 40 × 24 ft, with hips.
const std::string hip_house =
    "side,kind,length,corner,pitch\nA,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,40 ft,,\nD,eave,24 "
    "ft,,\n";

/// An invented gable house, 40 × 24 ft, and a dormer 8 ft wide on its front.
const std::string dormer_house =
    "side,kind,length,corner,pitch,body,host,host_along,host_up,host_rise\n"
    "A,eave,40 ft,,6/12,house,,,,\nB,gable,24 ft,,,house,,,,\nC,eave,40 ft,,,house,,,,\n"
    "D,gable,24 ft,,,house,,,,\nE,gable,8 ft,,,dormer,A,16 ft,4 ft,4 ft\n"
    "F,eave,,,4/12,dormer,,,,\nG,open,,,,dormer,,,,\nH,eave,,,,dormer,,,,\n";

}  // namespace

TEST_CASE("roof works out planes and edges from the walk") {
    const Desk desk;
    const Ran ran = desk.run({"roof", desk.write("sides.csv", hip_house), "--json"});
    REQUIRE(ran.exit == 0);
    const auto json = ran.json();
    CHECK(json["closes"] == true);
    CHECK(json["problems"].empty());
    REQUIRE(json["planes"].size() == 4);
    CHECK(json["planes"][0]["plane"] == "A");
    CHECK(json["planes"][0]["eaves"] == nlohmann::json({"A"}));
    CHECK(json["planes"][0]["pitch"] == "6/12");
    CHECK(json["planes"][0]["corners"].size() == 4);
    CHECK(json["planes"][0]["bounds"].size() == 4);
    REQUIRE(json["edges"].size() == 9);
    CHECK(json["edges"][8]["kind"] == "ridge");
    CHECK(json["edges"][8]["length_nm"] == 16 * 12 * inch_nm);
    CHECK(json["edges"][4]["corner_deg"] == 90);
    CHECK(json["edges"][4]["from"] == nlohmann::json({0, 0, 0}));
    const Ran text = desk.run({"roof", "sides.csv"});
    CHECK(text.exit == 0);
    CHECK(text.out.find("never to cut from") != std::string::npos);
    CHECK(text.out.find("J      ridge        16 ft ") != std::string::npos);
}

TEST_CASE("roof says what is wrong with a sides file, where, and how to mend it") {
    const Desk desk;
    const auto refused = [&](const std::string& csv) {
        const Ran ran = desk.run({"roof", desk.write("bad.csv", csv)});
        CHECK(ran.exit == 1);
        CHECK(ran.out.empty());
        return ran.err;
    };
    const std::string header = "side,kind,length,corner,pitch\n";
    CHECK(has(refused(header + "A,eaves,40 ft,,6/12\n"), "2"));
    CHECK(has(refused(header + "A,eaves,40 ft,,6/12\n"), "\"eaves\" is not a word for it."));
    CHECK(has(refused(header + "A,eave,40,,6/12\n"), "unit"));
    CHECK(has(refused(header + "A,eave,-4 ft,,6/12\n"), "length"));
    CHECK(has(refused(header + "A,eave,40 ft,,\n"), "no eave before has one"));
    CHECK(has(refused(header + "A,gable,40 ft,,6/12\n"), "upright"));
    CHECK(has(refused(header + "A,eave,40 ft,400,6/12\n"), "corner"));
    CHECK(
        has(refused(header + "A,eave,40 ft,,6/12\nA,eave,40 ft,,6/12\n"), "stands there already"));
    CHECK(has(refused("side,kind,length,corner\nA,eave,40 ft,\n"), "\"pitch\" is missing"));
    CHECK(has(refused("side,kind,length,corner,pitch,hosts\nA,eave,40 ft,,6/12,\n"), "\"hosts\""));
    const std::string wide =
        "side,kind,length,corner,pitch,body,host,host_along,host_up,host_rise,meets\n";
    CHECK(has(refused(wide + "A,eave,40 ft,,6/12,,,1 ft,,,\n"), "bad.csv:2:22: host_along"));
    CHECK(has(refused(wide + "A,eave,40 ft,,6/12,,,,,,B\n"), "no transition"));
    CHECK(has(
        refused(wide + "A,eave,9 ft,,6/12,a,,,,,\nB,eave,9 ft,,,b,,,,,\nC,eave,9 ft,,,a,,,,,\n"),
        "comes again after another body's rows"));
    CHECK(has(refused(wide + "A,eave,9 ft,,6/12,a,,,,,\nB,eave,9 ft,,,a,A,,,,\n"), "later row"));
    CHECK(has(refused(wide + "A,eave,9 ft,,6/12,a,X,,-1 yd,,\n"), "host_up"));
    CHECK(has(
        refused(header + "A,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,40 ft,270,\nD,eave,24 ft,,\n"),
        "The turns of the walk make 180°, not 360°."));
    CHECK(has(refused(header + "A,wall,40 ft,,\nB,wall,24 ft,,\nC,wall,40 ft,,\nD,wall,24 ft,,\n"),
              "bad.csv:2:1: These sides do not make a roof: A, B, C, D."));
}

TEST_CASE("A walk that does not close is said, and gives no edges") {
    const Desk desk;
    const std::string csv =
        "side,kind,length,corner,pitch\nA,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,39 "
        "ft,,\nD,eave,24 ft,,\n";
    const Ran ran = desk.run({"roof", desk.write("sides.csv", csv), "--json"});
    CHECK(ran.exit == 0);
    CHECK(ran.json()["closes"] == false);
    CHECK(ran.json()["edges"].empty());
    CHECK(ran.json()["miss_nm"] == 12 * inch_nm);
    CHECK(ran.json()["problems"].size() == 1);
}

TEST_CASE("roof works out a dormer: its valleys, the hole in its host and the walls round it") {
    const Desk desk;
    const auto json =
        fine(desk.run({"roof", desk.write("sides.csv", dormer_house), "--json"})).json();
    REQUIRE(json["planes"].size() == 4);
    CHECK(json["planes"][0]["body"] == "house");
    CHECK(json["planes"][2]["body"] == "dormer");
    REQUIRE(json["planes"][0]["holes"].size() == 1);
    CHECK(json["planes"][0]["holes"][0].size() == 5);
    // 480 sq ft less 8 × 4 and a triangle 8 wide and 2 ft 8 in high: 437 1/3 of 304.8² mm².
    CHECK(json["planes"][0]["plan_nm2"].get<std::string>().substr(0, 8) == "40629596");
    std::map<std::string, int> kinds;
    for (const auto& edge : json["edges"]) {
        ++kinds[edge["kind"].get<std::string>()];
        if (edge["kind"] == "valley") {
            CHECK(edge["planes"].size() == 2);
            CHECK(edge["planes"][1] == "A");
            CHECK(edge["pitches"] == nlohmann::json({"4/12", "6/12"}));
            CHECK(edge["corner_deg"] == 270);
        }
    }
    CHECK(kinds["valley"] == 2);
    CHECK(kinds["headwall"] == 1);
    CHECK(kinds["sidewall"] == 2);
    const Ran past = desk.run(
        {"roof",
         desk.write(
             "past.csv",
             std::string(dormer_house).replace(dormer_house.find("4 ft,4 ft"), 9, "4 ft,9 ft"))});
    CHECK(past.exit == 1);
    CHECK(has(past.err, "past.csv:6:1: Body dormer goes on past the roof above A"));
}

TEST_CASE("Expected lengths are planned and said to be so, and no job takes them for readings") {
    const Desk desk;
    const Ran ran = fine(desk.run({"roof", desk.write("sides.csv", dormer_house), "--readings",
                                   "roof.csv", "--svg", "roof.svg"}));
    CHECK(has(ran.err, "--readings roof.csv written"));
    CHECK(has(bytes_of(desk.folder() / "roof.svg"), "<svg"));
    const Ran plan = fine(desk.run({"plan", "roof.csv", "--json"}));
    CHECK(plan.json()["expected"].size() == 17);
    CHECK(plan.json()["edges"].size() >= 17);
    CHECK(has(fine(desk.run({"plan", "roof.csv"})).out, "Worked out, not measured: A, B, "));
    static_cast<void>(fine(desk.run({"new", "job", "--from", "roof.csv"})));
    const auto job = fine(desk.run({"show", "job", "--json"})).json();
    CHECK(job["edges"].size() == 17);
    CHECK(job["readings"].empty());
    const std::string bad = readings_header.substr(0, readings_header.size() - 1) +
                            ",expected\nA,eave,,46 ft,gable,gable,5/12,perhaps\n";
    const Ran refused = desk.run({"plan", desk.write("bad.csv", bad)});
    CHECK(refused.exit == 1);
    CHECK(has(refused.err, "bad.csv:2:32: expected \"perhaps\""));
}
