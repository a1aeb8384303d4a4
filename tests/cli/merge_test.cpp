// Three tablets at a desk: merge, pick, pack, unpack and carry, as a crew would use them.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

namespace fs = std::filesystem;

/// A job "one", and "two" unpacked from its file.
void start_two(const Desk& desk) {
    fine(desk.run({"new", "one", "--from", desk.write("roof.csv", two_eaves)}));
    fine(desk.run({"pack", "one", "job.hemline"}));
    fine(desk.run({"unpack", "job.hemline", "two"}));
}

nlohmann::json shown(const Desk& desk, const std::string& job) {
    auto json = fine(desk.run({"show", job, "--json"})).json();
    for (const char* key : {"job", "path", "device"}) {
        json.erase(key);
    }
    return json;
}

std::string journal_of(const Desk& desk, const std::string& job) {
    return fine(desk.run({"journal", job})).out;
}

}  // namespace

TEST_CASE("readings made apart are shown with value, person, device and time, and the cut waits") {
    const Desk desk;
    start_two(desk);
    const std::string ana =
        last_word(fine(desk.run({"take", "one", "A", "46 ft 0 1/4 in", "--by", "Ana"})).out);
    const std::string ben =
        last_word(fine(desk.run({"take", "two", "A", "46 ft 1 1/4 in", "--by", "Ben"})).out);
    CHECK(ana.substr(0, 16) != ben.substr(0, 16));
    CHECK(shown(desk, "one")["next_cut"]["edge"] == "A");
    fine(desk.run({"merge", "both", "one", "two"}));
    const auto both = shown(desk, "both");
    REQUIRE(both["conflicts"].size() == 1);
    const auto& events = both["conflicts"][0]["events"];
    REQUIRE(events.size() == 2);
    CHECK(both["conflicts"][0]["edge"] == "A");
    CHECK(events[0]["id"] == ana);
    CHECK(events[0]["by"] == "Ana");
    CHECK(events[0]["device"] == ana.substr(0, 16));
    CHECK(events[0]["length_nm"] == 552 * inch_nm + 4 * sixteenth_nm);
    CHECK(events[0]["time"].get<std::string>().size() == 24);
    CHECK(events[1]["id"] == ben);
    CHECK(events[1]["length_nm"] == 553 * inch_nm + 4 * sixteenth_nm);
    CHECK(both["readings"].size() == 4);
    CHECK(both["next_cut"].is_null());
    CHECK(both["status"][0]["status"] == "two tablets disagree: pick one");

    fine(desk.run({"pick", "both", ana, "--by", "Cleo"}));
    CHECK(shown(desk, "both")["conflicts"].empty());
    CHECK(shown(desk, "both")["next_cut"]["edge"] == "A");
    CHECK(desk.run({"pick", "both", ana}).exit == 1);
    // Measuring again does as well; then both ways out meet.
    fine(desk.run({"merge", "again", "two", "one"}));
    fine(desk.run({"take", "again", "A", "46 ft 0 1/4 in", "--by", "Dan"}));
    CHECK(shown(desk, "again")["conflicts"].empty());
    CHECK(shown(desk, "again")["next_cut"]["edge"] == "A");
    fine(desk.run({"merge", "all", "again", "both"}));
    CHECK(shown(desk, "all")["next_cut"]["edge"] == "A");
}

TEST_CASE("merging in any order, with repeats, in steps or packed, gives the same job") {
    const Desk desk;
    start_two(desk);
    fine(desk.run({"unpack", "job.hemline", "three"}));
    fine(desk.run({"take", "one", "A", "46 ft 0 1/4 in"}));
    fine(desk.run({"take", "two", "B", "31 ft 7 5/8 in"}));
    fine(desk.run({"take", "three", "B", "31 ft 7 11/16 in"}));
    fine(desk.run({"merge", "x", "one", "two", "three"}));
    fine(desk.run({"merge", "y", "three", "three", "one"}));
    fine(desk.run({"merge", "y", "two", "one"}));  // into what is there
    fine(desk.run({"merge", "z", "y", "x"}));
    fine(desk.run({"pack", "z", "z.hemline"}));
    fine(desk.run({"unpack", "z.hemline", "w"}));
    for (const char* other : {"y", "z", "w"}) {
        CHECK(shown(desk, other) == shown(desk, "x"));
        CHECK(journal_of(desk, other) == journal_of(desk, "x"));
    }
    for (const char* other : {"y", "z", "w"}) {  // to the byte
        for (const auto& entry : fs::directory_iterator(desk.folder() / "x")) {
            if (entry.path().extension() == ".journal") {
                std::ifstream a(entry.path(), std::ios::binary),
                    b(desk.folder() / other / entry.path().filename(), std::ios::binary);
                std::stringstream bytes_a, bytes_b;
                bytes_a << a.rdbuf();
                bytes_b << b.rdbuf();
                CHECK(bytes_a.str() == bytes_b.str());
            }
        }
    }
}

TEST_CASE("A merge into a fuller job with a listing that fails changes nothing" *
          doctest::test_suite("long")) {
    const Desk desk;
    start_two(desk);
    for (int n = 0; n < 3; ++n) {
        fine(desk.run({"take", "one", "A", "46 ft 0 1/4 in", "--by", "Ana"}));
        fine(desk.run({"take", "two", "B", "31 ft 7 5/8 in", "--by", "Ben"}));
    }
    fine(desk.run({"merge", "one", "two"}));
    fine(desk.run({"take", "two", "A", "46 ft 0 1/4 in", "--by", "Ben"}));
    const std::string before = journal_of(desk, "one");
    CHECK(std::count(before.begin(), before.end(), '\n') == 11);
    int failed = 0;
    constexpr int more_than_there_are = 40;
    for (int call = 1; call <= more_than_there_are; ++call) {
        const Ran ran = desk.run_failing("getdents64", "EIO", call, {"merge", "one", "two"});
        // As it was, or, when what was written could not be looked at, with what came in.
        const std::string now = journal_of(desk, "one");
        CHECK(now.find(before) == 0);
        if (ran.exit == 0) {  // no such call, or a call that only looks for old drafts
            CHECK(std::count(now.begin(), now.end(), '\n') == 12);
            continue;
        }
        ++failed;
        CHECK(ran.exit == 1);
        CHECK(ran.err.find("cannot be listed") != std::string::npos);
        CHECK(std::count(now.begin(), now.end(), '\n') <= 12);
    }
    CHECK(failed >= 8);  // each listing is read to its end
    const std::string after = journal_of(desk, "one");
    CHECK(after.find(before) == 0);
    CHECK(std::count(after.begin(), after.end(), '\n') == 12);
}

TEST_CASE("a job file that is none is refused, names why, and leaves nothing behind") {
    const Desk desk;
    start_two(desk);
    const std::string bad = desk.write("bad.hemline", "not a job");
    const Ran refused = desk.run({"unpack", bad, "out"});
    CHECK(refused.exit == 1);
    CHECK(refused.err.find("bad.hemline:0:0: The file is no zip container") != std::string::npos);
    CHECK_FALSE(fs::exists(desk.folder() / "out"));
    CHECK(desk.run({"unpack", "job.hemline", "one"}).exit == 1);  // never over a job that is there
    CHECK(desk.run({"merge", "out", "nowhere"}).exit == 1);
    CHECK(desk.run({"pack", "nowhere", "x"}).exit == 1);
    CHECK(desk.run({"merge"}).exit == 2);
}

TEST_CASE("a crew folder carries a job to a tablet that joins, and what each writes to the other") {
    const Desk desk;
    start_two(desk);
    fs::create_directories(desk.folder() / "crew");
    CHECK(desk.run({"carry", "joined", "crew"}).exit == 1);  // nothing there yet
    fine(desk.run({"carry", "one", "crew"}));
    fine(desk.run({"carry", "joined", "crew"}));
    fine(desk.run({"take", "one", "A", "46 ft 0 1/4 in"}));
    fine(desk.run({"take", "joined", "B", "31 ft 7 5/8 in"}));
    fine(desk.run({"carry", "one", "crew"}));
    fine(desk.run({"carry", "joined", "crew"}));
    CHECK(fine(desk.run({"carry", "one", "crew"})).out == "Took in 1 events, gave out 0\n");
    CHECK(shown(desk, "one") == shown(desk, "joined"));
    CHECK(shown(desk, "one")["conflicts"].empty());
}
