#include "engine/trim/brake.h"

#include <algorithm>
#include <set>

#include "engine/trim/brake_reach.h"
#include "engine/words/result.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

Section channel(Length side, Length base, std::int64_t second_bend = 90) {
    Section section;
    section.thickness = Length::of_nm(701'040);
    section.legs.resize(3);
    section.legs[0].width = side;
    section.legs[1].width = base;
    section.legs[2].width = side;
    section.legs[1].bend.angle = degrees(90);
    section.legs[2].bend.angle = degrees(second_bend);
    return section;
}

std::vector<BrakeStep> order_of(const Section& section, std::int64_t rise = 6) {
    const auto bends = bends_at(section, rise);
    const auto blank = blank_of(section, bends);
    REQUIRE(blank.ok());
    return brake_order(section, bends, *blank);
}

std::size_t blocked(const std::vector<BrakeStep>& order) {
    return static_cast<std::size_t>(std::count_if(
        order.begin(), order.end(), [](const BrakeStep& s) { return !s.in_the_way.empty(); }));
}

/// A hook strip's riser and a zee's web are shorter than the brake reaches round.
bool is_offset(const Section& section) {
    return section.trim == "hook_strip" || section.trim == "zee";
}

}  // namespace

TEST_CASE("every trim of the catalogue can be bent, each bend once, from 1:12 to 12:12") {
    const Sections sections = sections_of_assets();
    for (const Section& section : sections.all()) {
        for (std::int64_t rise = 1; rise <= 12 && !is_offset(section); ++rise) {
            const auto order = order_of(section, rise);
            CHECK_MESSAGE(order.size() == section.legs.size() - 1, section.trim);
            std::set<std::size_t> made;
            for (const BrakeStep& step : order) {
                made.insert(step.bend);
                CHECK_MESSAGE(step.in_the_way.empty(),
                              section.trim << " at " << rise << ": " << step.in_the_way);
                CHECK(step.degrees > 0);
            }
            CHECK(made.size() == order.size());
        }
    }
}

TEST_CASE("an offset strip does not go on this brake, and that is said of it") {
    const Sections sections = sections_of_assets();
    for (const char* strip : {"hook_strip", "zee"}) {
        CHECK(blocked(order_of(*sections.find(strip), 6)) == 1);
    }
    CHECK(blocked(order_of(*sections.find("channel"), 6)) == 0);
}

TEST_CASE("past 12:12 the high eave's fold is more than a jaw at 45° lets by, and is flagged") {
    const Section section = *sections_of_assets().find("high_eave");
    CHECK(blocked(order_of(section, 12)) == 0);
    for (std::int64_t rise = 13; rise <= 18; ++rise) {
        const auto order = order_of(section, rise);
        CHECK(blocked(order) == 1);
        CHECK(order.back().bend == 0);
        CHECK_FALSE(order.back().in_the_way.empty());
    }
}

TEST_CASE("hems are folded first") {
    const auto order = order_of(*sections_of_assets().find("ridge_cap"));
    REQUIRE(order.size() == 3);
    CHECK(order[0].degrees == 180);
    CHECK(order[1].degrees == 180);
    CHECK(order[2].bend == 1);
}

TEST_CASE("a deep narrow channel cannot be closed: the leg bent before is in the way") {
    // 3 in sides over a 1 in base: while the second side turns up to 90°, the first, standing 1 in
    // behind the line, would pass through a jaw that leans back at 45°. Plain geometry.
    const auto order = order_of(channel(inches(3), inches(1)));
    REQUIRE(order.size() == 2);
    CHECK(order[0].in_the_way.empty());
    CHECK(order[1].in_the_way.english().find("jaw") != std::string::npos);
}

TEST_CASE("a shallow channel, a wide one and a zee can be made") {
    CHECK(blocked(order_of(channel(sixteenths(8), inches(1)))) == 0);
    CHECK(blocked(order_of(channel(inches(3), inches(8)))) == 0);
    CHECK(blocked(order_of(channel(inches(3), inches(3), -90))) == 0);
}

TEST_CASE("a bend past what the jaw lets by is flagged, made alone or not") {
    Section sharp = channel(inches(3), inches(3));
    sharp.legs.pop_back();
    sharp.legs[1].bend.angle = degrees(134);
    CHECK(blocked(order_of(sharp)) == 0);
    sharp.legs[1].bend.angle = degrees(140);
    const auto order = order_of(sharp);
    CHECK(blocked(order) == 1);
    CHECK(order[0].in_the_way.english().find("jaw") != std::string::npos);
}

TEST_CASE("a hem wider than the leg beside it lies over the next bend line") {
    Section section = channel(sixteenths(8), inches(2));
    section.legs[2] = {
        LegName::hem, sixteenths(40), {{}, degrees(180)}, {}, Hem::closed, LiesOn::nothing, ""};
    const auto order = order_of(section);
    // Made before the hem, the other bend is free; hem first, it would be covered.
    CHECK(order[0].bend == 0);
    CHECK(blocked(order) == 0);
}

TEST_CASE("a bend away from the upper face is made with the sheet turned over") {
    const auto order = order_of(*sections_of_assets().find("eave_rolled"));
    REQUIRE(order.size() == 3);
    CHECK(order[1].clamped == Clamped::first_legs);  // a hem as wide as its kick is not in the way
    for (const BrakeStep& step : order) {
        CHECK((step.up == FaceUp::upper) == (step.bend == 1));  // the kick alone turns out
    }
}

TEST_CASE("what stands in the jaw on the clamped side may swing clear of it on the free side") {
    // Plain geometry, jaw at 45° with a foot of 1 1/4 in. A leg 2 in tall, 3 in from the bend:
    // clamped, its top stands in a jaw that is 1 3/4 in high there; turned by 90° its top lies
    // 90° + atan(2/3) = 123.7° round, before a jaw at 135°. Only 1 in from the bend, a leg 3 in
    // tall comes round to 161.6°, and through the jaw.
    const auto way = [](int tall, int from, Clamped clamped) {
        const auto nm = [](int n) { return static_cast<double>(inches(n).nm()); };
        const StripOnBrake strip{{nm(tall), nm(from), nm(4)},
                                 {90, 90},
                                 {true, false},
                                 {LegName::flange, LegName::face, LegName::kick}};
        return in_the_way_of(strip, 1, clamped, Brake()).english();
    };
    CHECK(way(2, 3, Clamped::first_legs).find("flange runs into the jaw") != std::string::npos);
    CHECK(way(2, 3, Clamped::last_legs).empty());
    CHECK(way(3, 1, Clamped::last_legs).find("flange runs into the jaw") != std::string::npos);
}
