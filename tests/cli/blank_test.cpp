#include <doctest/doctest.h>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE("a blank's marks rise to its girth, one between each two legs") {
    const Desk desk;
    const auto blank = desk.run({"blank", "--trim", "eave_rolled", "--json"}).json();
    CHECK(blank["legs_sum_nm"] == 17 * inch_nm / 2);
    REQUIRE(blank["marks_nm"].size() == 3);
    REQUIRE(blank["legs"].size() == 4);
    std::int64_t before = 0;
    for (const auto& mark : blank["marks_nm"]) {
        CHECK(mark.get<std::int64_t>() > before);
        before = mark.get<std::int64_t>();
    }
    CHECK(before < blank["girth_nm"].get<std::int64_t>());
    // Bends in thin metal give back less than 1/16 in each.
    CHECK(blank["girth_nm"].get<std::int64_t>() > 17 * inch_nm / 2 - 2 * sixteenth_nm);
    CHECK(blank["order"].size() == 3);
    for (const auto& step : blank["order"]) {
        CHECK(step["can_be_made"] == true);
        CHECK(step["mark_nm"] == blank["marks_nm"][step["bend"].get<std::size_t>() - 1]);
    }
}

TEST_CASE("a blank's bends follow the pitch, the other pitch and the fascia") {
    const Desk desk;
    const auto bend = [&](std::vector<std::string> words, std::size_t leg) {
        words.insert(words.begin(), {"blank", "--json", "--trim"});
        return desk.run(words).json()["legs"][leg]["bend_deg"].get<double>();
    };
    // atan(5/12) = 22.62°, atan(9/12) = 36.87°: framing-square tables.
    CHECK(bend({"eave_rolled", "--pitch", "5/12"}, 1) == doctest::Approx(90 - 22.6199));
    CHECK(bend({"eave_rolled", "--pitch", "5/12", "--fascia", "square"}, 1) == 90);
    CHECK(bend({"ridge_cap", "--pitch", "5/12", "--pitch2", "9/12"}, 2) ==
          doctest::Approx(22.6199 + 36.8699));
    CHECK(bend({"hip_cap", "--pitch", "6/12", "--corner", "90"}, 2) ==
          doctest::Approx(180 - 143.1301));
}

TEST_CASE("a bend that the brake cannot make is said beside it") {
    const Desk desk;
    const Ran ran = desk.run({"blank", "--trim", "high_eave", "--pitch", "16/12"});
    CHECK(ran.exit == 0);
    CHECK(ran.out.find("cannot be made on this brake") != std::string::npos);
}

TEST_CASE("a trim or pitch that is not there is exit 1 with its mend, no trim exit 2") {
    const Desk desk;
    const Ran unknown = desk.run({"blank", "--trim", "gilded"});
    CHECK(unknown.exit == 1);
    CHECK(unknown.err.find("eave_rolled") != std::string::npos);
    CHECK(desk.run({"blank", "--trim", "valley", "--pitch", "steep"}).exit == 1);
    CHECK(desk.run({"blank", "--trim", "valley", "--pitch2", "5"}).exit == 1);
    CHECK(desk.run({"blank"}).exit == 2);
    CHECK(desk.run({"blank", "--trim", "valley", "--corner", "nan"}).exit == 1);
    CHECK(desk.run({"blank", "--trim", "valley", "--corner", "0"}).exit == 1);
    CHECK(desk.run({"blank", "--trim", "transition"}).exit == 0);
    CHECK(desk.run({"blank", "--trim", "transition", "--pitch", "4/12"}).exit == 1);
}
