#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/quantity/length.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

const std::string sides_header = "side,kind,length,corner,pitch\n";

/// An invented house, 40 × 30 ft, with gables.
const std::string gable_sides =
    sides_header + "A,eave,40 ft,,6/12\nB,gable,30 ft,,\nC,eave,40 ft,,\nD,gable,30 ft,,\n";
/// An invented house, 40 × 24 ft, with hips.
const std::string hip_sides =
    sides_header + "A,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,40 ft,,\nD,eave,24 ft,,\n";
/// Between a wall and a gable, 12 ft 6 3/8 in.
const std::string wall_sides = sides_header +
                               "A,eave,12 ft 6 3/8 in,,6/12\nB,gable,30 ft,,\n"
                               "C,eave,12 ft 6 3/8 in,,\nD,wall,30 ft,,\n";

Ran panels(const Desk& desk, const std::string& sides, std::vector<std::string> words) {
    words.insert(words.begin(), {"panels", desk.write("sides.csv", sides)});
    return desk.run(words);
}

}  // namespace

TEST_CASE("panels lays a gable roof: pans, seams, clips, closures in whole nanometers") {
    const Desk desk;
    const auto json = fine(panels(desk, gable_sides, {"--json"})).json();
    CHECK(json["problems"].empty());
    REQUIRE(json["planes"].size() == 2);
    const auto& plane = json["planes"][0];
    CHECK(plane["plane"] == "A");
    CHECK(plane["fixed"] == "eave");
    CHECK(plane["assumed"] == nlohmann::json({"fixed: eave", "clips: no zones of wind"}));
    REQUIRE(plane["pans"].size() == 30);
    const auto& first = plane["pans"][0];
    CHECK(first["pan"] == 1);
    CHECK(first["from_nm"] == 4 * sixteenth_nm);
    CHECK(first["width_nm"] == 252 * sixteenth_nm);    // 15 3/4 in
    CHECK(first["length_nm"] == 3260 * sixteenth_nm);  // 16 ft 11 3/4 in
    CHECK(first["kind"] == "end");
    CHECK(first["blank_nm"] == 276 * sixteenth_nm);
    CHECK(first["foot"] == nlohmann::json({0, 0}));
    CHECK(first["top"][0] == first["top"][1]);
    CHECK(plane["pans"][1]["kind"] == "full");
    CHECK(plane["pans"][1]["width_nm"] == 16 * inch_nm);
    REQUIRE(plane["seams_nm"].size() == 29);
    CHECK(plane["seams_nm"][4] == 80 * inch_nm);
    REQUIRE(plane["clips"].size() == 29);
    CHECK(plane["clips"][0] == 9);
    REQUIRE(plane["closures"].size() == 1);
    CHECK(plane["closures"][0]["edge"] == "G");
    CHECK(plane["closures"][0]["count"] == 30);
    CHECK(plane["closures"][0]["blank_nm"] == 17 * inch_nm);
    CHECK(plane["pairs"].empty());
    CHECK(plane["problems"].empty());
}

TEST_CASE("panels pairs hip pans only where the seam's legs are said to be alike") {
    const Desk desk;
    const auto without = fine(panels(desk, hip_sides, {"--plane", "A", "--json"})).json();
    REQUIRE(without["planes"].size() == 1);
    CHECK(without["planes"][0]["pairs"].empty());
    const auto plane = fine(panels(desk, hip_sides, {"--plane", "A", "--legs-alike", "--json"}))
                           .json()["planes"][0];
    CHECK(plane["pairs"].size() == 8);
    CHECK(plane["pans"][8]["length_nm"] == 2620 * sixteenth_nm);  // 163 3/4 in
    CHECK(plane["pans"][8]["kind"] == "cut");
    CHECK(plane["pans"][0]["top"][0] == 0);
    // 16 in at 6 in 12: the framing square's jack difference, 17.8885 in.
    CHECK(plane["pans"][0]["top"][1].get<double>() / inch_nm == doctest::Approx(17.8885));
}

TEST_CASE("panels keeps seams off a pipe, and says what shows") {
    const Desk desk;
    const std::vector<std::string> words = {"--plane", "A", "--pipe", "A,42 in,6 ft,9 in"};
    const Ran text = fine(panels(desk, wall_sides, words));
    CHECK(has(text.out, "seams shifted 4 9/16 in to the right"));
    CHECK(has(text.out, "pan 10: Pan 10 is 6 3/8 in wide, less than half a pan: it shows."));
    std::vector<std::string> json_words = words;
    json_words.emplace_back("--json");
    const auto plane = fine(panels(desk, wall_sides, json_words)).json()["planes"][0];
    CHECK(plane["shift_nm"] == 73 * sixteenth_nm);
    CHECK(plane["problems"][0]["plane"] == "A");
    CHECK(plane["problems"][0]["pan"] == 10);
    const auto curb =
        fine(panels(desk, wall_sides, {"--plane", "A", "--curb", "A,43 in,6 ft,2 in", "--json"}));
    // Walls at 42 and 44 in, a seam at 43 3/16: 2 13/16 in to the right clears both.
    CHECK(curb.json()["planes"][0]["shift_nm"] == 45 * sixteenth_nm);
}

TEST_CASE("panels takes module, seam height, side gap and temperatures") {
    const Desk desk;
    const auto plane = fine(panels(desk, gable_sides,
                                   {"--plane", "C", "--module", "18 in", "--seam-height", "2 in",
                                    "--side-gap", "0 in", "--fixed", "ridge", "--at", "15C",
                                    "--low", "-20F", "--high", "80C", "--json"}))
                           .json()["planes"][0];
    CHECK(plane["fixed"] == "ridge");
    CHECK(plane["assumed"] ==
          nlohmann::json({"metal: galvanized steel", "clips: no zones of wind"}));
    CHECK(plane["pans"].size() == 27);  // 480 = 25 · 18 + 2 · 15
    CHECK(plane["pans"][0]["width_nm"] == 15 * inch_nm);
    CHECK(plane["pans"][0]["blank_nm"] == 17 * inch_nm);
    CHECK(plane["gap_nm"] == 3 * sixteenth_nm);
    CHECK(panels(desk, gable_sides, {"--fixed", "ridge"}).exit == 2);
    CHECK(panels(desk, gable_sides, {"--at", "60F"}).exit == 2);
}

TEST_CASE("panels writes a table with a row a pan") {
    const Desk desk;
    fine(panels(desk, gable_sides, {"--csv", (desk.folder() / "pans.csv").string()}));
    const std::string table = bytes_of(desk.folder() / "pans.csv");
    CHECK(table.substr(0, table.find('\r')) ==
          R"("plane","pan","piece","from","width","length","kind","foot_left","foot_right",)"
          R"("top_left","top_right","blank","alike","top_width")");
    CHECK(has(table, R"("A","2","","1 ft 4 in","1 ft 4 in","16 ft 11 3/4 in","full")"));
    CHECK(std::count(table.begin(), table.end(), '\n') == 61);
}

TEST_CASE("panels takes what was read of a plane, and seams as chosen") {
    const Desk desk;
    const auto plane = fine(panels(desk, gable_sides,
                                   {"--plane", "A", "--json", "--shift", "A, left, 3/16 in",
                                    "--read", "A, 200 3/4 in, 202 3/4 in, ,"}))
                           .json()["planes"][0];
    CHECK(plane["shift_nm"] == -hemline::sixteenths(3).nm());
    CHECK(plane["pans"][0]["width_nm"] == hemline::sixteenths(252 - 3).nm());
    CHECK(plane["pans"][0]["kind"] == "cut");
    CHECK(plane["problems"][0]["what"] ==
          "The top is not level to the eave: it rises 2 in to the right.");
    // The other plane follows: its seams meet those of A.
    const auto both =
        fine(panels(desk, gable_sides, {"--json", "--shift", "A, left, 3/16 in"})).json();
    CHECK(both["planes"][1]["shift_nm"] == hemline::sixteenths(3).nm());
    const auto more =
        fine(panels(desk, gable_sides,
                    {"--plane", "A", "--json", "--choices", "--shift", "A, right, 0 in, more"}))
            .json()["planes"][0];
    CHECK(more["pans"].size() == 31);
    CHECK(more["tried"] == 130);
    CHECK(more["choices"].size() == 1);
    CHECK(more["choices"][0]["best_for"].size() == 4);
    CHECK(more["choices"][0]["metal_nm"] == hemline::sixteenths(30 * 3260).nm());
}

TEST_CASE("panels gives marks, screws of the cap, zones of wind and the metal's weight") {
    const Desk desk;
    const auto json =
        fine(panels(desk, gable_sides,
                    {"--json", "--zone", "36 in", "--coil", "--thickness", "0.0276 in"}))
            .json();
    const auto& plane = json["planes"][0];
    CHECK(plane["assumed"] == nlohmann::json({"fixed: eave"}));
    CHECK(plane["clips"][0] == 17);
    CHECK(plane["clips"][14] == 13);
    REQUIRE(plane["marks"].size() == 2);
    CHECK(plane["marks"][0]["seams_nm"][4] == hemline::inches(80).nm());
    CHECK(plane["cap_screws"][0]["along_nm"][2] == hemline::inches(20).nm());
    // 60 lengths of 203 3/4 in from a strip of 20 in, 0.0276 in of steel.
    CHECK(json["metal"]["lengths"] == 60);
    CHECK(json["metal"]["coil_feet"] == 1019);
    CHECK(std::abs(json["metal"]["pounds"].get<double>() - 1913.79) < 0.1);
    const Ran text = fine(panels(desk, gable_sides, {"--thickness", "0.0276 in"}));
    CHECK(has(text.out, "Metal: 60 lengths, together 1018 ft 9 in, 1914 lb, the heaviest 32 lb"));
}

TEST_CASE("plan, outline and panels take a job in place of a file") {
    const Desk desk;
    fine(desk.run({"new", "house", "--roof", desk.write("sides.csv", gable_sides)}));
    const auto from_file = fine(panels(desk, gable_sides, {"--json"})).json();
    const auto from_job = fine(desk.run({"panels", "house", "--json"})).json();
    REQUIRE(from_job["planes"].size() == 2);
    CHECK(from_job["planes"][0]["pans"] == from_file["planes"][0]["pans"]);
    CHECK(from_job["metal"] == from_file["metal"]);
    for (int reading = 0; reading < 2; ++reading) {
        CHECK(desk.run({"take", "house", "A", "40 ft"}).exit == 0);
    }
    const auto plan = fine(desk.run({"plan", "house", "--json"})).json();
    CHECK(plan["edges"][0]["edge"] == "A");
    CHECK(has(fine(desk.run({"card", "house", "A", "1"})).out, "Edge A"));
    CHECK(fine(desk.run({"outline", "house", "--json"})).json()["lines"].size() >= 4);
    CHECK(desk.run({"plan", "house", "--style", "full"}).exit != 0);
    fine(desk.run({"new", "empty"}));
    CHECK(has(desk.run({"panels", "empty"}).err, "The job has no roof that is worked out."));
}

TEST_CASE("panels draws its planes: every seam, the pipe, each pan's length") {
    const Desk desk;
    fine(panels(desk, gable_sides,
                {"--plane", "A", "--svg", (desk.folder() / "a.svg").string(), "--pipe",
                 "A,8 in,6 ft,6 in"}));
    const std::string svg = bytes_of(desk.folder() / "a.svg");
    CHECK(has(svg, "30: 16 ft 11 3/4 in"));
    CHECK(has(svg, "<circle"));
    CHECK(has(svg, "Plane A"));
}

TEST_CASE("panels says what is wrong and how to mend it") {
    const Desk desk;
    const auto refused = [&](const std::vector<std::string>& words) {
        const Ran ran = panels(desk, gable_sides, words);
        CHECK(ran.exit == 1);
        CHECK(ran.out.empty());
        return ran.err;
    };
    CHECK(has(refused({"--plane", "B"}), "No plane of the roof is named \"B\"."));
    CHECK(has(refused({"--module", "16"}), "--module"));
    CHECK(has(refused({"--module", "1/2 in"}), "leaves no pan between its seams"));
    CHECK(has(refused({"--side-gap", "-1 in"}), "--side-gap"));
    CHECK(has(refused({"--pipe", "A,42 in"}), "It takes a plane, two places and a width."));
    CHECK(has(refused({"--pipe", "A,42 in,,9 in"}), "--pipe"));
    CHECK(has(refused({"--pipe", "Q,42 in,6 ft,9 in"}), "No plane of the roof is named \"Q\"."));
    CHECK(has(refused({"--at", "200F", "--low", "0F", "--high", "180F"}), "not between"));
    const Ran open = fine(panels(desk,
                                 sides_header + "A,eave,40 ft,,6/12\nB,gable,30 ft,,\n"
                                                "C,eave,39 ft,,\nD,gable,30 ft,,\n",
                                 {"--json"}));
    CHECK(open.json()["planes"].empty());
    CHECK(has(open.json()["problems"][0].get<std::string>(), "does not close"));
}
