#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "tests/cli/program.h"

using namespace hemline::test;

// Degrees of 12ths from rafter tables: 26.57 at 6 rise.
TEST_CASE("fold gives included angle, bend and way for every kind of edge") {
    const Desk desk;
    struct Row {
        std::string edge;
        double included;
        std::string toward;
    };
    for (const Row& row : std::vector<Row>{{"eave", 116.57, "down"},
                                           {"high_eave", 63.43, "down"},
                                           {"gable", 90, "down"},
                                           {"sidewall", 90, "up"},
                                           {"headwall", 116.57, "up"},
                                           {"curb_head", 63.43, "up"},
                                           {"ridge", 126.87, "down"},
                                           {"hip", 143.13, "down"},
                                           {"valley", 143.13, "up"}}) {
        const auto json =
            desk.run({"fold", "--edge", row.edge, "--pitch", "6/12", "--json"}).json();
        CHECK_MESSAGE(std::abs(json["included_deg"].get<double>() - row.included) <= 0.006,
                      row.edge);
        CHECK(json["included_deg"].get<double>() + json["bend_deg"].get<double>() ==
              doctest::Approx(180));
        CHECK_MESSAGE(json["toward"] == row.toward, row.edge);
    }
}

// Audel vol. 3: jacks 16 in apart at 10 rise differ by 20.83 in, 20 13/16 on the tape.
TEST_CASE("fold says by how much the panels along a hip differ") {
    const Desk desk;
    const auto json = desk.run({"fold", "--edge", "hip", "--pitch", "10/12", "--json"}).json();
    CHECK(json["jacks1"] == "1 ft 8 13/16 in");
    CHECK(json["jacks1_nm"] == json["jacks2_nm"]);
    CHECK(desk.run({"fold", "--edge", "hip", "--pitch", "10/12"})
              .out.find("Panels 1 ft 4 in wide differ by 1 ft 8 13/16 in on the first roof") !=
          std::string::npos);
    CHECK(!desk.run({"fold", "--edge", "eave", "--pitch", "10/12", "--json"})
               .json()
               .contains("jacks1"));
}

TEST_CASE("fold takes two pitches, a corner and a square-cut fascia") {
    const Desk desk;
    // Backings 20.27° and 29.99° of a published irregular hip, 8 and 10 in 12: their sum.
    const auto hip =
        desk.run({"fold", "--edge", "hip", "--pitch", "8/12", "--pitch2", "10/12", "--json"})
            .json();
    CHECK(std::abs(hip["bend_deg"].get<double>() - (20.27 + 29.99)) <= 0.011);
    CHECK(std::abs(hip["slope_deg"].get<double>() - 27.50) <= 0.006);
    // By hand, see tests/engine/roof/fold_angle_test.cpp.
    const auto wide =
        desk.run({"fold", "--edge", "hip", "--pitch", "6/12", "--corner", "135", "--json"}).json();
    CHECK(std::abs(wide["included_deg"].get<double>() - 160.29) <= 0.006);
    const auto square =
        desk.run({"fold", "--edge", "eave", "--pitch", "6/12", "--fascia", "square", "--json"})
            .json();
    CHECK(square["included_deg"].get<double>() == 90);
    const auto down =
        desk.run({"fold", "--edge", "transition", "--pitch", "8/12", "--pitch2", "4/12", "--json"})
            .json();
    CHECK(down["toward"] == "down");
}

TEST_CASE("fold speaks of metal and brake") {
    const Desk desk;
    const Ran ran = desk.run({"fold", "--edge", "valley", "--pitch", "6/12"});
    CHECK(ran.exit == 0);
    CHECK(ran.out.find("143.13 deg included on the metal") != std::string::npos);
    CHECK(ran.out.find("bend 36.87 deg on the brake") != std::string::npos);
    CHECK(ran.out.find("turned up") != std::string::npos);
}

TEST_CASE("fold checks an option that the kind does not need, and then passes over it") {
    const Desk desk;
    const auto plain = desk.run({"fold", "--edge", "gable", "--pitch", "6/12", "--json"});
    const auto full = desk.run({"fold", "--edge", "gable", "--pitch", "6/12", "--pitch2", "9/12",
                                "--corner", "135", "--fascia", "square", "--json"});
    CHECK(full.exit == 0);
    CHECK(full.out == plain.out);
    for (const auto& [option, text] : std::vector<std::pair<std::string, std::string>>{
             {"--pitch2", "9"}, {"--corner", "square"}, {"--pitch2", ""}, {"--corner", ""}}) {
        const Ran ran = desk.run({"fold", "--edge", "gable", "--pitch", "6/12", option, text});
        CHECK(ran.exit == 1);
        CHECK_MESSAGE(ran.err.rfind(option + ":1:", 0) == 0, ran.err);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 2);
    }
}

TEST_CASE("fold refuses what cannot be folded, and wrong usage apart from it") {
    const Desk desk;
    CHECK(desk.run({"fold", "--edge", "hip", "--pitch", "6/12", "--corner", "180"}).exit == 1);
    CHECK(desk.run({"fold", "--edge", "hip", "--pitch", "6/12", "--corner", "270"}).exit == 1);
    CHECK(desk.run({"fold", "--edge", "eave", "--pitch", "six"}).exit == 1);
    CHECK(desk.run({"fold", "--edge", "cornice", "--pitch", "6/12"}).exit == 2);
    CHECK(desk.run({"fold", "--edge", "eave"}).exit == 2);
    const Ran lonely = desk.run({"fold", "--edge", "transition", "--pitch", "6/12"});
    CHECK(lonely.exit == 2);
    CHECK(lonely.err.find("--pitch2") != std::string::npos);
}
