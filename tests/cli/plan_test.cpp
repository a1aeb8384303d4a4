#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// Cut lengths of the edge's run of that trim, in inches; -1 for a length that is not a whole
/// sixteenth.
std::vector<double> inches_of(const nlohmann::json& plan, const std::string& edge,
                              const std::string& trim, const std::string& key) {
    std::vector<double> inches;
    for (const auto& run : plan["edges"]) {
        if (run["edge"] == edge && run["trim"] == trim) {
            for (const auto& piece : run["pieces"]) {
                const auto nm = piece[key].get<std::int64_t>();
                inches.push_back(
                    nm % sixteenth_nm != 0 ? -1.0 : static_cast<double>(nm / sixteenth_nm) / 16);
            }
        }
    }
    return inches;
}

/// Every piece lies on its stick, and no two of them on the same metal.
void check_sticks(const nlohmann::json& plan) {
    std::map<std::int64_t, std::int64_t> stock, used;
    for (const auto& stick : plan["sticks"]) {
        stock[stick["stick"]] = stick["stock_nm"];
        CHECK(stick["used_nm"].get<std::int64_t>() + stick["left_nm"].get<std::int64_t>() ==
              stick["stock_nm"].get<std::int64_t>());
    }
    std::map<std::int64_t, std::map<std::int64_t, std::int64_t>> on_stick;
    for (const auto& run : plan["edges"]) {
        for (const auto& piece : run["pieces"]) {
            on_stick[piece["stick"]][piece["from_nm"]] = piece["cut_nm"];
        }
    }
    std::size_t placed = 0, pieces = 0;
    for (const auto& [stick, cuts] : on_stick) {
        std::int64_t end = 0;
        for (const auto& [from, cut] : cuts) {
            CHECK(from >= end);
            end = from + cut;
            ++placed;
        }
        CHECK(end <= stock[stick]);
    }
    for (const auto& run : plan["edges"]) {
        pieces += run["pieces"].size();
    }
    CHECK(placed == pieces);
}

}  // namespace

// 46 ft = 552 in, both ends gable: T = 554 in, ⌈(554 − 6)/(120 − 6)⌉ = 5 pieces. Computed by hand.
TEST_CASE("a 46 ft eave between gables takes five sticks, whatever its style") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header + "A,eave,,46 ft,gable,gable,5/12\n");

    SUBCASE("balanced: 105 in seen at both ends, full sticks between") {
        const auto plan = desk.run({"plan", file, "--json"}).json();
        CHECK(inches_of(plan, "A", "eave_rolled", "cut_nm") ==
              std::vector<double>{112, 120, 120, 120, 106});
        CHECK(inches_of(plan, "A", "eave_rolled", "covers_nm") ==
              std::vector<double>{105, 114, 114, 114, 105});
    }
    SUBCASE("full: full sticks from the left, what is left at the right") {
        const auto plan = desk.run({"plan", file, "--style", "full", "--json"}).json();
        CHECK(inches_of(plan, "A", "eave_rolled", "cut_nm") ==
              std::vector<double>{120, 120, 120, 120, 98});
    }
    SUBCASE("equal: 552/5 = 110.4 in seen of each, to the sixteenth") {
        const auto plan = desk.run({"plan", file, "--style", "equal", "--json"}).json();
        const auto covers = inches_of(plan, "A", "eave_rolled", "covers_nm");
        REQUIRE(covers.size() == 5);
        double sum = 0;
        for (const double one : covers) {
            CHECK(one == doctest::Approx(110.4).epsilon(0.004));
            sum += one;
        }
        CHECK(sum == 552);
    }
    const auto plan = desk.run({"plan", file, "--json"}).json();
    check_sticks(plan);
    REQUIRE(plan["proof"].size() == 1);
    CHECK(plan["proof"][0]["trim"] == "eave_rolled");
    CHECK(plan["proof"][0]["sticks"] == 5);
    CHECK(plan["proof"][0]["lower_bound"] == 5);  // each is over half a stick
    CHECK(plan["proof"][0]["proved"] == true);
    CHECK(plan["problems"].empty());
}

TEST_CASE("38 ft 6 in is the longest eave that four 10 ft sticks cover between open ends") {
    const Desk desk;  // 4 × 114 in + 6 in = 462 in, by n = ⌈(L − lap)/(stock − lap)⌉
    const auto pieces = [&](const std::string& length) {
        const std::string file =
            desk.write("a.csv", readings_header + "A,eave,," + length + ",open,open,4/12\n");
        return desk.run({"plan", file, "--json"}).json()["edges"][0]["pieces"].size();
    };
    CHECK(pieces("38 ft 6 in") == 4);
    CHECK(pieces("38 ft 6 1/16 in") == 5);
    CHECK(pieces("10 ft") == 1);
    CHECK(pieces("10 ft 0 1/16 in") == 2);
}

TEST_CASE(
    "a right-hand start mirrors the run: the outside corner's tab follows the side fitted first") {
    const Desk desk;  // 30 ft = 360 in between outside corners: 1 in on the first end only, T = 361
    const std::string left =
        desk.write("l.csv", readings_header + "A,eave,,30 ft,corner_out,corner_out,4/12\n");
    const std::string right = desk.write("r.csv",
                                         "edge,kind,trim,length,left,right,pitch,first\n"
                                         "A,eave,,30 ft,corner_out,corner_out,4/12,right\n");
    const auto cuts = [&](const std::string& file) {
        return inches_of(desk.run({"plan", file, "--json"}).json(), "A", "eave_rolled", "cut_nm");
    };
    // 4 pieces: 2 × 114 between; 360 − 228 = 132, so 66 seen at each end: 66+1+6, 66.
    CHECK(cuts(left) == std::vector<double>{73, 120, 120, 66});
    CHECK(cuts(right) == cuts(left));
}

TEST_CASE("covered lengths sum to the edge exactly, in inches and in millimetres") {
    const Desk desk;
    const auto sum = [&](const std::string& length, std::vector<std::string> more) {
        const std::string file =
            desk.write("a.csv", readings_header + "A,eave,," + length + ",gable,corner_in,4/12\n");
        std::vector<std::string> words = {"plan", file, "--json"};
        words.insert(words.end(), more.begin(), more.end());
        const auto plan = desk.run(words).json();
        std::int64_t covers = 0;
        for (const auto& piece : plan["edges"][0]["pieces"]) {
            covers += piece["covers_nm"].get<std::int64_t>();
        }
        return covers;
    };
    CHECK(sum("31 ft 7 5/8 in", {}) == (31 * 12 + 7) * inch_nm + 10 * sixteenth_nm);
    CHECK(sum("9650", {"--unit", "mm"}) == 9'650'000'000);
    CHECK(sum("9650 mm", {"--unit", "mm"}) == 9'650'000'000);
    CHECK(sum("9.65 m", {}) == 9'650'000'000);
    CHECK(sum("379.625", {"--unit", "in"}) == 379 * inch_nm + 10 * sixteenth_nm);
    CHECK(sum("6074", {"--unit", "16ths"}) == 6074 * sixteenth_nm);
    CHECK(sum("9642475000", {"--unit", "nm"}) == 9'642'475'000);
}

TEST_CASE("a metric desk cuts on whole millimetres") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header + "A,eave,,14000,wall,wall,4/12\n");
    const auto plan = desk.run({"plan", file, "--unit", "mm", "--stock", "3000", "--json"}).json();
    REQUIRE(plan["edges"].size() == 1);
    const auto& pieces = plan["edges"][0]["pieces"];
    REQUIRE(pieces.size() == 5);  // ⌈(14000 − 152.4)/(3000 − 152.4)⌉ = ⌈4.86⌉
    for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
        CHECK(pieces[i]["cut_nm"].get<std::int64_t>() % 1'000'000 == 0);
    }
    CHECK(pieces[1]["cut"] == "3000 mm");
    check_sticks(plan);
}

TEST_CASE("wrap and cleat runs come after the edge's main trim, only when asked for") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header +
                                "A,eave,,46 ft,gable,gable,5/12\nB,eave,,12 ft,wall,open,5/12\n");
    const auto trims = [&](const std::vector<std::string>& words) {
        std::string list;
        const auto plan = desk.run(words).json();
        check_sticks(plan);
        for (const auto& run : plan["edges"]) {
            list += run["edge"].get<std::string>() + ' ' + run["trim"].get<std::string>() + ", ";
        }
        return list;
    };
    CHECK(trims({"plan", file, "--json"}) == "A eave_rolled, B eave_rolled, ");
    CHECK(trims({"plan", file, "--json", "--cleat"}) ==
          "A eave_rolled, A cleat, B eave_rolled, B cleat, ");
    CHECK(trims({"plan", file, "--json", "--cleat", "--wrap"}) ==
          "A eave_rolled, A fascia_wrap, A cleat, B eave_rolled, B fascia_wrap, B cleat, ");
}

TEST_CASE("a butted cleat covers its edge with no lap, its joints 3 in clear of the trim's laps") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header + "A,eave,,46 ft,gable,gable,5/12\n");
    const auto plan = desk.run({"plan", file, "--cleat", "--json"}).json();
    const auto trim = inches_of(plan, "A", "eave_rolled", "covers_nm");
    const auto cleat = inches_of(plan, "A", "cleat", "covers_nm");
    CHECK(inches_of(plan, "A", "cleat", "cut_nm") == cleat);
    double sum = 0, joint = 0;
    for (const double one : cleat) {
        sum += one;
    }
    CHECK(sum == 552);
    for (std::size_t i = 0; i + 1 < cleat.size(); ++i) {
        joint += cleat[i];
        double seam = 0;
        for (std::size_t k = 0; k + 1 < trim.size(); ++k) {
            seam += trim[k];  // the lap reaches from here 6 in on
            CHECK((joint <= seam - 3 || joint >= seam + 6 + 3));
        }
    }
}

TEST_CASE("the JSON of a plan has the agreed keys") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header + "A,eave,,46 ft 0 1/4 in,gable,corner_out,5/12\n");
    const Ran ran = desk.run({"plan", file, "--json"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    const auto plan = ran.json();
    for (const char* key : {"edges", "sticks", "proof", "problems"}) {
        REQUIRE(plan.contains(key));
        CHECK(plan[key].is_array());
    }
    const auto has = [](const nlohmann::json& json, std::vector<std::string> keys) {
        for (const std::string& key : keys) {
            CHECK_MESSAGE(json.contains(key), key);
        }
    };
    has(plan["edges"][0], {"edge", "trim", "pieces"});
    has(plan["edges"][0]["pieces"][0], {"piece", "cut_nm", "cut", "covers_nm", "stick", "from_nm"});
    has(plan["sticks"][0], {"trim", "stick", "stock_nm", "used_nm", "left_nm"});
    has(plan["proof"][0], {"trim", "sticks", "lower_bound", "proved"});
    CHECK(plan["edges"][0]["pieces"][0]["piece"] == 1);
    CHECK(plan["sticks"][0]["stock_nm"] == 120 * inch_nm);
}

TEST_CASE("a pitch that does not suit the trim is a problem of the plan at its cell, and exit 0") {
    const Desk desk;
    const std::string file = desk.write(
        "a.csv", readings_header +
                     "A,eave,,20 ft,open,open,5/12\nB,eave,eave_rolled,20 ft,open,open,9/12\n");
    const Ran ran = desk.run({"plan", file, "--json"});
    CHECK(ran.exit == 0);
    const auto plan = ran.json();
    REQUIRE(plan["problems"].size() >= 1);
    const auto& problem = plan["problems"][0];
    CHECK(problem["edge"] == "B");
    CHECK(problem["field"] == "pitch");
    CHECK(problem["severity"] == "problem");
    CHECK(problem["line"] == 3);
    CHECK(problem["column"] == 36);
    CHECK(!problem["what"].get<std::string>().empty());
    CHECK(!problem["mend"].get<std::string>().empty());
    CHECK(plan["edges"].size() == 2);  // planned all the same
}

TEST_CASE("the printed plan names edge, cuts, sticks, the bound and the caution") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", readings_header + "A,eave,,46 ft,gable,gable,5/12\n");
    const Ran ran = desk.run({"plan", file});
    CHECK(ran.exit == 0);
    for (const char* words :
         {"Edge A", "46 ft", "9 ft 4 in", "8 ft 10 in", "stick 1", "proved fewest",
          "none can use fewer than 5", "gloves", "printed instructions"}) {
        CHECK_MESSAGE(ran.out.find(words) != std::string::npos, words, ran.out);
    }
}

TEST_CASE("rows, columns and line ends may come in any order and kind") {
    const Desk desk;
    const std::string plain =
        desk.write("a.csv", readings_header + "A,eave,,46 ft,gable,gable,5/12\n");
    const std::string turned = desk.write("b.csv",
                                          "\xEF\xBB\xBFpitch,right,left,length,trim,kind,edge\r\n"
                                          "5/12,gable,gable,\"46' 0\"\"\",,eave,A\r\n");
    CHECK(desk.run({"plan", plain, "--json"}).json() ==
          desk.run({"plan", turned, "--json"}).json());
}

TEST_CASE("the same readings give the same plan, byte for byte") {
    const Desk desk;
    std::string rows = readings_header;
    for (int i = 1; i <= 12; ++i) {
        rows += "E" + std::to_string(i) + ",eave,," + std::to_string(11 + 5 * i) + " ft " +
                std::to_string(i % 12) + " in,gable,wall,5/12\n";
    }
    const std::string file = desk.write("a.csv", rows);
    const Ran once = desk.run({"plan", file, "--json", "--cleat", "--wrap"});
    CHECK(once.exit == 0);
    check_sticks(once.json());
    CHECK(once.out == desk.run({"plan", file, "--json", "--cleat", "--wrap"}).out);
}

TEST_CASE("the bound of a mixed roof is never above the count, and proved only where they meet") {
    const Desk desk;
    std::string rows = readings_header;
    for (int i = 1; i <= 40; ++i) {
        rows += "E" + std::to_string(i) + ",eave,," + std::to_string(900 + 277 * i % 4000) +
                " mm,wall,open,5/12\n";
    }
    const auto plan = desk.run({"plan", desk.write("a.csv", rows), "--cleat", "--json"}).json();
    check_sticks(plan);
    REQUIRE(plan["proof"].size() == 2);
    for (const auto& proof : plan["proof"]) {
        CHECK(proof["lower_bound"] <= proof["sticks"]);
        CHECK(proof["proved"] == (proof["lower_bound"] == proof["sticks"]));
        const std::string trim = proof["trim"];
        const auto& sticks = plan["sticks"];
        CHECK(std::count_if(sticks.begin(), sticks.end(), [&](const auto& stick) {
                  return stick["trim"] == trim;
              }) == proof["sticks"]);
    }
}

// 46 ft = 552 in: full sticks show 112 in with laps of 8, so (552 − 336)/2 = 108 at each end.
// Computed by hand.
TEST_CASE("a row's own lap divides that edge alone, and one that cannot be names its cell") {
    const Desk desk;
    const std::string with_lap = "edge,kind,trim,length,left,right,pitch,lap\n";
    const std::string file = desk.write("a.csv", with_lap +
                                                     "A,eave,,46 ft,gable,gable,5/12,8 in\n"
                                                     "B,eave,,46 ft,gable,gable,5/12,\n");
    const auto plan = desk.run({"plan", file, "--json"}).json();
    CHECK(inches_of(plan, "A", "eave_rolled", "cut_nm") ==
          std::vector<double>{117, 120, 120, 120, 109});
    CHECK(inches_of(plan, "B", "eave_rolled", "cut_nm") ==
          std::vector<double>{112, 120, 120, 120, 106});
    const std::string words = desk.run({"plan", file}).out;
    CHECK(
        words.find("Edge A, eave: 46 ft, eave_rolled, balanced, fitted from the left, laps 8 in") !=
        std::string::npos);
    CHECK(words.find("fitted from the left, laps 6 in") != std::string::npos);

    const std::string bad =
        desk.write("b.csv", with_lap + "A,eave,,46 ft,gable,gable,5/12,10 ft\n");
    const auto wrong = desk.run({"plan", bad, "--json"}).json();
    REQUIRE(wrong["problems"].size() == 1);
    CHECK(wrong["problems"][0]["what"] == "lap \"10 ft\" is not shorter than the stock of 10 ft.");
    CHECK(desk.run({"plan", bad}).out.find("b.csv:2:32: ") != std::string::npos);
    const std::string zero =
        desk.write("c.csv", with_lap + "A,eave,,46 ft,gable,gable,5/12,0 in\n");
    CHECK(desk.run({"plan", zero}).err.find("lap \"0 in\" is zero.") != std::string::npos);
}

// Common practice, no published source: 2 in from both ends and every 12 in; a ridge on both legs
// two a pan of 16 in: seven whole pans and one screw in the last 8 in.
TEST_CASE("the plan counts each run's screws, and its sealant by the laps") {
    const Desk desk;
    const std::string file = desk.write("fixing.csv", readings_header +
                                                          "A,eave,,10 ft,open,open,6/12\n"
                                                          "R,ridge,,10 ft,open,open,6/12\n"
                                                          "B,eave,,19 ft,open,open,6/12\n");
    const auto fixing = desk.run({"plan", file, "--json"}).json()["fixing"];
    REQUIRE(fixing.size() == 3);
    CHECK(fixing[0]["screws"] == 11);
    CHECK(fixing[0]["bead_nm"] == 0);
    CHECK(fixing[1]["screws"] == 30);
    CHECK(fixing[2]["laps"] == 1);
    // Two beads over a 4 in flange and a 3 1/2 in face.
    CHECK(fixing[2]["bead_nm"] == 15 * 16 * sixteenth_nm);
    CHECK(fixing[2]["cartridges"].get<double>() > 0);
    CHECK(desk.run({"plan", file}).out.find("edge R, ridge_cap: 30 screws") != std::string::npos);
}
