// `plan --prefer … --json` checked from outside: coverage, laps, what lies on each stick, and the
// bound against facts proved by hand in docs/cutting.md.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

using Int = std::int64_t;
using Ints = std::vector<Int>;

// Gables on both ends add 1 in each; sticks of 10 ft, laps of 6 in, no piece under 24 in.
constexpr Int stick = 120 * inch_nm, lap = 6 * inch_nm, tabs = 2 * inch_nm, sliver = 24 * inch_nm;

Int fewest_pieces(Int metal) {
    return metal <= stick ? 1 : (metal - lap + stick - lap - 1) / (stick - lap);
}

/// Checks an edge of the plan; adds to the laps beyond the fewest and the unbalanced edges.
void check_run(const nlohmann::json& run, Int length, Int& laps, Int& unbalanced) {
    const auto& pieces = run["pieces"];
    const auto count = static_cast<Int>(pieces.size());
    Int covered = 0;
    bool full_between = true;
    for (Int i = 0; i < count; ++i) {
        const auto& piece = pieces[static_cast<std::size_t>(i)];
        const Int cut = piece["cut_nm"], covers = piece["covers_nm"];
        const Int ends = (i == 0 ? tabs / 2 : 0) + (i + 1 == count ? tabs / 2 : lap);
        CHECK(cut == covers + ends);
        CHECK(cut <= stick);
        CHECK((count == 1 || cut >= sliver));
        covered += covers;
        full_between = full_between && (i == 0 || i + 1 == count || cut == stick);
    }
    CHECK(covered == length);
    laps += count - fewest_pieces(length + tabs);
    const Int differ = pieces[0]["covers_nm"].get<Int>() - pieces.back()["covers_nm"].get<Int>();
    const bool balanced = full_between && std::abs(differ) <= sixteenth_nm;
    // Whole inches: equal ends are on the grid, and permitted when neither is too long or a sliver.
    const Int ends = length - (count - 2) * (stick - lap);
    const Int shorter = ends / 2 + tabs / 2;
    const bool could = count == 1 || (shorter >= sliver && shorter + lap <= stick);
    unbalanced += could && !balanced ? 1 : 0;
}

/// Every piece on its stick, none over another.
void check_no_overlap(const nlohmann::json& plan) {
    std::map<Int, std::vector<std::pair<Int, Int>>> laid;
    for (const auto& run : plan["edges"]) {
        for (const auto& piece : run["pieces"]) {
            REQUIRE(piece["stick"].is_number());
            const Int from = piece["from_nm"];
            laid[piece["stick"].get<Int>()].emplace_back(from, from + piece["cut_nm"].get<Int>());
        }
    }
    CHECK(laid.size() == plan["sticks"].size());
    for (auto& [number, pieces] : laid) {
        std::sort(pieces.begin(), pieces.end());
        CHECK(pieces.front().first >= 0);
        CHECK(pieces.back().second <= stick);
        for (std::size_t i = 1; i < pieces.size(); ++i) {
            CHECK(pieces[i].first >= pieces[i - 1].second);
        }
    }
}

/// Fewest sticks for these pieces, by trying every stick for each.
Int fewest_sticks(const Ints& pieces, std::size_t next, Ints& room, Int fewest) {
    if (static_cast<Int>(room.size()) >= fewest) {
        return fewest;
    }
    if (next == pieces.size()) {
        return static_cast<Int>(room.size());
    }
    for (std::size_t i = 0; i < room.size(); ++i) {
        if (room[i] >= pieces[next]) {
            room[i] -= pieces[next];
            fewest = fewest_sticks(pieces, next + 1, room, fewest);
            room[i] += pieces[next];
        }
    }
    room.push_back(stick - pieces[next]);
    fewest = fewest_sticks(pieces, next + 1, room, fewest);
    room.pop_back();
    return fewest;
}

/// With no lap more and every edge free to run out: Σ(k − 1) full sticks and what the remainders
/// need. A remainder under a sliver only makes it a lower bound.
Int fewest_without_laps(const Ints& lengths) {
    Ints rests;
    Int fulls = 0;
    for (const Int length : lengths) {
        const Int more = fewest_pieces(length + tabs) - 1;
        fulls += more;
        rests.push_back(length + tabs + more * (lap - stick));
    }
    Ints room;
    return fulls + fewest_sticks(rests, 0, room, static_cast<Int>(rests.size()) + 1);
}

}  // namespace

TEST_CASE("Joint plans of forty roofs cover, lap and lie as they must, and no bound is too high" *
          doctest::test_suite("long")) {
    const Desk desk;
    std::mt19937 random(11);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    int tight = 0;
    for (int n = 0; n < 40; ++n) {
        CAPTURE(n);
        std::string rows = "edge,kind,trim,length,left,right,pitch\n";
        Ints lengths;
        const int edges = between(2, 7);
        for (int e = 0; e < edges; ++e) {
            const int inches = between(30, 600);
            rows += "E" + std::to_string(e) + ",eave,," + std::to_string(inches) +
                    " in,gable,gable,5/12\n";
            lengths.push_back(inches * inch_nm);
        }
        const std::string file = desk.write("roof.csv", rows);
        const auto plan = desk.run({"plan", file, "--prefer", "sticks", "--json"}).json();
        REQUIRE(plan["edges"].size() == lengths.size());
        Int laps = 0, unbalanced = 0;
        for (std::size_t e = 0; e < lengths.size(); ++e) {
            check_run(plan["edges"][e], lengths[e], laps, unbalanced);
        }
        check_no_overlap(plan);
        const Int sticks = plan["proof"][0]["sticks"];
        CHECK(sticks == static_cast<Int>(plan["sticks"].size()));
        bool is_among_choices = false;
        for (const auto& choice : plan["choices"]) {
            CHECK(choice["sticks"] >= sticks);
            CHECK(choice["sticks"] >= choice["lower_bound"]);
            CHECK(choice["proved"] == (choice["sticks"] == choice["lower_bound"]));
            is_among_choices =
                is_among_choices || (choice["sticks"] == sticks && choice["extra_laps"] == laps &&
                                     choice["unbalanced"] == unbalanced);
            if (choice["extra_laps"] == 0) {
                const Int least = fewest_without_laps(lengths);
                CHECK(choice["sticks"] >= least);
                tight += choice["sticks"] == least && choice["proved"] == true ? 1 : 0;
            }
        }
        CHECK(is_among_choices);
    }
    CHECK(tight >= 30);
}
