// The whole invented demo house at a desk: planned, carded, started as a job and shown.
#include <doctest/doctest.h>

#include <cstdlib>
#include <map>
#include <string>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::string demo() {
    const char* assets = std::getenv("HEMLINE_ASSETS");
    return std::string(assets != nullptr ? assets : "assets") + "/demo/readings.csv";
}

}  // namespace

TEST_CASE("The demo house is planned whole, each edge covered exactly and no problem left") {
    const Desk desk;
    const auto json = desk.run({"plan", demo(), "--wrap", "--cleat", "--json"}).json();
    CHECK(json["problems"].empty());
    std::map<std::string, std::int64_t> covered;
    for (const auto& edge : json["edges"]) {
        if (edge["role"] == "main") {
            for (const auto& piece : edge["pieces"]) {
                covered[edge["edge"]] += piece["covers_nm"].get<std::int64_t>();
            }
        }
    }
    CHECK(covered.size() == 27);
    CHECK(covered["X"] == inch_nm * 179 + inch_nm * 7 / 8);
    CHECK(json["closures"].size() == 10);
    // Two roofs end at the ridge: 21 ft 9 3/4 in in 16 in pans is 17 a side.
    CHECK(json["closures"][0]["count"] == 34);
    for (const auto& proof : json["proof"]) {
        CHECK(proof["sticks"] >= proof["lower_bound"]);
    }
}

TEST_CASE("Every edge of the demo house has its card, and a sloped one names foot and top") {
    const Desk desk;
    for (const std::string edge : {"A", "C", "J", "R", "T", "W", "X", "Y", "Z", "Y2", "H2"}) {
        CAPTURE(edge);
        const Ran card = desk.run({"card", demo(), edge, "1"});
        CHECK(card.exit == 0);
        const bool sloped = std::string("JTWXY").find(edge[0]) != std::string::npos && edge != "Y2";
        CHECK((card.out.find("Left end, the foot") != std::string::npos) == sloped);
    }
}

TEST_CASE("The demo house as a job shows what comes next on every edge, and what waits for what") {
    const Desk desk;
    REQUIRE(desk.run({"new", "house", "--from", demo()}).exit == 0);
    for (const std::string edge : {"A", "X"}) {
        const std::string length = edge == "A" ? "46 ft 0 1/4 in" : "14 ft 11 7/8 in";
        REQUIRE(desk.run({"take", "house", edge, length}).exit == 0);
    }
    const auto next = desk.run({"show", "house", "--json"}).json()["whats_next"];
    REQUIRE(next.size() == 27);
    CHECK(next[0]["edge"] == "A");
    CHECK(next[0]["waits_for"] == "");
    CHECK(next[1]["what"] == "Read the length of edge B a second time.");
    // The valley is read and could be fitted, were the eaves on.
    CHECK(next[26]["edge"] == "X");
    CHECK(next[26]["waits_for"] == "Finish eave A first: valley X goes over it.");
}

TEST_CASE("A sloped edge that is to be fitted from its top is planned from its foot, and says so") {
    const Desk desk;
    const auto json = desk.run({"plan",
                                desk.write("r.csv",
                                           "edge,kind,trim,length,left,right,pitch,first\n"
                                           "G,gable,,25 ft,eave,ridge,5/12,right\n"),
                                "--json"})
                          .json();
    REQUIRE(json["problems"].size() == 1);
    CHECK(json["problems"][0]["field"] == "first");
    CHECK(json["problems"][0]["line"] == 2);
    CHECK(json["problems"][0]["column"] == 32);
}

TEST_CASE("steps prints every procedure, and wrong work is wrong usage") {
    const Desk desk;
    for (const std::string work : {"eave", "gable", "ridge", "hip", "valley", "sidewall",
                                   "headwall", "transition", "high_eave", "penetration"}) {
        CAPTURE(work);
        CHECK(desk.run({"steps", work, "--json"}).json().size() >= 7);
        CHECK(desk.run({"steps", work}).exit == 0);
    }
    CHECK(desk.run({"steps", "chimney"}).exit == 2);
}
