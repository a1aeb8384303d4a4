// `new --roof`: a job from the walk of a sides file.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <map>
#include <string>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE("A job from a walk has every edge of the roof, its pitch, and no reading") {
    const Desk desk;
    const std::string sides =
        desk.write("sides.csv",
                   "side,kind,length,corner,pitch\nA,eave,40 ft,,6/12\nB,gable,24 ft,,\nC,eave,,,\n"
                   "D,gable,,,\n");
    CHECK(desk.run({"new", "house", "--roof", sides, "--by", "R. Vale"}).exit == 0);
    const std::string journal = desk.run({"journal", "house"}).out;
    CHECK(journal.find("Roof 1 walked round: 4 sides") != std::string::npos);
    CHECK(journal.find("Edge A, pitch read: 6/12") != std::string::npos);
    CHECK(journal.find("ridge") != std::string::npos);
    CHECK(journal.find("read: 40 ft") == std::string::npos);
    const std::string shown = desk.run({"show", "house"}).out;
    CHECK(shown.find("Edge B, gable: no agreed length") != std::string::npos);
}

TEST_CASE("Sides that make no roof start no job, and both files at once are not taken") {
    const Desk desk;
    const std::string sides = desk.write(
        "sides.csv",
        "side,kind,length,corner,pitch\nA,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,40 ft,,\n");
    const Ran refused = desk.run({"new", "house", "--roof", sides});
    CHECK(refused.exit == 1);
    CHECK(refused.err.find("turns of the walk") != std::string::npos);
    CHECK(desk.run({"journal", "house"}).exit != 0);
    const std::string past =
        desk.write("past.csv",
                   "side,kind,length,corner,pitch,body,host,host_along,host_up,host_rise\n"
                   "A,eave,40 ft,,6/12,house,,,,\nB,gable,24 ft,,,house,,,,\nC,eave,,,,house,,,,\n"
                   "D,gable,,,,house,,,,\nE,gable,12 ft,,,dormer,A,14 ft,2 ft,4 ft\n"
                   "F,eave,,,12/12,dormer,,,,\nG,open,,,,dormer,,,,\nH,eave,,,,dormer,,,,\n");
    const Ran second = desk.run({"new", "house", "--roof", past});
    CHECK(second.exit == 1);
    CHECK(second.err.find(":6:1: Body dormer goes on past the roof above A") != std::string::npos);
    CHECK(desk.run({"journal", "house"}).exit != 0);
    CHECK(desk.run({"new", "house", "--roof", sides, "--from", sides}).exit == 2);
}

TEST_CASE("A job from bodies that run into one another has the edges that roof prints, by name") {
    int walks = 0;
    for (const auto& file : std::filesystem::directory_iterator(
             std::string(std::getenv("HEMLINE_SOURCE")) + "/tests/walks")) {
        if (file.path().extension() != ".csv") {
            continue;
        }
        CAPTURE(file.path().string());
        ++walks;
        const Desk desk;
        const auto roof = Json::parse(desk.run({"roof", file.path().string(), "--json"}).out);
        const Ran made = desk.run({"new", "house", "--roof", file.path().string()});
        CHECK_MESSAGE(made.exit == 0, made.err);
        const auto shown = Json::parse(desk.run({"show", "house", "--json"}).out);
        std::map<std::string, std::string> wanted, got;
        for (const auto& edge : roof["edges"]) {
            wanted[edge["edge"]] = edge["kind"];
        }
        for (const auto& edge : shown["edges"]) {
            got[edge["edge"]] = edge["kind"];
        }
        CHECK(wanted == got);
    }
    CHECK(walks >= 14);
}
