// `day`: a job's day sheet at a desk.
#include <doctest/doctest.h>

#include <ctime>
#include <fstream>
#include <iterator>

#include <nlohmann/json.hpp>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::string today() {
    const std::time_t now = std::time(nullptr);
    char text[16];
    std::strftime(text, sizeof text, "%Y-%m-%d", std::localtime(&now));
    return text;
}

void start_read_twice(const Desk& desk) {
    REQUIRE(
        desk.run({"new", "job", "--by", "Ada", "--from", desk.write("roof.csv", one_eave)}).exit ==
        0);
    REQUIRE(desk.run({"take", "job", "A", "46 ft", "--by", "Ben"}).exit == 0);
}

}  // namespace

TEST_CASE("day says what each person did on that day") {
    const Desk desk;
    start_read_twice(desk);
    const Ran ran = desk.run({"day", "job", today()});
    CHECK(ran.exit == 0);
    CHECK(ran.out.find("  Ada: 1 reading.\n  Ben: 1 reading.\n") != std::string::npos);
    const auto json = nlohmann::json::parse(desk.run({"day", "job", today(), "--json"}).out);
    CHECK(json["people"][1]["name"] == "Ben");
    CHECK(json["people"][1]["readings"] == 1);
    CHECK(json["finished"].empty());
    CHECK(desk.run({"day", "job", "2001-01-01"}).out.find("Nothing was measured") !=
          std::string::npos);
}

TEST_CASE("day writes a page to print") {
    const Desk desk;
    start_read_twice(desk);
    const Ran ran = desk.run({"day", "job", today(), "--html", "sheet.html", "--paper", "a4"});
    CHECK(ran.exit == 0);
    std::ifstream file(desk.folder() / "sheet.html");
    const std::string page{std::istreambuf_iterator<char>(file), {}};
    CHECK(page.find("Ben: 1 reading.") != std::string::npos);
    CHECK(page.find("size:A4") != std::string::npos);
}

TEST_CASE("day refuses what is no day, and a page that cannot be written, with the mend") {
    const Desk desk;
    start_read_twice(desk);
    const Ran ran = desk.run({"day", "job", "4 May"});
    CHECK(ran.exit == 1);
    CHECK(ran.err.find("2026-05-04") != std::string::npos);
    CHECK(desk.run({"day", "job", today(), "--html", "no/such/folder/x"}).exit == 1);
    CHECK(desk.run({"day", "nothing", today()}).exit == 1);
}
