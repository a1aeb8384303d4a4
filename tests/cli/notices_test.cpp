// `notices`: what the program is made of.
#include <doctest/doctest.h>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE(
    "notices says every part with version and licence, then its notice, and no licence of our "
    "own") {
    const Desk desk;
    const Ran ran = desk.run({"notices"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    for (const char* words :
         {"none is given yet", "Eigen 3.4.0", "MPL-2.0", "Dear ImGui", "SIL OPEN FONT LICENSE",
          "Mozilla Public License Version 2.0", "Apache License", "==== cereal",
          "Copyright (c) 2014, Randolph Voorhies", "Boost Software License - Version 1.0"}) {
        CHECK_MESSAGE(ran.out.find(words) != std::string::npos, words);
    }
    CHECK(ran.out.find("dxflib") == std::string::npos);
    CHECK(desk.run({"notices", "more"}).exit == 2);
}
