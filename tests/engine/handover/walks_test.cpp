// A folder of invented walks, each against the edges that its roof has, worked out by hand.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "engine/handover/sides_file.h"

using namespace hemline;

namespace {

std::string bytes_of_walk(const std::filesystem::path& path) {
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

using KindsOfWalk = std::map<std::string, std::pair<int, double>>;  // how many, feet together

KindsOfWalk said_beside(const std::filesystem::path& walk) {
    KindsOfWalk kinds;
    std::ifstream file(std::filesystem::path(walk).replace_extension(".edges"));
    for (std::string line; std::getline(file, line);) {
        std::istringstream cells(line);
        std::string kind, count, length;
        std::getline(cells, kind, ',');
        std::getline(cells, count, ',');
        std::getline(cells, length, ',');
        kinds[kind] = {std::stoi(count), std::stod(length)};
    }
    return kinds;
}

}  // namespace

TEST_CASE("Every walk of the folder makes the roof that was worked out by hand") {
    int walks = 0;
    for (const auto& entry : std::filesystem::directory_iterator(
             std::filesystem::path(std::getenv("HEMLINE_SOURCE")) / "tests/walks")) {
        if (entry.path().extension() != ".csv") {
            continue;
        }
        INFO(entry.path().stem().string());
        const auto read = read_sides(bytes_of_walk(entry.path()));
        const auto* file = std::get_if<SidesFile>(&read);
        REQUIRE(file != nullptr);
        const auto roof = work_out_roof(file->bodies, Tape());
        REQUIRE(roof);
        REQUIRE(roof->closes);
        KindsOfWalk kinds;
        for (const BodyEdge& edge : roof->edges) {
            auto& [count, feet] = kinds[std::string(word_of(edge.kind))];
            ++count;
            feet += edge.length / 304.8e6;
        }
        const KindsOfWalk expected = said_beside(entry.path());
        CHECK(kinds.size() == expected.size());
        for (const auto& one : expected) {
            INFO(one.first);
            CHECK(kinds[one.first].first == one.second.first);
            CHECK(std::abs(kinds[one.first].second - one.second.second) < 2e-6);
        }
        ++walks;
    }
    CHECK(walks == 14);
}
