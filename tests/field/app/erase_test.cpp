// The key to erase: on every page of keys of a length, in the same corner.
#include <doctest/doctest.h>

#include <cmath>

#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

/// The main action, as those who hear are told it.
std::string main_action(const Journey& crew) {
    for (const Target& target : crew.screen->ui().targets()) {
        if (target.name == "keep") {
            return target.label;
        }
    }
    return {};
}

}  // namespace

TEST_CASE("Feet, inches and sixteenths have their key to erase in one corner, from 7 to 13 in") {
    Journey crew;
    crew.tap_all({"demo", "edge C"});
    for (const Size2 size :
         {Size2{885, 531}, Size2{531, 885}, Size2{1015, 637}, Size2{637, 1015}, Size2{1280, 800},
          Size2{800, 1280}, Size2{1700, 956}, Size2{960, 1080}}) {
        CAPTURE(size.w);
        crew.screen->resize(size.w, size.h);
        Box corners[3];
        for (int field = 0; field < 3; ++field) {
            const char* const names[] = {"field feet", "field inches", "field 16ths"};
            crew.tap(names[field]);
            REQUIRE(crew.screen->has_target("back"));
            corners[field] = crew.screen->target("back");
            CHECK(std::abs(corners[field].right() - corners[0].right()) < 1);
            CHECK(std::abs(corners[field].bottom() - corners[0].bottom()) < 1);
        }
    }
}

TEST_CASE("The key at the end of the fields erases, and a length changed by it is asked anew") {
    Journey crew(531, 885);
    crew.tap_all({"demo", "edge C"});
    crew.key_in(feet(15) + inches(8));
    crew.tap("keep");
    crew.key_in(feet(16) + inches(8));
    crew.tap("keep");  // a foot apart: doubted
    REQUIRE(main_action(crew) == "Keep it all the same");
    crew.tap("back");
    CHECK(main_action(crew) == "Keep this reading");
    crew.tap("inches 8");
    crew.tap("keep");
    CHECK(main_action(crew) == "Keep it all the same");  // asked anew, not kept
    CHECK(crew.work("C").readings.size() == 1);
}

TEST_CASE("On 8 in upright every sixteenth is one touch") {
    Journey crew(637, 1015);
    crew.tap_all({"demo", "edge C", "field 16ths", "sixteenths 13", "keep"});
    CHECK_FALSE(crew.screen->has_target("a sixteenth more"));
    CHECK(crew.work("C").readings.front().length == sixteenths(13));
}
