// `plan --certificate`, read by a program that links nothing of the engine.
#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <random>

#include "tests/certificate/joint_file.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

struct Shown {
    certificate::Readings readings;
    Json plan, proof;

    [[nodiscard]] std::string wrong() const {
        std::string all;
        for (const std::string& what : certificate::wrong_with_plan(readings, proof, plan)) {
            all += what + "; ";
        }
        return all;
    }
};

Shown plan(const Desk& desk, const std::string& csv, const std::vector<std::string>& more) {
    const std::string file = desk.write("roof.csv", csv);
    const std::string proof = (desk.folder() / "proof.json").string();
    std::vector<std::string> words = {"plan",          file,  "--unit", "16ths",
                                      "--certificate", proof, "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const Ran ran = desk.run(words);
    CHECK(ran.exit == 0);
    CHECK(ran.err == "");
    std::ifstream written(proof);
    return {certificate::read_readings(csv, sixteenth_nm), ran.json(),
            Json::parse(written, nullptr, false)};
}

constexpr const char* header = "edge,kind,trim,length,left,right,pitch,looks\n";

/// Random eaves and gables, some of which must be balanced.
std::string roof_by_chance(std::mt19937& random) {
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    std::string rows = header;
    for (int e = between(1, 6); e > 0; --e) {
        const bool is_eave = between(0, 3) > 0;
        rows += "E" + std::to_string(e) + (is_eave ? ",eave,," : ",gable,,") +
                std::to_string(between(30 * 16, 500 * 16)) +
                (is_eave ? ",gable,corner_out,5/12," : ",eave,eave,5/12,") +
                (between(0, 3) == 0 ? "balanced\n" : "\n");
    }
    return rows;
}

/// The parts of the choice that has most of them.
Json& most_parts(Json& proof) {
    Json* most = nullptr;
    for (Json& pool : proof["pools"]) {
        for (Json& choice : pool["choices"]) {
            if (most == nullptr || choice["parts"].size() > most->size()) {
                most = &choice["parts"];
            }
        }
    }
    return *most;
}

}  // namespace

TEST_CASE("Certificates of thirty roofs by chance hold, read without any of the planner's code" *
          doctest::test_suite("large")) {
    const Desk desk;
    std::mt19937 random(17);
    int choices = 0, proved = 0;
    for (int n = 0; n < 30; ++n) {
        CAPTURE(n);
        const char* prefer[] = {"looks", "laps", "sticks"};
        const Shown shown = plan(desk, roof_by_chance(random), {"--prefer", prefer[n % 3]});
        CHECK(shown.wrong() == "");
        for (const Json& choice : shown.plan["choices"]) {
            ++choices;
            proved += choice["proved"] == true ? 1 : 0;
        }
    }
    MESSAGE(proved << " of " << choices << " choices proved");
    CHECK(choices > 60);
}

TEST_CASE("With a wrap, a longer stick and whole millimetres the certificate holds too") {
    const Desk desk;
    const std::string rows = std::string(header) +
                             "E1,eave,,4576,gable,gable,5/12,\n"
                             "E2,eave,,7084,gable,corner_out,5/12,\n";
    CHECK(plan(desk, rows, {"--wrap", "--prefer", "sticks"}).wrong() == "");
    CHECK(plan(desk, rows, {"--cleat", "--stock", "12 ft"}).wrong() == "");
}

TEST_CASE("The demo roof's own readings file, in feet, inches and fractions, is checked as it is" *
          doctest::test_suite("long")) {
    const char* assets = std::getenv("HEMLINE_ASSETS");
    REQUIRE(assets != nullptr);
    std::ifstream stream(std::string(assets) + "/demo/readings.csv", std::ios::binary);
    const std::string readings{std::istreambuf_iterator<char>(stream), {}};
    const Desk desk;
    for (const char* prefer : {"looks", "laps", "sticks"}) {
        CAPTURE(prefer);
        Shown shown = plan(desk, readings, {"--prefer", prefer});
        CHECK(shown.readings.size() > 20);
        CHECK(shown.wrong() == "");
        // An edge read 1/16 in longer than it was planned.
        const std::size_t at = readings.find("9 ft 10 3/4 in");
        REQUIRE(at != std::string::npos);
        std::string longer = readings;
        longer.replace(at, 14, "9 ft 10 13/16 in");
        shown.readings = certificate::read_readings(longer, sixteenth_nm);
        CHECK(shown.wrong() == "an edge that is not as long as it was read; ");
    }
}

TEST_CASE("Planner and reader understand the same length by every notation") {
    const Desk desk;
    std::string rows = header;
    for (const char* length :
         {"4576", "9 650 mm", "9.65 m", "965 cm", "31 ft 7 5/8 in", "31.5 ft", "\"31' 7 5/8\"\"\"",
          "\"31' 7-5/8\"", "31-7-5/8", "31-7⅝", "31′ 7 5⁄8″", "379 5/8 in", "31 ft 7.625 in", "31'",
          "312 ½ in", "31 1/2 ft", ".5 m", "31 pies 7 pulgadas"}) {
        rows += "E" + std::to_string(rows.size()) + ",eave,," + length + ",gable,gable,5/12,\n";
    }
    CHECK(plan(desk, rows, {}).wrong() == "");
}

TEST_CASE(
    "Edges of one pool with laps of their own are shown by one certificate, and read from the "
    "file") {
    const Desk desk;
    const std::string rows =
        "edge,kind,trim,length,left,right,pitch,looks,lap\n"
        "E1,eave,,4576,gable,gable,5/12,,128\n"
        "E2,eave,,7084,gable,corner_out,5/12,,\n"
        "E3,eave,,4576,gable,gable,5/12,,160\n"
        "E4,eave,,3144,gable,gable,5/12,balanced,96\n";
    for (const char* prefer : {"looks", "laps", "sticks"}) {
        const Shown shown = plan(desk, rows, {"--wrap", "--prefer", prefer});
        CHECK(shown.wrong() == "");
        for (const Json& run : shown.plan["edges"]) {
            const std::int64_t laps[] = {128, 96, 160, 96};
            const auto edge = run["edge"].get<std::string>();
            CHECK(run["lap_nm"] == laps[edge[1] - '1'] * sixteenth_nm);
        }
        Shown otherwise = shown;
        otherwise.readings[0].lap += sixteenth_nm;
        CHECK(otherwise.wrong().rfind("an edge that is to lap otherwise", 0) == 0);
    }
}

TEST_CASE("The reader refuses a joint certificate or a plan that was tampered with" *
          doctest::test_suite("long")) {
    const Desk desk;
    const Shown good = plan(desk,
                            std::string(header) +
                                "E1,eave,,4576,gable,gable,5/12,\n"
                                "E2,eave,,7084,gable,gable,5/12,\n"
                                "E3,eave,,1431,gable,gable,5/12,balanced\n"
                                "E4,eave,,4776,gable,gable,5/12,\n",
                            {"--prefer", "sticks"});
    REQUIRE(good.wrong() == "");
    REQUIRE(good.plan["choices"].size() >= 3);
    const auto refused = [&](auto tamper) {
        Shown bad = good;
        tamper(bad);
        return bad.wrong() != "";
    };
    const auto choice = [](Shown& s) -> Json& { return s.proof["pools"][0]["choices"][0]; };
    // The job: another length, an edge that may run out and must not, a stick that is not a stick.
    CHECK(refused([](Shown& s) { s.readings[0].length += sixteenth_nm; }));
    CHECK(refused([](Shown& s) { s.proof["pools"][0]["edges"].erase(0); }));
    CHECK(refused([](Shown& s) { s.proof["pools"][0]["stock"][0]["supply"] = 1; }));
    CHECK(refused([](Shown& s) { s.proof["pools"][0]["edges"][1]["looks"] = "balanced"; }));
    CHECK(refused([](Shown& s) { s.proof["prefer"] = "looks"; }));
    CHECK(refused([](Shown& s) { s.proof["pools"][0]["edges"][1]["lap"] = 0; }));
    CHECK(refused([](Shown& s) { s.proof["pools"][0]["edges"][1]["stick"] = 0; }));
    // The plan: pieces that overlap, a stick less, a choice that says it takes fewer.
    CHECK(refused([](Shown& s) { s.plan["edges"][0]["pieces"][0]["from_nm"] = 1; }));
    CHECK(refused([](Shown& s) { s.plan["edges"][0]["pieces"].erase(0); }));
    CHECK(refused([](Shown& s) { s.plan["sticks"].erase(0); }));
    CHECK(refused([](Shown& s) { s.plan["choices"].erase(0); }));
    CHECK(refused([&](Shown& s) { choice(s)["layouts"].erase(0); }));
    CHECK(refused([&](Shown& s) { choice(s)["divisions"][0][0]["covers"] = sixteenth_nm; }));
    CHECK(refused([&](Shown& s) {
        for (Json* said : {&choice(s), &s.plan["choices"][0]}) {
            (*said)["unbalanced"] = (*said)["unbalanced"].get<int>() + 1;
        }
    }));
    // The bound: a stick more on both sides, parts gone, worths that hold too much.
    CHECK(refused([&](Shown& s) {
        for (Json* said : {&choice(s), &s.plan["choices"][0]}) {
            (*said)["lower_bound"] = (*said)["lower_bound"].get<int>() + 1;
            (*said)["proved"] = false;
        }
    }));
    CHECK(refused([](Shown& s) { most_parts(s.proof)[0]["edges"][0]["classes"] = 0; }));
    CHECK(refused([](Shown& s) { most_parts(s.proof)[0]["edges"].erase(0); }));
    CHECK(refused([](Shown& s) {
        most_parts(s.proof)[0]["edges"][0]["ranges"] = {{0, sixteenth_nm}, {0, sixteenth_nm}};
    }));
    CHECK(refused([](Shown& s) {
        Json& share = most_parts(s.proof)[0]["share"];
        share = share.get<std::int64_t>() / 2;
    }));
    CHECK(refused([](Shown& s) {
        Json& held = most_parts(s.proof)[0]["stick_worth"][0];
        held = held.get<std::int64_t>() - 1;
    }));
    CHECK(refused([](Shown& s) {
        Json& worth = most_parts(s.proof)[0]["worth"];
        worth.back() = 2 * worth.back().get<std::int64_t>();
    }));
    CHECK(refused([](Shown& s) { most_parts(s.proof)[0]["worth"][0] = std::int64_t{1} << 60; }));
}

TEST_CASE("A proof goes with choices, so not with a style, and to a file that can be written") {
    const Desk desk;
    const std::string file =
        desk.write("roof.csv", std::string(header) + "E1,eave,,4576,gable,gable,5/12,\n");
    CHECK(desk.run({"plan", file, "--unit", "16ths", "--style", "full", "--certificate", "p.json"})
              .exit == 2);
    const Ran ran = desk.run(
        {"plan", file, "--unit", "16ths", "--certificate", (desk.folder() / "no/p.json").string()});
    CHECK(ran.exit == 1);
    CHECK(ran.err.find("--certificate") != std::string::npos);
}
