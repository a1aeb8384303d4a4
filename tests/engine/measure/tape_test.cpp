#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <vector>

#include "engine/measure/tape.h"

using namespace hemline;

namespace {

struct Row {
    Length length, error;
};

}  // namespace

TEST_CASE(
    "A metal tape is off by what NIST Handbook 44 §5.52 allows, and between bands by the larger") {
    const std::vector<Row> table = {
        {Length(), thirty_seconds(1)},
        {feet(6), thirty_seconds(1)},
        {feet(6) + nanometres(1), sixteenths(1)},
        {feet(7), sixteenths(1)},
        {feet(30), sixteenths(1)},
        {feet(30) + sixteenths(1), sixteenths(2)},
        {feet(31), sixteenths(2)},
        {feet(55), sixteenths(2)},
        {feet(55) + sixteenths(1), sixteenths(3)},
        {feet(56), sixteenths(3)},
        {feet(80), sixteenths(3)},
        {feet(81), sixteenths(4)},
        {feet(100), sixteenths(4)},
    };
    for (const Row& row : table) {
        CHECK(tape_error(row.length, {TapeClass::nist_hb44, true}) == row.error);
        CHECK(tape_error(row.length, {TapeClass::nist_hb44, false}) == row.error);
    }
}

TEST_CASE("Past 100 ft the parts' errors add up") {
    // Common practice, no published source: measured in parts of 100 ft.
    const Tape tape;
    CHECK(tape_error(feet(106), tape) == sixteenths(4) + thirty_seconds(1));
    CHECK(tape_error(feet(130), tape) == sixteenths(5));
    CHECK(tape_error(feet(200), tape) == sixteenths(8));
    CHECK(tape_error(feet(250), tape) == sixteenths(10));
}

TEST_CASE("A tape of the MID is off by a + b L, L in metres rounded up, and the hook's share") {
    // Directive 2014/32/EU, annex X (MI-008): class I 0.1/0.1, II 0.3/0.2, III 0.6/0.4 mm.
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_1, false}) == tenths_of_millimetre(6));
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_2, false}) == tenths_of_millimetre(13));
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_3, false}) == tenths_of_millimetre(26));
    CHECK(tape_error(millimetres(4001), {TapeClass::mid_2, false}) == tenths_of_millimetre(13));
    CHECK(tape_error(millimetres(4000), {TapeClass::mid_2, false}) == tenths_of_millimetre(11));
    // With an end hook 0.1/0.2/0.3 mm more.
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_1, true}) == tenths_of_millimetre(7));
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_2, true}) == tenths_of_millimetre(15));
    CHECK(tape_error(millimetres(5000), {TapeClass::mid_3, true}) == tenths_of_millimetre(29));
}

TEST_CASE("Two readings may differ by twice the tape's error and one mark") {
    CHECK(allowed_difference(feet(5), {}) == sixteenths(2));
    CHECK(allowed_difference(feet(20), {}) == sixteenths(3));
    CHECK(allowed_difference(feet(46), {}) == sixteenths(5));
    CHECK(allowed_difference(millimetres(5000), {TapeClass::mid_2, true}) == millimetres(4));
}

TEST_CASE("A longer length is never allowed less") {
    CHECK(rc::check([]() {
        const Tape tape{*rc::gen::element(TapeClass::nist_hb44, TapeClass::mid_1, TapeClass::mid_2,
                                          TapeClass::mid_3),
                        *rc::gen::arbitrary<bool>()};
        // Up to 100 ft: past it a new part begins with the small error of a short length.
        const Length a = nanometres(*rc::gen::inRange<std::int64_t>(0, feet(100).nm()));
        const Length b = nanometres(*rc::gen::inRange<std::int64_t>(0, feet(100).nm()));
        const bool longer = a >= b;
        RC_ASSERT(tape_error(longer ? a : b, tape) >= tape_error(longer ? b : a, tape));
    }));
}
