#include <doctest/doctest.h>

#include <rapidcheck.h>
#include <map>

#include <string>
#include <vector>

#include "engine/trim/practice.h"
#include "engine/words/result.h"
#include "tests/engine/assets.h"

using namespace hemline;

namespace {

std::string refused(std::string_view key, std::string_view value) {
    const Result<Practice> changed = with_rule({}, key, value);
    REQUIRE_FALSE(changed.ok());
    CHECK_FALSE(changed.problem().mend.empty());
    return changed.problem().what.english();
}

}  // namespace

TEST_CASE("The practice file gives the defaults, each with its source and its meaning") {
    const auto rules = read_practice_rules(asset("practice.csv"));
    REQUIRE(rules.ok());
    CHECK(rules->size() == 60);
    for (const PracticeRule& rule : *rules) {
        CHECK_FALSE(rule.source.empty());
        CHECK_FALSE(rule.meaning.empty());
    }
    CHECK(practice_of(*rules).value() == Practice{});
}

namespace {

std::pair<std::string, std::string> two_values(const std::string& key) {
    using Values = std::pair<std::string, std::string>;
    const std::map<std::string, Values> others = {{"tape", {"mid_2", "mid_1"}},
                                                  {"lap", {"5 in", "2 1/2 in"}},
                                                  {"lap_valley", {"5 in", "2 1/2 in"}},
                                                  {"treated_wood", {"yes", "no"}},
                                                  {"trim_held", {"one_point", "screws"}},
                                                  {"metal_now", {"60 F", "15 C"}},
                                                  {"metal_coldest", {"-10 F", "0 F"}},
                                                  {"metal_hottest", {"150 F", "160 F"}},
                                                  {"wind_from", {"W", "280"}},
                                                  {"fixed_line", {"ridge", "eave"}},
                                                  {"apron_wrap", {"3 in", "2 1/2 in"}}};
    const auto known = others.find(key);
    return known == others.end() ? Values{"3 in", "2 1/2 in"} : known->second;
}

}  // namespace

TEST_CASE("Every rule of the practice file can be changed by its key") {
    const auto rules = read_practice_rules(asset("practice.csv"));
    REQUIRE(rules.ok());
    for (const PracticeRule& rule : *rules) {
        CAPTURE(rule.key);
        const auto [value, another] = two_values(rule.key);
        const Result<Practice> changed = with_rule({}, rule.key, value);
        if (rule.key == "stock") {
            CHECK_FALSE(changed.ok());  // shorter than the lap
            continue;
        }
        REQUIRE(changed.ok());
        CHECK(*changed != with_rule({}, rule.key, another).value());
    }
}

TEST_CASE("The defaults are the trade's") {
    // Common practice, no published source.
    const Practice practice;
    CHECK(practice.stock == inches(120));
    CHECK(practice.lap == inches(6));
    CHECK(practice.sliver == inches(24));
    CHECK(practice.tab_gable == inches(1));
    CHECK(practice.screw_spacing == inches(12));
    // At least 2 1/2 in: Minnesota R903.2.1 (kick-out flashing).
    CHECK(practice.kick_out == inches(4));
    CHECK(practice.kick_out >= sixteenths(40));
}

TEST_CASE("A rule is set without touching the others") {
    const Practice changed = with_rule({}, "lap", "8 in").value();
    Practice expected;
    expected.lap = inches(8);
    CHECK(changed == expected);
    CHECK(with_rule({}, "tape", "mid_3_no_hook")->tape == Tape{TapeClass::mid_3, false});
}

TEST_CASE("A rule that cannot be right is refused, naming it as the rules screen does") {
    CHECK(refused("lap", "10 ft").find("lap") != std::string::npos);
    CHECK(refused("lap", "0 in").find("lap") == 0);
    CHECK(refused("lap", "6").find("lap \"6\"") == 0);
    CHECK(refused("lap", "-6 in").find("lap") == 0);
    CHECK(refused("stock", "0 ft").find("new stick") == 0);
    CHECK(refused("stock", "5 in").find("lap") != std::string::npos);
    CHECK(refused("stock", "20 in").find("sliver") == 0);
    CHECK(refused("screw_spacing", "0 in").find("screw to screw") == 0);
    CHECK(refused("cut_grid", "0 mm").find("marks that cuts lie on") == 0);
    CHECK(refused("kerf", "10 ft").find("kerf") != std::string::npos);
    CHECK(refused("bead_gap", "6 in").find("bead to bead \"6 in\" does not fit in the lap") == 0);
    CHECK(refused("tab_gable", "5 ft").find("tabs") != std::string::npos);
    CHECK(refused("tape", "ruler").find("tape \"ruler\"") == 0);
    CHECK(refused("laps", "6 in").find("\"laps\"") != std::string::npos);
    CHECK(refused("", "").find("\"\"") != std::string::npos);
}

TEST_CASE("Rules of a file hold together whatever their order") {
    const std::vector<PracticeRule> rules = {{"sliver", "11 ft", "", ""},
                                             {"stock", "12 ft", "", ""}};
    const Result<Practice> practice = practice_of(rules);
    REQUIRE(practice.ok());
    CHECK(practice->stock == feet(12));
    CHECK_FALSE(practice_of({{"sliver", "11 ft", "", ""}}).ok());
}

TEST_CASE("A practice file that is wrong is refused with its line") {
    struct Row {
        const char* text;
        const char* why;
    };
    for (const Row& row :
         std::vector<Row>{{"", "empty"},
                          {"key,value\nlap,6 in\n", "other columns"},
                          {"key,value,source,meaning,more\nlap,6 in,a,b,c\n", "other columns"},
                          {"key,value,source,meaning\nlap,6 in,a,b\nlap,7 in,a,b\n", "Line 3"},
                          {"key,value,source,meaning\n\nlaps,6 in,a,b\n", "Line 3"},
                          {"key,value,source,meaning\nlap,6,a,b\n", "Line 2: lap \"6\""},
                          {"key,value,source,meaning\nlap,6 in,a\n", "Line 2, column"}}) {
        const auto rules = read_practice_rules(row.text);
        REQUIRE_FALSE(rules.ok());
        CAPTURE(rules.problem().what);
        CHECK(rules.problem().what.english().find(row.why) != std::string::npos);
        CHECK_FALSE(rules.problem().mend.empty());
    }
}

TEST_CASE("An end adds its tab: everywhere but at a wall and an open end; at a corner once") {
    // Common practice, no published source.
    const Practice practice;
    for (const Side first : {Side::left, Side::right}) {
        for (const End end : {End::corner_out, End::corner_in}) {
            CHECK(end_allowance(end, first, first, practice) == inches(1));
            CHECK(end_allowance(end, other(first), first, practice) == Length());
        }
        for (const Side side : {Side::left, Side::right}) {
            for (const End end : {End::gable, End::eave, End::ridge, End::hip, End::valley}) {
                CHECK(end_allowance(end, side, first, practice) == inches(1));
            }
            for (const End end : {End::wall, End::open}) {
                CHECK(end_allowance(end, side, first, practice) == Length());
            }
        }
    }
    const Practice changed = with_rule(practice, "tab_wall", "1/2 in").value();
    CHECK(end_allowance(End::wall, Side::left, Side::left, changed) == sixteenths(8));
}

TEST_CASE("A valley laps further than the other edges") {
    // Common practice, no published source; both more than the 3 in of UFGS 07600.
    CHECK(lap_on(EdgeKind::valley, {}) == inches(8));
    CHECK(lap_on(EdgeKind::gable, {}) == inches(6));
}

TEST_CASE("Whatever the bytes of key and value, a rule is set or refused with a mend") {
    const std::vector<std::string> keys = {"lap", "stock", "tape", "kerf", "cut_grid", ""};
    CHECK(rc::check([&keys](const std::string& value) {
        const auto changed = with_rule({}, *rc::gen::elementOf(keys), value);
        RC_ASSERT((changed.ok() || !changed.problem().mend.empty()));
        const auto rules = read_practice_rules("key,value,source,meaning\n" + value);
        RC_ASSERT((rules.ok() || !rules.problem().mend.empty()));
    }));
}
