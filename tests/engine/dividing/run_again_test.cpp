#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "engine/dividing/run.h"
#include "engine/words/result.h"
#include "tests/engine/dividing/common_rule.h"

using namespace hemline;

namespace {

using Cuts = std::vector<std::optional<Length>>;

}  // namespace

TEST_CASE("A piece cut short is made up by the last, then by the one before it, then by one more") {
    // By hand: edge 400 balanced is 93, 120, 120, 87 in.
    const RunRule rule = common(inches(400));
    auto run = divide_again(rule, Style::balanced, Cuts{inches(83)});
    REQUIRE(run);
    CHECK(*run == std::vector<Division>{{inches(83), inches(76)},
                                        {inches(120), inches(114)},
                                        {inches(120), inches(114)},
                                        {inches(97), inches(96)}});
    run = divide_again(rule, Style::balanced, Cuts{inches(93), inches(83)});
    REQUIRE(run);
    CHECK((*run)[2].cut == inches(120));
    // 37 in are short; the last takes 33 of them at most, so it keeps its 87 in, which now lap, and
    // a fifth covers the 42 in that remain.
    REQUIRE(run->size() == 5);
    CHECK((*run)[3] == Division{inches(87), inches(81)});
    CHECK((*run)[4] == Division{inches(43), inches(42)});
    CHECK(covered(*run) == rule.edge);
}

TEST_CASE("A piece cut long shortens the last, which never becomes a sliver") {
    const RunRule rule = common(inches(300));
    // By hand: balanced 300 is 93 + 6.., covers 93, 114, 93; cut 100, 120, 94.
    const auto run =
        divide_again(rule, Style::balanced, Cuts{std::nullopt, std::nullopt, inches(120)});
    REQUIRE(run);
    CHECK(run->size() == 3);
    CHECK((*run)[0].cut == inches(100));
    CHECK((*run)[1].cut == inches(94));
    CHECK(covered(*run) == rule.edge);
}

TEST_CASE("Metal to spare makes the last lap longer, and the one before it only past that") {
    // By hand: three full sticks cover 114 + 114 + 120 in.
    RunRule rule = common(inches(340));
    rule.allowance_first = rule.allowance_last = Length();
    const Cuts full(3, feet(10));
    auto run = divide_again(rule, Style::full, full);
    REQUIRE(run);
    CHECK(*run == std::vector<Division>{
                      {feet(10), inches(114)}, {feet(10), inches(106)}, {feet(10), inches(120)}});
    rule.edge = inches(200);
    run = divide_again(rule, Style::full, full);
    REQUIRE(run);
    CHECK(*run == std::vector<Division>{
                      {feet(10), inches(80)}, {feet(10), Length()}, {feet(10), inches(120)}});
}

TEST_CASE("A cut piece that its lap and tab use up is a problem that names it") {
    const auto run = divide_again(common(inches(300)), Style::full, Cuts{inches(5)});
    REQUIRE(!run.ok());
    CHECK(run.problem().what.english().find("Piece 1") != std::string::npos);
}

TEST_CASE("A piece number past any run is a problem, not a flood") {
    Cuts cut(5000);
    cut.back() = inches(40);
    CHECK(!divide_again(common(inches(300)), Style::full, cut).ok());
}

TEST_CASE("Cutting a piece as planned changes nothing, in whatever order") {
    CHECK(rc::check("stable", [] {
        RunRule rule = common(nanometres(*rc::gen::inRange<std::int64_t>(1, feet(120).nm())));
        if (*rc::gen::arbitrary<bool>()) {
            rule.edge = std::max(round_down_to(rule.edge, rule.grid), rule.grid);
        }
        const Style style =
            *rc::gen::elementOf(std::vector<Style>(std::begin(styles), std::end(styles)));
        Cuts cut;
        auto run = divide_again(rule, style, cut);
        RC_ASSERT(run.ok());
        for (int step = 0; step < 12; ++step) {
            const auto count = static_cast<int>(run->size());
            const auto piece = static_cast<std::size_t>(*rc::gen::inRange(0, count));
            cut.resize(std::max(cut.size(), piece + 1));
            if (cut[piece]) {
                continue;
            }
            const bool as_planned = *rc::gen::inRange(0, 4) != 0;
            cut[piece] = as_planned ? (*run)[piece].cut
                                    : sixteenths(*rc::gen::inRange<std::int64_t>(8 * 16, 1920));
            const auto again = divide_again(rule, style, cut);
            RC_ASSERT(again.ok());
            RC_ASSERT(covered(*again) == rule.edge);
            RC_ASSERT(!as_planned || *again == *run);
            run = again;
        }
    }));
}

TEST_CASE("What is cut stays as cut, and what is not stays within stick and sliver") {
    CHECK(rc::check("lawful again", [] {
        const RunRule rule = common(nanometres(*rc::gen::inRange<std::int64_t>(1, feet(90).nm())));
        const Style style =
            *rc::gen::elementOf(std::vector<Style>(std::begin(styles), std::end(styles)));
        Cuts cut(static_cast<std::size_t>(*rc::gen::inRange(0, 8)));
        for (auto& c : cut) {
            if (*rc::gen::arbitrary<bool>()) {
                c = sixteenths(*rc::gen::inRange<std::int64_t>(8 * 16, 1920));
            }
        }
        const auto run = divide_again(rule, style, cut);
        RC_ASSERT(run.ok());
        RC_ASSERT(covered(*run) == rule.edge);
        const std::size_t count = run->size();
        for (std::size_t i = 0; i < count; ++i) {
            const Division& d = (*run)[i];
            const Length extra = (i == 0 ? rule.allowance_first : Length()) +
                                 (i + 1 == count ? rule.allowance_last : rule.lap);
            RC_ASSERT(d.cut >= d.covers + extra);  // laps are never under the rule
            if (i < cut.size() && cut[i]) {
                RC_ASSERT(d.cut == *cut[i]);
            } else {
                RC_ASSERT(d.cut <= rule.stock);
                RC_ASSERT(count == 1 || d.cut >= rule.sliver);
            }
        }
    }));
}

TEST_CASE("Cleat joints stay three inches clear of every lap, with the fewest sticks") {
    // Clearance: common practice, no published source.
    const RunRule rule = common(inches(400));
    const auto trim = divide_run(rule, Style::balanced);
    REQUIRE(trim);
    // By hand: laps at 86-92, 200-206, 314-320, barred 83-95, 197-209, 311-323.
    const auto cleat =
        divide_cleat(inches(400), feet(10), sixteenths(1), inches(3), inches(6), *trim);
    REQUIRE(cleat);
    CHECK(*cleat == std::vector<Division>{{inches(120), inches(120)},
                                          {inches(120), inches(120)},
                                          {inches(120), inches(120)},
                                          {inches(40), inches(40)}});
    // With sticks of 100 in the second joint would fall at 200, so it moves to 197.
    const auto shorter =
        divide_cleat(inches(400), inches(100), sixteenths(1), inches(3), inches(6), *trim);
    REQUIRE(shorter);
    CHECK((*shorter)[0].cut == inches(100));
    CHECK((*shorter)[1].cut == inches(97));
    CHECK((*shorter)[2].cut == inches(100));
}

TEST_CASE("A cleat covers its edge, clear of the laps, and honours what is cut") {
    CHECK(rc::check("cleat", [] {
        const RunRule rule = common(nanometres(*rc::gen::inRange<std::int64_t>(1, feet(90).nm())));
        const auto trim = divide_run(rule, Style::balanced);
        RC_ASSERT(trim.ok());
        Cuts cut;
        if (*rc::gen::arbitrary<bool>()) {
            cut.push_back(sixteenths(*rc::gen::inRange<std::int64_t>(16, 1920)));
        }
        const auto cleat =
            divide_cleat(rule.edge, rule.stock, rule.grid, inches(3), rule.lap, *trim, cut);
        RC_ASSERT(cleat.ok());
        RC_ASSERT(covered(*cleat) == rule.edge);
        Length joint;
        for (std::size_t i = 0; i + 1 < cleat->size(); ++i) {
            joint += (*cleat)[i].covers;
            if (i < cut.size()) {
                RC_ASSERT((*cleat)[i].cut == *cut[i]);
                continue;
            }
            Length lap;
            for (std::size_t j = 0; j + 1 < trim->size(); ++j) {
                lap += (*trim)[j].covers;
                RC_ASSERT((joint <= lap - inches(3) || joint >= lap + rule.lap + inches(3)));
            }
            RC_ASSERT((*cleat)[i].cut <= rule.stock);
        }
    }));
}
