#include "engine/dividing/run.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "tests/engine/dividing/common_rule.h"

using namespace hemline;

namespace {

std::vector<std::int64_t> cuts_in_sixteenths(const std::vector<Division>& run) {
    std::vector<std::int64_t> cuts;
    for (const Division& d : run) {
        CHECK(d.cut.nm() % sixteenths(1).nm() == 0);
        cuts.push_back(d.cut.nm() / sixteenths(1).nm());
    }
    return cuts;
}

/// Any rule a roof may give, on the inch or the metric grid, in odd nanometers too; sticks hold at
/// least two slivers and one step of the grid.
RunRule arbitrary_rule() {
    const bool metric = *rc::gen::arbitrary<bool>();
    const Length grid = metric ? millimetres(1) : sixteenths(1);
    RunRule rule;
    rule.grid = grid;
    rule.sliver = *rc::gen::inRange(0, 500) * grid;
    rule.lap = *rc::gen::inRange(0, 200) * grid;
    rule.allowance_first = *rc::gen::inRange(0, 40) * grid;
    rule.allowance_last = *rc::gen::inRange(0, 40) * grid;
    const Length stock_least = std::max(2 * rule.sliver + grid, rule.lap + 100 * grid);
    rule.stock = stock_least + *rc::gen::inRange(0, 4000) * grid;
    if (*rc::gen::inRange(0, 3) == 0) {
        rule.stock += nanometres(*rc::gen::inRange<std::int64_t>(0, grid.nm()));
    }
    rule.edge = nanometres(*rc::gen::inRange<std::int64_t>(1, feet(200).nm()));
    if (*rc::gen::arbitrary<bool>()) {
        rule.edge = std::max(round_down_to(rule.edge, grid), grid);
    }
    return rule;
}

Length extra_of(const RunRule& rule, std::size_t i, std::size_t count) {
    return (i == 0 ? rule.allowance_first : Length()) +
           (i + 1 == count ? rule.allowance_last : rule.lap);
}

void assert_lawful(const RunRule& rule, const std::vector<Division>& run) {
    RC_ASSERT(!run.empty());
    RC_ASSERT(covered(run) == rule.edge);
    for (std::size_t i = 0; i < run.size(); ++i) {
        RC_ASSERT(run[i].cut == run[i].covers + extra_of(rule, i, run.size()));
        RC_ASSERT(run[i].covers > Length());
        RC_ASSERT(run[i].cut <= rule.stock);
        RC_ASSERT(run.size() == 1 || run[i].cut >= rule.sliver);
        RC_ASSERT(i + 1 == run.size() || run[i].cut == rule.stock ||
                  run[i].cut.nm() % rule.grid.nm() == 0);
    }
}

}  // namespace

TEST_CASE("40 ft in 10 ft sticks with 2 in laps takes five pieces, 39 ft 4 in takes four") {
    // Worked by hand: (480 - 2)/118 = 4.05, (472 - 2)/118 = 3.98. Common practice, no published
    // source.
    RunRule rule = common(feet(40), Length(), Length());
    rule.lap = inches(2);
    CHECK(fewest_pieces(rule) == 5);
    rule.edge = feet(39) + inches(4);
    CHECK(fewest_pieces(rule) == 4);
}

TEST_CASE("Fewest pieces changes one nanometre past what the sticks hold") {
    // n sticks hold n·120 - (n - 1)·6 in; worked by hand.
    for (int n = 1; n <= 40; ++n) {
        const Length holds = n * inches(120) - (n - 1) * inches(6);
        CHECK(fewest_pieces(common(holds, Length(), Length())) == n);
        CHECK(fewest_pieces(common(holds + nanometres(1), Length(), Length())) == n + 1);
    }
}

TEST_CASE("An edge of 346 in between two tabs takes three full sticks in every style") {
    // By hand: 348 + 2 laps of 6 = 360 = 3 × 120.
    for (const Style style : styles) {
        const auto run = divide_run(common(inches(346)), style);
        REQUIRE(run);
        CHECK(cuts_in_sixteenths(*run) == std::vector<std::int64_t>{1920, 1920, 1920});
    }
    CHECK(divide_run(common(inches(346) + sixteenths(1)), Style::balanced)->size() == 4);
}

TEST_CASE("A balanced run has equal visible ends, so its end cuts differ by the lap") {
    // By hand: 400 = 2 × 114 + 172; each end 86; cuts 86 + 1 + 6 and 86 + 1.
    const auto run = divide_run(common(inches(400)), Style::balanced);
    REQUIRE(run);
    CHECK(cuts_in_sixteenths(*run) == std::vector<std::int64_t>{1488, 1920, 1920, 1392});
    CHECK((*run)[0].covers == (*run)[3].covers);
    CHECK(is_balanced(*run, common(inches(400))));
}

TEST_CASE("Visible ends exactly 1/16 in apart are balanced, and a nanometre more are not") {
    const auto ends_apart = [](Length by) {
        const RunRule rule = common(inches(400));
        const Length middle = rule.stock - rule.lap;
        const std::vector<Division> run = {
            {inches(93) + by, inches(86) + by}, {rule.stock, middle}, {inches(87), inches(86)}};
        return is_balanced(run, rule);
    };
    for (const int sign : {1, -1}) {
        CHECK(ends_apart(sign * sixteenths(1)));
        CHECK_FALSE(ends_apart(sign * (sixteenths(1) + nanometres(1))));
    }
}

TEST_CASE("A lap as long as the stick is the lap's problem, whatever the ends add") {
    RunRule rule = common(inches(400));
    rule.lap = rule.stock;
    const auto run = divide_run(rule, Style::full);
    REQUIRE_FALSE(run.ok());
    CHECK(run.problem().what.english() ==
          "The lap of 10 ft is not shorter than the stick of 10 ft.");
}

TEST_CASE("An edge shorter than the stick is one piece, a sliver or not") {
    for (const Style style : styles) {
        const auto run = divide_run(common(inches(7)), style);
        REQUIRE(run);
        CHECK(cuts_in_sixteenths(*run) == std::vector<std::int64_t>{9 * 16});
    }
}

TEST_CASE("Full style lets the stick before the last give way to a sliver") {
    // By hand: 240 + 6 + 2 = 248 in of metal: 120 + 120 + 20 with two laps; the last needs 24.
    const auto run = divide_run(common(inches(240)), Style::full);
    REQUIRE(run);
    CHECK(cuts_in_sixteenths(*run) == std::vector<std::int64_t>{1920, 110 * 16, 24 * 16});
}

TEST_CASE("Ends that the stick keeps apart are as near as the fewest pieces come") {
    // By hand: stock 48, lap 2, first end adds 6: caps 40 and 48; 84 = 40 + 44, and no piece more.
    RunRule rule = {inches(84), inches(6),  Length(),     inches(48),
                    inches(2),  inches(12), sixteenths(1)};
    const auto run = divide_run(rule, Style::balanced);
    REQUIRE(run);
    REQUIRE(run->size() == 2);
    CHECK((*run)[0].covers == inches(40));
    CHECK((*run)[1].covers == inches(44));
    rule.edge = inches(82);  // 40 + 42
    CHECK(divide_run(rule, Style::balanced)->size() == 2);
}

TEST_CASE("Middles give way alike where full ones would leave slivers at the ends") {
    // By hand: stock 48, no lap, 1 in at the first end. Edge 97: one full middle leaves 49, ends
    // 24.5. Edge 95.5 leaves 47.5, ends 23.75: the last would be a sliver; the middle is 47.5.
    RunRule rule = {inches(97), inches(1),  Length(),     inches(48),
                    Length(),   inches(24), sixteenths(1)};
    CHECK((*divide_run(rule, Style::balanced))[1].cut == inches(48));
    rule.edge = inches(95) + sixteenths(8);
    const auto run = divide_run(rule, Style::balanced);
    REQUIRE(run);
    REQUIRE(run->size() == 3);
    CHECK((*run)[0].covers == inches(24));
    CHECK((*run)[1].covers == inches(47) + sixteenths(8));
    CHECK((*run)[2].covers == inches(24));
}

// By hand, in 1/16 in: two pieces hold 178.435 · 2 - 7 = 349.870 with their lap; the edge and its
// ends ask for 349.852. What is left over, 0.018, is less than the first cut gives up to lie on a
// mark.
TEST_CASE(
    "Where a stick that lies on no mark leaves no cut on one, one more piece is taken, not two") {
    const RunRule rule{
        nanometres(490'303'254), sixteenths(8),  sixteenths(33), nanometres(283'266'131),
        sixteenths(7),           sixteenths(73), sixteenths(1)};
    CHECK(fewest_pieces(rule) == 2);
    const auto run = divide_run(rule, Style::balanced);
    REQUIRE(run.ok());
    CHECK(run->size() == 3);
}

TEST_CASE("A rule that cannot be divided is a problem with its mend") {
    const auto refused = [](const RunRule& rule) {
        for (const Style style : styles) {
            const auto run = divide_run(rule, style);
            CHECK(!run.ok());
            CHECK((!run.ok() && !run.problem().what.empty() && !run.problem().mend.empty()));
        }
    };
    RunRule rule = common(feet(30));
    rule.lap = rule.stock;
    refused(rule);
    refused(common(Length()));
    refused(common(-inches(3)));
    rule = common(feet(30));
    rule.sliver = inches(100);
    refused(rule);  // a stick under two slivers cannot always avoid a sliver: 30 ft is 3 × 120 +
                    // laps
    rule = common(feet(30));
    rule.grid = Length();
    refused(rule);
    rule = common(millimetres(1'000'000));
    rule.stock = rule.lap + nanometres(1);
    refused(rule);
}

TEST_CASE("Every division covers the edge exactly, within stick and sliver, on the grid") {
    CHECK(rc::check("lawful in every style", [] {
        const RunRule rule = arbitrary_rule();
        RC_PRE(fewest_pieces(rule) < 500);
        for (const Style style : styles) {
            const auto run = divide_run(rule, style);
            RC_ASSERT(run.ok());
            assert_lawful(rule, *run);
            const auto fewest = static_cast<std::size_t>(fewest_pieces(rule));
            RC_ASSERT(run->size() >= fewest);
            RC_ASSERT(run->size() <= fewest + 1);
            RC_ASSERT(style == Style::balanced || run->size() == fewest);
        }
    }));
}

TEST_CASE("Fewest pieces is the least count whose sticks hold the run") {
    CHECK(rc::check("by counting up", [] {
        const RunRule rule = arbitrary_rule();
        RC_PRE(fewest_pieces(rule) < 500);
        const Length whole = rule.edge + rule.allowance_first + rule.allowance_last;
        std::int64_t count = 1;
        while (whole + (count - 1) * rule.lap > count * rule.stock) {
            ++count;
        }
        RC_ASSERT(fewest_pieces(rule) == count);
    }));
}

TEST_CASE(
    "A balanced run's ends differ by a lap at most, and by a mark where nothing keeps them apart") {
    CHECK(rc::check("ends", [] {
        RunRule rule = arbitrary_rule();
        rule.allowance_first = rule.allowance_last = Length();
        RC_PRE(fewest_pieces(rule) < 500);
        const auto run = divide_run(rule, Style::balanced);
        RC_ASSERT(run.ok());
        const Length apart = absolute(run->front().covers - run->back().covers);
        RC_ASSERT(apart <= std::max(rule.lap, sixteenths(1)));
        const bool at_stick = run->front().cut == rule.stock;
        const bool at_sliver = run->size() == 2 && run->back().cut <= rule.sliver + rule.grid;
        RC_ASSERT(apart <= sixteenths(1) || at_stick || at_sliver);
    }));
}

TEST_CASE("Equal pieces differ by one step of the grid unless stick or sliver hold them") {
    CHECK(rc::check("equal", [] {
        const RunRule rule = arbitrary_rule();
        RC_PRE(fewest_pieces(rule) < 500);
        const auto run = divide_run(rule, Style::equal);
        RC_ASSERT(run.ok());
        Length least = rule.edge, most;
        for (const Division& d : *run) {
            if (d.cut < rule.stock - rule.grid && d.cut > rule.sliver + rule.grid) {
                least = std::min(least, d.covers);
                most = std::max(most, d.covers);
            }
        }
        // An end allowance that is not on the grid costs another step.
        RC_ASSERT(most - least <= 2 * rule.grid);
    }));
}
