// Movement by worked examples: α·L·ΔT by hand, coefficients of handbooks (metal_family_test.cpp);
// gap, hem and lip are common practice, no published source.
#include "engine/panels/movement.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "engine/panels/expansion_joints.h"
#include "tests/engine/roof/in.h"

using namespace hemline;

namespace {

MovementAsked panel(const char* metal, int length_feet, int now, int coldest, int hottest) {
    return {metal_family(metal),
            feet(length_feet),
            {fahrenheit(now), fahrenheit(coldest), fahrenheit(hottest)},
            FixedLine::ridge};
}

ExpansionJoints joints(const char* metal, int length_feet) {
    const MetalFamily family = metal_family(metal);
    return joints_in(feet(length_feet), *joint_spacing(family), family, fahrenheit(60),
                     fahrenheit(180));
}

}  // namespace

TEST_CASE("Movement of steel, aluminum and copper panels fixed at the ridge, by hand") {
    const auto steel = movement_of(panel("steel", 40, 60, -20, 180));
    CHECK(in(steel->shrink) == doctest::Approx(0.25728));  // 6.7e-6 · 480 · 80
    CHECK(in(steel->grow) == doctest::Approx(0.38592));
    CHECK(steel->gap == sixteenths(6));
    CHECK(steel->hem == sixteenths(19));
    CHECK(steel->lip == sixteenths(18));
    CHECK(steel->refused.empty());
    const auto aluminum = movement_of(panel("aluminium", 30, 90, 0, 170));
    CHECK(in(aluminum->shrink) == doctest::Approx(0.41796));  // 12.9e-6 · 360 · 90
    CHECK(in(aluminum->grow) == doctest::Approx(0.37152));
    CHECK(aluminum->gap == sixteenths(8));
    CHECK(aluminum->hem == sixteenths(20));
    CHECK(aluminum->lip == sixteenths(19));
    const auto copper = movement_of(panel("copper", 24, 40, 0, 160));
    CHECK(in(copper->shrink) == doctest::Approx(0.108288));
    CHECK(in(copper->grow) == doctest::Approx(0.324864));
    CHECK(copper->gap == sixteenths(3));
    CHECK(copper->hem == sixteenths(15));
    CHECK(copper->lip == sixteenths(14));
}

TEST_CASE("A panel pinned at the eave has its room above its upper end") {
    MovementAsked asked = panel("steel", 40, 60, -20, 180);
    asked.fixed = FixedLine::eave;
    const auto movement = movement_of(asked);
    CHECK(movement->top_room == sixteenths(15));  // 0.386 + 1/2
    CHECK(movement->cover == sixteenths(37));     // 0.257 + 2
    CHECK(movement->gap == sixteenths(4));
    CHECK(movement->hem == inches(1));
    CHECK(movement->lip == sixteenths(12));
}

TEST_CASE("A hem wider than 2 in is refused") {
    // 12.9e-6 · 720 in: shrink 0.743, grow 1.1146; 13/16 + 1.1146 + 3/8 = 2.302.
    const auto movement = movement_of(panel("aluminum", 60, 60, -20, 180));
    REQUIRE(movement->refused.size() == 1);
    CHECK(movement->refused[0].what.english() ==
          "The hem would be 2 5/16 in wide; more than 2 in is not bent.");
    CHECK(movement_of(panel("aluminum", 40, 60, -20, 180))->refused.empty());
}

TEST_CASE("What cannot move is refused in a fitter's words") {
    const auto why = [](const MovementAsked& asked) {
        const auto movement = movement_of(asked);
        return movement ? "" : said(movement.problem()).english();
    };
    CHECK(why(panel("tin", 40, 60, -20, 180)) ==
          "How far this metal moves is not known. Write steel, copper, stainless steel, aluminum "
          "or zinc.");
    CHECK(why(panel("steel", 0, 60, -20, 180)).find("No metal is left to move.") == 0);
    CHECK(why(panel("steel", 40, 190, -20, 180)) ==
          "The metal is at 190 F now, which is not between -20 F and 180 F. Read the metal again, "
          "or correct its coldest and hottest.");
    CHECK(why(panel("steel", 40, -30, -20, 180)).find("The metal is at -30 F now") == 0);
    CHECK(why(panel("steel", 40, -20, -20, 180)).empty());
    CHECK(why(panel("steel", 40, 180, -20, 180)).empty());
}

TEST_CASE("A 3/4 in lip jams under every panel of the examples") {
    for (const MovementAsked& asked :
         {panel("steel", 40, 60, -20, 180), panel("aluminum", 30, 90, 0, 170),
          panel("copper", 24, 40, 0, 160)}) {
        const auto movement = movement_of(asked);
        REQUIRE(movement.ok());
        const auto jams = lip_jams(*movement, sixteenths(12));
        REQUIRE(jams.has_value());
        CHECK(jams->what.english() == "In the cold the hem jams on a lip of 3/4 in.");
        CHECK_FALSE(lip_jams(*movement, movement->lip).has_value());
    }
    const auto small = movement_of(panel("steel", 1, 60, 60, 60));
    CHECK(small->lip == sixteenths(12));
    CHECK_FALSE(lip_jams(*small, sixteenths(6)).has_value());
    CHECK(lip_jams(*small, sixteenths(5)).has_value());
}

TEST_CASE("The hem holds in the heat and does not jam in the cold, on 2,000 panels by chance") {
    std::mt19937 random(18);
    for (int i = 0; i < 2000; ++i) {
        const auto within = [&](int least, int most) {
            return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
        };
        const int now = within(-20, 180);
        const auto movement =
            movement_of(panel(metals_offered[random() % 6], within(1, 60), now, -20, 180));
        REQUIRE(movement.ok());
        // From the fold to the hem's edge less the gap, as it is in the heat: what still holds.
        CHECK(movement->hem - movement->gap - movement->grow >= sixteenths(6));
        // The fold comes nearer to the lip's edge in the cold, and never touches it.
        CHECK(movement->gap - movement->shrink >= sixteenths(1));
        CHECK(movement->lip >= movement->hem - movement->gap + movement->shrink);
    }
}

TEST_CASE("A clip's tab is set off its middle by what the panel does where it stands") {
    const auto movement = movement_of(panel("steel", 40, 60, -20, 180));
    // Half way: 0.193 and 0.129 of 1 in; what is left, 0.678, is shared.
    const auto mark = clip_mark(*movement, feet(40), feet(20), inches(1));
    CHECK(in(mark->away) == doctest::Approx(0.19296 + 0.3392).epsilon(1e-6));
    CHECK(mark->away + mark->toward == inches(1));
    CHECK(clip_mark(*movement, feet(40), feet(40), sixteenths(11)).ok());
    const auto refused = clip_mark(*movement, feet(40), feet(40), sixteenths(10));
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.problem().what.english() ==
          "There the panel moves 21/32 in, and the clip only 5/8 in.");
}

TEST_CASE("Joints of continuous runs by UFGS 07 60 00 §3.1.26") {
    CHECK(joints("copper", 100).count == 2);
    CHECK(in(joints("copper", 100).segment) / 12 == doctest::Approx(33.3333));
    CHECK(joints("copper", 100).gap == sixteenths(8));
    CHECK(joints("copper", 105).count == 3);
    CHECK(joints("copper", 105).segment == sixteenths(26 * 192 + 48));
    CHECK(joints("copper", 105).gap == sixteenths(6));
    CHECK(joints("aluminum", 100).count == 3);
    CHECK(joints("aluminum", 100).segment == feet(25));
    CHECK(joints("aluminum", 100).gap == sixteenths(8));
    CHECK(joints("copper", 40).count == 0);
    CHECK(joints("copper", 40).segment == feet(40));
    CHECK(joints("copper", 40).gap == Length());
    CHECK(joints("aluminum", 50).count == 2);
    CHECK(in(joints("aluminum", 50).segment) / 12 == doctest::Approx(16.6667));
    CHECK(joints("aluminum", 50).gap == sixteenths(5));
    CHECK(joint_spacing(MetalFamily::stainless) == feet(40));
    CHECK_FALSE(joint_spacing(MetalFamily::galvanized).has_value());
}

TEST_CASE("A 10 ft stick held at one point grows past a hem notch of 1/8 in but for warm steel") {
    const auto grows = [](const char* metal, int now) {
        return in(movement_of(panel(metal, 10, now, 20, 180))->grow);
    };
    CHECK(grows("steel", 20) == doctest::Approx(0.12864));
    CHECK(grows("steel", 60) == doctest::Approx(0.09648));
    CHECK(grows("aluminum", 20) == doctest::Approx(0.24768));
    CHECK(grows("aluminum", 60) == doctest::Approx(0.18576));
}
