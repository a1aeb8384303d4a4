// A job made in millimeters is shown in millimeters.
#include <doctest/doctest.h>

#include <fstream>
#include <iterator>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE("A job made with --unit mm says its readings in mm, and a millimetre apart") {
    const Desk desk;
    const std::string readings = desk.write(
        "roof.csv", "edge,kind,trim,length,left,right,pitch\nA,eave,,9650,gable,gable,5/12\n");
    REQUIRE(desk.run({"new", "job", "--unit", "mm", "--from", readings}).exit == 0);
    const Ran taken = desk.run({"take", "job", "A", "9651 mm"});
    REQUIRE(taken.exit == 0);
    CHECK(has(taken.out, "Edge A 9651 mm saved"));
    for (const char* command : {"journal", "show"}) {
        const Ran ran = desk.run({command, "job"});
        CAPTURE(command);
        CHECK(ran.exit == 0);
        CHECK(has(ran.out, "9650 mm"));
        CHECK(has(ran.out, "9651 mm"));
        CHECK_FALSE(has(ran.out, " ft "));
    }
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(shown["readings"][0]["length"] == "9650 mm");
    CHECK(shown["next_cut"]["cut"].get<std::string>().find(" mm") != std::string::npos);
    CHECK(shown["next_cut"]["cut_nm"].get<std::int64_t>() % 1'000'000 == 0);  // on its grid
}

TEST_CASE("A reading in doubt is told in the job's unit") {
    const Desk desk;
    const std::string readings = desk.write(
        "roof.csv", "edge,kind,trim,length,left,right,pitch\nA,eave,,9650,gable,gable,5/12\n");
    REQUIRE(desk.run({"new", "job", "--unit", "mm", "--from", readings}).exit == 0);
    const Ran taken = desk.run({"take", "job", "A", "9676 mm"});
    CHECK(has(taken.err, "differ by 26 mm"));
    CHECK_FALSE(has(taken.err, "/32 in"));
}
