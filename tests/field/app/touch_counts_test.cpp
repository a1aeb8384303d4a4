// How many touches the work takes: our limits.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("31 ft 7 5/8 in takes at most eight touches, the one that keeps it among them") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    const int before = crew.touches;
    crew.key_in(feet(31) + inches(7) + sixteenths(10));
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == feet(31) + inches(7) + sixteenths(10));
    CHECK(crew.touches - before <= 8);
    MESSAGE((crew.touches - before) << " touches");
}

TEST_CASE("From a cold start to the first cut card takes at most twelve touches beside digits") {
    Journey crew;
    int digits = 0;
    const auto key_in = [&](Length length) {
        const int before = crew.touches;
        crew.key_in(length);
        digits += crew.touches - before;
    };
    crew.tap("demo");
    crew.tap("edge C");
    key_in(feet(15) + inches(8) + sixteenths(8));
    crew.tap("keep");
    key_in(feet(15) + inches(8) + sixteenths(7));
    crew.tap_all({"keep", "digit 5", "keep"});
    ++digits;
    while (crew.where().screen != Screen::card && crew.touches < 100) {
        crew.do_next();
    }
    CHECK(crew.where().screen == Screen::card);
    CHECK(crew.touches - digits <= 12);
    MESSAGE((crew.touches - digits) << " touches and " << digits << " digits");
}
