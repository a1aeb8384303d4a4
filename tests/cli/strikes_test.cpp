// A bad file with strikes of themselves, of each other, and a chain of a hundred thousand: every
// command that names events gives its answer at once.
#include <doctest/doctest.h>
#include <sys/resource.h>

#include <ctime>
#include <fstream>

#include "tests/cli/frames.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// Of the programs that were run.
double processor_s() {
    rusage used{};
    ::getrusage(RUSAGE_CHILDREN, &used);
    return static_cast<double>(used.ru_utime.tv_sec) +
           static_cast<double>(used.ru_utime.tv_usec) / 1e6;
}

std::string bad_file(std::uint32_t chain) {
    constexpr std::int64_t today_ms = 1'780'000'000'000;
    std::string bytes;
    const auto strike = [&](std::uint32_t number, std::uint32_t target) {
        bytes += frame({{0x77, number}, today_ms + number, 0, "Hal", today_ms + number}, 11,
                       strike_fields({0x77, target}));
    };
    strike(1, 1);
    strike(2, 3);
    strike(3, 2);
    for (std::uint32_t i = 0; i < chain; ++i) {
        strike(4 + i, 3 + i);
    }
    return bytes;
}

}  // namespace

TEST_SUITE_BEGIN("large");

TEST_CASE("strikes of themselves, of each other and in a chain of 100,000 stop no command") {
    constexpr double processor_s_most = 100;  // a command; a square of these takes minutes
    const Desk desk;
    REQUIRE(desk.run({"new", "job", "--from", desk.write("roof.csv", one_eave)}).exit == 0);
    std::ofstream(desk.folder() / "job" / "hal.journal", std::ios::binary) << bad_file(100'000);
    const std::vector<std::vector<std::string>> commands = {{"journal", "job"},
                                                            {"show", "job"},
                                                            {"show", "job", "--json"},
                                                            {"day", "job", "2026-05-28"},
                                                            {"pack", "job", "job.hemline"},
                                                            {"take", "job", "A", "46 ft"},
                                                            {"merge", "copy", "job"}};
    for (const auto& command : commands) {
        CAPTURE(command[0]);
        const double before = processor_s();
        const Ran ran = desk.run(command);
        CAPTURE(ran.err);
        CHECK(ran.exit == 0);
        CHECK(processor_s() - before < processor_s_most);
        if (command[0] == "journal") {
            CHECK(ran.out.find("Crossed out 0000000000000077-1: undone (crossed out)\n") !=
                  std::string::npos);
            // In a chain of strikes by the same device every other strike is taken back.
            CHECK(ran.out.find("Crossed out 0000000000000077-49999: undone (crossed out)\n") !=
                  std::string::npos);
            CHECK(ran.out.find("Crossed out 0000000000000077-50000: undone\n") !=
                  std::string::npos);
        }
    }
}

TEST_SUITE_END();
