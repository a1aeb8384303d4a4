// `notices`: what the program is made of.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE("notices says every part with its version and license, then its notice, word for word") {
    const Desk desk;
    const Ran ran = desk.run({"notices"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    for (const char* words : {"none is given yet", "Eigen 3.4.0", "MPL-2.0", "==== cereal 1.3.2"}) {
        CHECK_MESSAGE(ran.out.find(words) != std::string::npos, words);
    }
    const std::filesystem::path folder = std::string(std::getenv("HEMLINE_ASSETS")) + "/notices";
    int texts = 0;
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        if (file.path().extension() == ".txt") {
            std::ifstream in(file.path());
            const std::string text{std::istreambuf_iterator<char>(in), {}};
            CHECK_MESSAGE(ran.out.find(text) != std::string::npos, file.path());
            ++texts;
        }
    }
    CHECK(texts >= 15);
    CHECK(desk.run({"notices", "more"}).exit == 2);
}
