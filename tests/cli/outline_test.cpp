#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// An invented house, 40 × 30 ft with a corner of 24 × 10 ft cut out.
std::string l_house(const std::string& a = "40 ft", const std::string& c_right = "corner_in") {
    return readings_header + "A,eave,," + a + ",corner_out,corner_out,6/12\n" +
           "B,eave,,30 ft,corner_out,corner_out,6/12\n" + "C,eave,,16 ft,corner_out," + c_right +
           ",6/12\n" + "D,eave,,10 ft,corner_in,corner_out,6/12\n" +
           "E,eave,,24 ft,corner_out,corner_out,6/12\n" +
           "F,eave,,40 ft,corner_out,corner_out,6/12\n";
}

nlohmann::json traced(const Desk& desk, const std::string& csv) {
    const Ran ran = desk.run({"outline", desk.write("roof.csv", csv), "--json"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    return ran.json();
}

}  // namespace

TEST_CASE("outline says that a house closes, and draws it") {
    const Desk desk;
    const auto json = traced(desk, l_house());
    CHECK(json["closes"] == true);
    CHECK(json["state"] == "closes");
    CHECK(json["miss_nm"] == 0);
    CHECK(json["suspects"].empty());
    CHECK(json["lines"].size() == 6);
    CHECK(json["lines"][0]["to_nm"] == nlohmann::json({480 * inch_nm, 0}));
    const Ran text = desk.run({"outline", "roof.csv"});
    CHECK(text.out.find("It closes") != std::string::npos);
}

TEST_CASE("outline names what would close a house that does not") {
    const Desk desk;
    const auto foot = traced(desk, l_house("41 ft"));
    CHECK(foot["closes"] == false);
    CHECK(foot["miss_nm"] == 12 * inch_nm);
    CHECK(foot["miss_ahead_nm"] == 12 * inch_nm);
    const auto& suspect = foot["suspects"][0];
    CHECK(suspect["edge"] == "A");
    CHECK(suspect["field"] == "length");
    CHECK(suspect["kind"] == "misread_foot");
    CHECK(suspect["from"] == "41 ft");
    CHECK(suspect["to"] == "40 ft");
    CHECK(suspect["to_nm"] == 480 * inch_nm);
    CHECK(suspect["miss_nm"] == 0);
    const Ran text = desk.run({"outline", "roof.csv"});
    CHECK(text.exit == 0);
    CHECK(text.out.find("does not close: the walk ends 1 ft from where it began, 1 ft ahead") !=
          std::string::npos);
    CHECK(text.out.find("41 ft -> 40 ft (misread foot)") != std::string::npos);

    const auto turn = traced(desk, l_house("40 ft", "corner_out"));
    CHECK(turn["closes"] == false);
    CHECK(turn["suspects"][0]["edge"] == "C");
    CHECK(turn["suspects"][0]["field"] == "right");
    CHECK(turn["suspects"][0]["to"] == "corner_in");
    CHECK(turn["notes"].size() == 2);
}

TEST_CASE("outline takes gables by their slope, other corners and rows not read yet") {
    const Desk desk;
    // A 5-12-13 triangle: 24 ft wide.
    const std::string gables = readings_header +
                               "A,eave,,40 ft,gable,gable,5/12\nB,gable,,13 ft,eave,ridge,5/12\n"
                               "C,gable,,13 ft,eave,ridge,5/12\nD,eave,,40 ft,gable,gable,5/12\n"
                               "E,gable,,13 ft,eave,ridge,5/12\nF,gable,,13 ft,eave,ridge,5/12\n";
    const auto json = traced(desk, gables);
    CHECK(json["closes"] == true);
    CHECK(json["lines"][1]["plan_nm"] == 144 * inch_nm);
    const auto triangle = traced(
        desk,
        "edge,kind,trim,length,left,right,pitch,corner_right\n"
        "A,eave,,9 m,corner_out,corner_out,30deg,60\nB,eave,,9 m,corner_out,corner_out,30deg,60°\n"
        "C,eave,,9 m,corner_out,corner_out,30deg,60 deg\n");
    CHECK(triangle["closes"] == true);
    const auto open = traced(desk, readings_header +
                                       "A,eave,,40 ft,corner_out,corner_out,6/12\n"
                                       "B,eave,,30 ft,corner_out,corner_out,6/12\n"
                                       "C,eave,,40 ft,corner_out,corner_out,6/12\n"
                                       "D,eave,,,corner_out,corner_out,6/12\n");
    CHECK(open["closes"] == false);
    CHECK(open["state"] == "open");
    CHECK(open["lines"][3]["length"] == "implied");
    CHECK(open["lines"][3]["plan_nm"] == 360 * inch_nm);
}

TEST_CASE("outline says where a file cannot be read, and with what mend") {
    const Desk desk;
    const std::vector<std::pair<std::string, std::string>> bad = {
        {readings_header + "A,eave,,40 ft,corner_out,corner,6/12\n", "roof.csv:2:26: right"},
        {readings_header + "A,eave,,40 feets,corner_out,corner_out,6/12\n", "roof.csv:2:9: length"},
        {readings_header + "A,roof,,40 ft,corner_out,corner_out,6/12\n", "roof.csv:2:3: kind"},
        {readings_header + "R,ridge,,40 ft,open,open,6/12\n", "roof.csv:0:0: No eave"},
        {"edge,kind,trim,length,left,right,pitch,corner_left\nA,eave,,4 m,open,open,,400\n",
         "corner_left"},
        {"edge,kind,trim,length,left,right,pitch,corner_left\nA,eave,,4 m,open,open,,0\n",
         "corner_left"},
        {"", "roof.csv:"},
    };
    for (const auto& [csv, said] : bad) {
        const Ran ran = desk.run({"outline", desk.write("roof.csv", csv)});
        CHECK(ran.exit == 1);
        CHECK(ran.out.empty());
        CHECK_MESSAGE(ran.err.find(said) != std::string::npos, ran.err);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 2);
    }
    CHECK(desk.run({"outline", "nowhere.csv"}).exit == 1);
    CHECK(desk.run({"outline"}).exit == 2);
}
