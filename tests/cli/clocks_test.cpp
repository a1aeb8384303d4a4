// Clocks that are years off: everybody keeps the right days, the program says whose clock it is,
// and no time locks a job.
#include <doctest/doctest.h>

#include <ctime>
#include <fstream>

#include "tests/cli/frames.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::string day_of(std::time_t time) {
    char text[16];
    std::strftime(text, sizeof text, "%Y-%m-%d", std::localtime(&time));
    return text;
}

nlohmann::json sheet(const Desk& desk, const std::string& day) {
    return fine(desk.run({"day", "all", day, "--json"})).json()["people"];
}

/// `one` of Ada, and `all`: it with Hal's reading, whose tablet is ten years ahead, and Ada's after
/// it.
void start_ten_years_ahead(const Desk& desk) {
    fine(desk.run({"new", "one", "--by", "Ada", "--from", desk.write("roof.csv", one_eave)}));
    fine(desk.run({"pack", "one", "job.hemline"}));
    fine(desk.run({"unpack", "job.hemline", "hal"}));
    fine(desk.run_at("+4000d", {"take", "hal", "A", "46 ft", "--by", "Hal"}));
    fine(desk.run({"merge", "all", "one", "hal"}));
    fine(desk.run({"take", "all", "A", "46 ft", "--by", "Ada"}));
}

}  // namespace

TEST_CASE("after a tablet ten years ahead is merged, the sheet of today lists today's work") {
    const Desk desk;
    const std::time_t now = std::time(nullptr);
    start_ten_years_ahead(desk);
    const auto today = sheet(desk, day_of(now));
    REQUIRE(today.size() == 1);
    CHECK(today[0]["name"] == "Ada");
    CHECK(today[0]["readings"] == 2);
    constexpr std::time_t ahead_s = std::time_t{4000} * 86'400;
    const auto ahead = sheet(desk, day_of(now + ahead_s));
    REQUIRE(ahead.size() == 1);
    CHECK(ahead[0]["name"] == "Hal");
    const std::string journal = fine(desk.run({"journal", "all"})).out;
    const std::string last = journal.substr(journal.rfind('\n', journal.size() - 2) + 1);
    CHECK(has(last, " " + day_of(now).substr(0, 4)));
    CHECK(has(last, "Ada Edge A read"));
    fine(desk.run({"pack", "all", "all.hemline"}));
}

TEST_CASE("show says whose clock is off, by how much, and to set it; of two it says to look") {
    const Desk desk;
    start_ten_years_ahead(desk);
    const std::string two = fine(desk.run({"show", "all"})).out;
    CHECK(has(two, "Hal's tablet"));
    CHECK(has(two, "are 10 years or more apart. Look at both"));
    fine(desk.run({"unpack", "job.hemline", "ben"}));
    fine(desk.run({"merge", "ben", "all"}));
    fine(desk.run({"take", "ben", "A", "46 ft", "--by", "Ben"}));
    fine(desk.run({"merge", "all", "ben"}));
    const std::string three = fine(desk.run({"show", "all"})).out;
    CHECK(has(three,
              "Hal's tablet is 10 years or more ahead of the others. Set that tablet's clock"));
    const auto clocks = fine(desk.run({"show", "all", "--json"})).json()["clocks"];
    REQUIRE(clocks.size() == 1);
    CHECK(has(three, clocks[0].get<std::string>()));
    CHECK(fine(desk.run({"show", "one", "--json"})).json()["clocks"].empty());
}

TEST_CASE("an event of the last millisecond of 9999, or of the last time there is, locks nothing") {
    constexpr std::int64_t last_ms = 253'402'300'799'999;
    constexpr std::uint32_t most = 0xFFFF'FFFFU;
    const FrameHead before{{0x77, most}, last_ms, most, "Hal", {}},
        last{{0x78, most}, last_ms + 1, most, "Hal", last_ms};
    for (const FrameHead& head : {before, last}) {
        const Desk desk;
        fine(desk.run({"new", "job", "--from", desk.write("roof.csv", one_eave)}));
        std::ofstream(desk.folder() / "job" / "hal.journal", std::ios::binary)
            << frame(head, 3, reading_fields(552));
        for (int i = 1; i <= 3; ++i) {
            const Ran took = fine(desk.run({"take", "job", "A", "46 ft", "--by", "Ada"}));
            CHECK(took.err.empty());
            const auto shown = fine(desk.run({"show", "job", "--json"})).json();
            CHECK(shown["readings"].size() == static_cast<std::size_t>(2 + i));
            CHECK(shown["set_aside"].empty());
            CHECK(shown["conflicts"].empty());
        }
        fine(desk.run({"merge", "copy", "job"}));
        CHECK(desk.run({"journal", "copy"}).out == desk.run({"journal", "job"}).out);
    }
}

TEST_CASE("a time past the last there is, and a clock past 9999, are set aside with words") {
    constexpr std::int64_t last_ms = 253'402'300'799'999;
    const Desk desk;
    fine(desk.run({"new", "job", "--from", desk.write("roof.csv", one_eave)}));
    std::ofstream(desk.folder() / "job" / "hal.journal", std::ios::binary)
        << frame({{0x77, 1}, last_ms + 2, 0, "Hal", last_ms}, 3, reading_fields(552))
        << frame({{0x77, 2}, last_ms, 0, "Hal", last_ms + 1}, 3, reading_fields(552));
    const Ran shown = fine(desk.run({"show", "job"}));
    CHECK(has(shown.err, "(time: out of range)"));
    CHECK(has(shown.err, "(clock: out of range)"));
    fine(desk.run({"take", "job", "A", "46 ft"}));
    fine(desk.run({"merge", "copy", "job"}));  // kept
    CHECK(has(desk.run({"show", "copy"}).err, "(time: out of range)"));
}
