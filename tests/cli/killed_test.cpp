// The real program killed at any moment: what it has printed is in the job, and nothing else has
// changed.
#include <doctest/doctest.h>

#include <chrono>
#include <random>
#include <set>
#include <sstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// The event id that was printed whole; empty when none was.
std::string printed_id(const std::string& out) {
    if (out.empty() || out.back() != '\n') {
        return {};
    }
    std::istringstream in(out);
    std::string word;
    std::string last;
    while (in >> word) {
        last = word;
    }
    return last;
}

std::set<std::string> ids_in(const std::string& journal) {
    std::set<std::string> ids;
    std::istringstream in(journal);
    for (std::string line; std::getline(in, line);) {
        ids.insert(line.substr(0, line.find(' ')));
    }
    return ids;
}

}  // namespace

TEST_CASE("take killed at any moment leaves every reading whose id it printed, at the same step" *
          doctest::test_suite("long")) {
    const Desk desk;
    REQUIRE(desk.run({"new", "job", "--from",
                      desk.write("roof.csv",
                                 "edge,kind,trim,length,left,right,pitch\n"
                                 "A,eave,,46 ft 0 1/4 in,gable,gable,5/12\n")})
                .exit == 0);
    const std::vector<std::string> take = {"take", "job", "A", "46 ft 0 1/4 in", "--by", "Ana"};
    const auto start = std::chrono::steady_clock::now();
    REQUIRE(desk.run(take).exit == 0);
    const auto whole = std::chrono::duration_cast<std::chrono::microseconds>(
        std::chrono::steady_clock::now() - start);
    const auto next_cut = desk.run({"show", "job", "--json"}).json()["next_cut"];
    REQUIRE(!next_cut.is_null());

    std::mt19937 random(9);
    std::set<std::string> printed;
    std::size_t there = ids_in(desk.run({"journal", "job"}).out).size();
    int killed = 0;
    for (int round = 0; round < 60; ++round) {
        CAPTURE(round);
        const auto limit = static_cast<unsigned>(whole.count() * 5 / 4 + 1);
        // The first is killed before it can have done anything.
        const Ran ran =
            desk.run_and_kill(take, round == 0 ? 0 : static_cast<int>(random() % limit));
        killed += ran.exit == 128 + 9 ? 1 : 0;
        if (const std::string id = printed_id(ran.out); !id.empty()) {
            printed.insert(id);
        }
        const Ran journal = desk.run({"journal", "job"});
        REQUIRE_MESSAGE(journal.exit == 0, journal.err);
        const std::set<std::string> ids = ids_in(journal.out);
        CHECK(ids.size() >= there);
        CHECK(ids.size() <= there + 1);
        there = ids.size();
        for (const std::string& id : printed) {
            CHECK_MESSAGE(ids.count(id) == 1, id);
        }
        CHECK(desk.run({"show", "job", "--json"}).json()["next_cut"] == next_cut);
    }
    CHECK(killed > 0);
    const Ran last = desk.run(take);  // and it goes on
    CHECK_MESSAGE(last.exit == 0, last.err);
    MESSAGE(killed << " of 60 killed, " << printed.size() << " had printed their id, " << there
                   << " events there");
}
