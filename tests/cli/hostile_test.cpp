// Jobs that no crew writes: journals that check out and say far too much, read by every command of
// the real program in a separate process. Nothing is timed: quadratic growth would take minutes,
// and the time limit of the tests would end it. Growth in memory is caught by a generous cap.
#include <doctest/doctest.h>

#include "tests/cli/hostile_journal.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// What a small tablet can spare for a program, many times what an ordinary job takes.
// The sanitizers keep what was given back for a while, and shadow all of it.
#ifdef __SANITIZE_ADDRESS__
constexpr std::int64_t memory_most_kb = 2'000'000, plan_most_kb = 1'000'000;
#else
constexpr std::int64_t memory_most_kb = 400'000, plan_most_kb = 200'000;
#endif
constexpr std::int64_t metre_nm = 1'000'000'000;

/// Every command that reads a job reads this job, within the memory; returns what `show` says about
/// it.
Ran read_by_every_command(const Desk& desk, const HostileJournal& journal) {
    journal.save(desk.folder() / "job");
    const Ran shown = desk.run({"show", "job", "--json"});
    const std::vector<std::vector<std::string>> commands = {
        {"show", "job"},
        {"journal", "job"},
        {"day", "job", "2023-11-14"},
        {"day", "job", "2023-11-14", "--html", "day.html"},
        {"pack", "job", "job.zip"},
        {"merge", "both", "job"},
        {"take", "job", "A", "46 ft"}};
    CHECK(shown.exit == 0);
    CHECK(shown.peak_kib < memory_most_kb);
    for (const std::vector<std::string>& command : commands) {
        CAPTURE(command.front());
        const Ran ran = desk.run(command);
        CHECK_MESSAGE(ran.exit == 0, ran.err);
        CHECK(ran.peak_kib < memory_most_kb);
    }
    return shown;
}

/// The first of what was left out of the job.
std::string left_out(const Ran& shown) {
    const auto all = shown.json()["left_out"];
    return all.empty() ? "" : all[0]["what"].get<std::string>();
}

Payload lengths(int many, std::int64_t first_nm) {
    Payload fields;
    fields.number(static_cast<std::uint64_t>(many), 4);
    for (int i = 0; i < many; ++i) {
        fields.length(first_nm - i * 1000);
    }
    return fields;
}

}  // namespace

TEST_SUITE_BEGIN("large");

TEST_CASE("A journal of 31 KiB with 4,000 stock lengths is planned with the longest, and says so") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    journal.event(24, lengths(4000, 10 * 12 * inch_nm));
    const Ran shown = read_by_every_command(desk, journal);
    CHECK((left_out(shown).find("16 longest") != std::string::npos ||
           !shown.json()["set_aside"].empty()));
}

TEST_CASE("Fifty thousand legs of one section do not stop the crew, and are said") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    Payload section;
    section.text("eave_rolled").number(50'000, 4);
    for (int i = 0; i < 50'000; ++i) {
        section.length(inch_nm).octet(0).octet(0);
    }
    journal.event(30, section);
    const Ran shown = read_by_every_command(desk, journal);
    CHECK((left_out(shown).find("50000 legs") != std::string::npos ||
           !shown.json()["set_aside"].empty()));
}

TEST_CASE("Ten thousand readings of one edge are read, listed and agreed") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    std::vector<std::uint32_t> last;
    for (int i = 0; i < 10'000; ++i) {
        last = {journal.read("A", 46 * 12 * inch_nm + i % 2000 * 12 * inch_nm + i, last)};
    }
    const Ran shown = read_by_every_command(desk, journal);
    CHECK(shown.json()["readings"].size() == 10'008);
}

TEST_CASE(
    "Eighty thousand readings superseded, four thousand by each of twenty, are read and agree") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    std::vector<std::uint32_t> all;
    for (int i = 0; i < 80'000; ++i) {
        all.push_back(journal.read("A", 46 * 12 * inch_nm + i % 9 * 12 * inch_nm));
    }
    for (int i = 0; i < 20; ++i) {
        const auto from = all.begin() + i * 4000;
        journal.read("A", 46 * 12 * inch_nm, {from, from + 4000});
    }
    const Ran shown = read_by_every_command(desk, journal);
    CHECK(shown.json()["readings"].size() == 80'028);
    CHECK(shown.json()["edges"][0]["length"] == "46 ft");
}

TEST_CASE("Two numbers that stand for five thousand readings each, in turn, are told once each") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    for (int i = 0; i < 5000; ++i) {
        for (const std::uint64_t device : {0x2222U, 0x3333U}) {
            journal.event_as({device, 1}, 3,
                             Payload().text("A").octet(0).length(
                                 static_cast<std::int64_t>(device % 99) * inch_nm + i));
        }
    }
    const Ran shown = read_by_every_command(desk, journal);
    const nlohmann::json job = shown.json();
    for (const auto& conflict : job["conflicts"]) {
        CHECK(conflict["events"].size() <= 10'001);
    }
}

TEST_CASE("A million events that cannot be read are one line, and the job is whole") {
    const Desk desk;
    HostileJournal journal;
    for (int i = 0; i < 1'000'000; ++i) {
        journal.frame(7, std::string(1, '\1'));
    }
    journal.house();
    journal.save(desk.folder() / "job");
    const Ran shown = desk.run({"show", "job", "--json"});
    CHECK(shown.exit == 0);
    CHECK(shown.peak_kib < memory_most_kb);
    const auto aside = shown.json()["set_aside"];
    REQUIRE(aside.size() == 1);
    CHECK(aside[0]["size"] == 17'000'000);
    CHECK(aside[0]["why"].get<std::string>().find("1000000 events one after another") == 0);
    CHECK(shown.json()["edges"].size() == 4);
}

TEST_CASE("Twenty thousand events that cannot be read are in no command's way") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    for (int i = 0; i < 20'000; ++i) {
        journal.frame(7, std::string(1, '\1'));
    }
    read_by_every_command(desk, journal);
}

TEST_CASE(
    "Two hundred thousand events that cannot be read, each between two that can, are counted") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    for (int i = 0; i < 200'000; ++i) {
        journal.frame(7, std::string(1, '\1'));
        journal.event(60'000, Payload());
    }
    journal.save(desk.folder() / "job");
    const Ran shown = desk.run({"show", "job", "--json"});
    CHECK(shown.exit == 0);
    CHECK(shown.peak_kib < memory_most_kb);
    const auto aside = shown.json()["set_aside"];
    REQUIRE(aside.size() == 101);
    CHECK(aside[100]["why"].get<std::string>().find("in 199900 more places") == 0);
    std::uint64_t bytes = 0;
    for (const auto& place : aside) {
        bytes += place["size"].get<std::uint64_t>();
    }
    CHECK(bytes == 200'000ULL * 17);
}

TEST_CASE("Thirty thousand offcuts of different lengths are kept, shown and planned from") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    for (int i = 0; i < 30'000; ++i) {
        journal.event(21,
                      Payload().text("A").octet(0).length(9 * 12 * inch_nm + i * 1000).length(1));
    }
    read_by_every_command(desk, journal);
}

TEST_CASE("Of twenty thousand edges two thousand are on the job, and the others are said") {
    const Desk desk;
    HostileJournal journal;
    journal.house();
    for (int i = 0; i < 20'000; ++i) {
        journal.eave("E" + std::to_string(i), 14 * metre_nm + i * inch_nm);
    }
    const Ran shown = read_by_every_command(desk, journal);
    CHECK(shown.json()["edges"].size() == 2000);
    CHECK(left_out(shown).find("18004 more are left out") != std::string::npos);
}

TEST_CASE(
    "An eave of 1,000 m takes no more memory than the proof has room for, and is questioned") {
    const Desk desk;
    const std::string head = "edge,kind,trim,length,left,right,pitch\n";
    const std::string file = desk.write(
        "roof.csv", head +
                        "A,eave,,1000 m,gable,gable,5/12\nB,eave,,997 m,gable,corner_out,5/12\n"
                        "C,eave,,3 m,gable,gable,5/12\n");
    for (const char* prefer : {"sticks", "looks", "laps"}) {
        CAPTURE(prefer);
        const Ran ran = desk.run({"plan", file, "--prefer", prefer, "--json"});
        CHECK(ran.exit == 0);
        CHECK(ran.peak_kib < plan_most_kb);
        const auto problem = ran.json()["problems"][0];
        CHECK(problem["edge"] == "A");
        CHECK(problem["field"] == "length");
        CHECK(problem["line"] == 2);
        CHECK(problem["severity"] == "measure_again");
        CHECK(problem["what"].get<std::string>().find("was 10 m taken for 1000 m") !=
              std::string::npos);
        CHECK(ran.json()["problems"][1]["edge"] == "B");
        CHECK(ran.json()["problems"].size() == 2);
    }
    const Ran proved =
        desk.run({"plan", file, "--prefer", "sticks", "--json", "--certificate", "proof.json"});
    CHECK(proved.exit == 0);
    CHECK(proved.peak_kib < plan_most_kb);
}

TEST_CASE("A reading above 300 m is recorded and questioned, in feet and in millimetres") {
    const Desk desk;
    const std::string file = desk.write("roof.csv",
                                        "edge,kind,trim,length,left,right,pitch\n"
                                        "A,eave,,300 m,gable,gable,5/12\n"
                                        "B,eave,,301 m,gable,gable,5/12\n");
    const Ran started = desk.run({"new", "job", "--from", file});
    CHECK(started.exit == 0);
    CHECK(started.err.find(file + ":3:1: ") == 0);  // and of line 2 nothing
    CHECK(started.err.find("301000 mm") != std::string::npos);
    CHECK(started.err.find("987 ft") != std::string::npos);
    CHECK(desk.run({"take", "job", "A", "300 m"}).err.empty());
    const Ran taken = desk.run({"take", "job", "B", "301 m"});
    CHECK(taken.exit == 0);
    CHECK(taken.err.find("longer than the edge of any roof") != std::string::npos);
    CHECK(taken.err.find("Read again, and look at the unit.") != std::string::npos);
    CHECK(desk.run({"show", "job", "--json"}).json()["readings"].size() == 4);
}

TEST_CASE("Fifteen thousand pieces of as many lengths are cut, and that it is not proved is said") {
    const Desk desk;
    std::string pieces = "length,count\n";
    for (int i = 0; i < 15'000; ++i) {
        pieces += std::to_string(600 + i / 10) + '.' + std::to_string(i % 10) + " mm,1\n";
    }
    const std::string file = desk.write("pieces.csv", pieces);
    const Ran ran = desk.run({"cut", file, "--stock", "10 ft", "--json"});
    CHECK(ran.exit == 0);
    CHECK(ran.peak_kib < memory_most_kb);
    const auto plan = ran.json();
    CHECK(plan["new_sticks"] >= plan["new_lower_bound"]);
    CHECK(plan["proved"] == false);
    CHECK(plan["not_proved"] == "the job is larger than the proof has room for");
    CHECK(desk.run({"cut", file, "--stock", "10 ft"})
              .out.find("not proved: the job is larger than the proof has room for") !=
          std::string::npos);
}

TEST_SUITE_END();
