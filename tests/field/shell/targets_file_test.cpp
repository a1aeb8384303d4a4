#include "field/shell/targets_file.h"

#include <doctest/doctest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>

using namespace hemline;

namespace {

std::string read(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

struct Folder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("hemline-targets-" + std::to_string(getpid()));
    Folder() { std::filesystem::create_directories(path); }
    ~Folder() { std::filesystem::remove_all(path); }
};

}  // namespace

TEST_CASE("Targets are listed in window pixels, also where the drawable is denser") {
    const std::vector<Target> targets{{"keep", {100, 50, 200.25F, 80}}, {"a \"b\" \xff", {}}};
    const nlohmann::json at_one = nlohmann::json::parse(targets_json(targets, 1));
    CHECK(at_one.size() == 2);
    CHECK(at_one[0]["name"] == "keep");
    CHECK(at_one[0]["x"] == 100);
    CHECK(at_one[0]["w"] == 200.25);
    const nlohmann::json at_two = nlohmann::json::parse(targets_json(targets, 2));
    CHECK(at_two[0]["x"] == 50);
    CHECK(at_two[0]["h"] == 40);
}

TEST_CASE("The file is rewritten only when the targets change, and no part of it is left about") {
    const Folder folder;
    const std::filesystem::path file = folder.path / "targets.json";
    TargetsFile out(file);
    REQUIRE(out.update({{"keep", {1, 2, 3, 4}}}, 1));
    CHECK(nlohmann::json::parse(read(file))[0]["name"] == "keep");
    std::filesystem::remove(file);
    REQUIRE(out.update({{"keep", {1, 2, 3, 4}}}, 1));
    CHECK_FALSE(std::filesystem::exists(file));
    REQUIRE(out.update({{"keep", {1, 2, 3, 5}}}, 1));
    CHECK(nlohmann::json::parse(read(file))[0]["h"] == 5);
    CHECK(std::distance(std::filesystem::directory_iterator(folder.path), {}) == 1);
}

TEST_CASE("A file that cannot be written is said so") {
    TargetsFile out("/nowhere/at/all.json");
    CHECK_FALSE(out.update({}, 1));
}
