#include "engine/record/wind.h"

#include <doctest/doctest.h>

#include "growing_record.h"

namespace hemline {
namespace {

Edge level(const std::string& id, End left, End right, EdgeKind kind = EdgeKind::eave) {
    Edge edge;
    edge.id = id;
    edge.kind = kind;
    edge.left = left;
    edge.right = right;
    return edge;
}

/// A hip house A B C D, walked with the building on the left, and its ridge R.
GrowingRecord house() {
    GrowingRecord record;
    for (const char* id : {"A", "B", "C", "D"}) {
        record.add(EdgeAdded{level(id, End::corner_out, End::corner_out)});
    }
    record.add(EdgeAdded{level("R", End::hip, End::hip, EdgeKind::ridge)});
    return record;
}

Side first(const GrowingRecord& record, const char* id) {
    return record.job().find(id)->edge.first;
}

}  // namespace

// Checks 12: bearings by the rule cos(w − d) > 0.17 left, < −0.17 right, else as said; common
// practice, no published source.
TEST_CASE("the side fitted first is the lee end of the edge") {
    CHECK(side_by_wind(degrees(270), degrees(90)) == Side::right);
    CHECK(side_by_wind(degrees(45), degrees(90)) == Side::left);
    CHECK(side_by_wind(degrees(90), degrees(0)) == std::nullopt);
    CHECK(side_by_wind(degrees(80), degrees(0)) == Side::left);    // cos 80° = 0.174
    CHECK(side_by_wind(degrees(81), degrees(0)) == std::nullopt);  // cos 81° = 0.156
}

TEST_CASE("one edge's bearing gives those of all edges around the house, by their corners") {
    GrowingRecord record = house();
    record.add(RuleSet{"bearing.A", "E"});
    // With the building on the left each square corner turns the walk left: east, north, west,
    // south.
    const auto bearings = bearings_of(record.job());
    CHECK(bearings ==
          std::map<std::string, Angle>{
              {"A", degrees(90)}, {"B", degrees(0)}, {"C", degrees(270)}, {"D", degrees(180)}});
    record.add(RuleSet{"bearing.R", "270"});
    CHECK(bearings_of(record.job()).at("R") == degrees(270));
}

TEST_CASE("laps look away from the wind, and stay as they were where it blows square") {
    GrowingRecord record = house();
    record.add(RuleSet{"bearing.A", "E"});
    CHECK(first(record, "A") == Side::left);  // no wind said
    record.add(RuleSet{"wind_from", "W"});
    CHECK(first(record, "A") == Side::right);
    CHECK(first(record, "C") == Side::left);
    CHECK(first(record, "B") == Side::left);  // square to it: as said
    CHECK(first(record, "R") == Side::left);  // nobody said which way it runs
    record.add(RuleSet{"wind_from", ""});
    CHECK(first(record, "A") == Side::left);
}

TEST_CASE("what a person said stays, and so does metal that is cut") {
    GrowingRecord record = house();
    Edge said = level("C", End::corner_out, End::corner_out);
    said.first = Side::right;
    record.add(EdgeAdded{said});
    record.add(RuleSet{"first.A", "left"});
    record.add(RuleSet{"bearing.A", "E"});
    record.add(PieceCut{"B", TrimRole::main, 1, feet(5), {}});
    record.add(RuleSet{"wind_from", "S"});
    CHECK(first(record, "A") == Side::left);
    CHECK(first(record, "B") == Side::left);  // would be right: it runs north, away from the wind
    CHECK(first(record, "D") == Side::left);  // runs south, into it
    record.add(RuleSet{"wind_from", "E"});
    CHECK(first(record, "C") == Side::right);
    record.add(RuleSet{"wind_from", "W"});
    CHECK(first(record, "C") == Side::right);  // said
    record.add(RuleSet{"first.A", ""});
    CHECK(first(record, "A") == Side::right);
}

TEST_CASE("an edge said anew keeps the side that the wind gave it, and no more is said of it") {
    GrowingRecord record = house();
    record.add(RuleSet{"bearing.A", "E"});
    record.add(RuleSet{"wind_from", "W"});
    const Job job = record.job();
    Edge changed = job.find("A")->edge;
    CHECK(changed.first == Side::right);
    changed.trim = "eave_two_part";
    CHECK(said_anew(*job.find("A"), changed).first == Side::left);
    record.add(EdgeAdded{said_anew(*job.find("A"), changed)});
    CHECK(first(record, "A") == Side::right);
    CHECK(record.job().find("A")->edge.trim == "eave_two_part");
}

TEST_CASE("a bearing, a wind or a side that cannot be right is refused") {
    for (const auto& [key, value] : {std::pair("wind_from", "up"),
                                     {"bearing.A", "400"},
                                     {"first.A", "top"},
                                     {"bearing.", "E"},
                                     {"metal_now", "warm"},
                                     {"trim_held", "glue"},
                                     {"treated_wood", "?"}}) {
        CHECK_FALSE(with_rule({}, key, value).ok());
    }
    Practice practice;
    for (int i = 0; i < 400; ++i) {
        practice = with_rule(practice, "bearing.E" + std::to_string(i), "N").value();
    }
    CHECK_FALSE(with_rule(practice, "bearing.X", "N").ok());
    CHECK(site_value(practice.site, "bearing.E7") == "N");
}

}  // namespace hemline
