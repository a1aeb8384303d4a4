#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cstdint>
#include <vector>

#include "engine/roof/readings.h"

using namespace hemline;

namespace {

constexpr Tape tape;  // NIST HB 44 §5.52
constexpr Length mark = sixteenths(1);

Verdict judge(const std::vector<Length>& readings) { return judge_readings(readings, tape, mark); }

}  // namespace

// Tolerance: NIST HB 44 §5.52, 1/16 in to 30 ft and 1/8 in to 55 ft; twice that and one mark.

TEST_CASE("No reading is none, and one asks to be read again") {
    CHECK(judge({}).agreement == Agreement::none);
    const Verdict once = judge({feet(20)});
    CHECK(once.agreement == Agreement::once);
    CHECK_FALSE(once.length.has_value());
    CHECK(once.allowed == sixteenths(3));
}

TEST_CASE("Two readings agree up to twice the tape's error and one mark") {
    CHECK(judge({feet(20), feet(20) + sixteenths(3)}).agreement == Agreement::agree);
    CHECK(judge({feet(20), feet(20) + sixteenths(3) + nanometres(1)}).agreement ==
          Agreement::third);
    CHECK(judge({feet(46), feet(46) - sixteenths(5)}).agreement == Agreement::agree);
    CHECK(judge({feet(46), feet(46) - sixteenths(6)}).agreement == Agreement::third);
}

TEST_CASE("The agreed length is the mean on the mark, a half up") {
    CHECK(judge({feet(20), feet(20)}).length == feet(20));
    CHECK(judge({feet(20), feet(20) + sixteenths(2)}).length == feet(20) + sixteenths(1));
    CHECK(judge({feet(20), feet(20) + sixteenths(1)}).length == feet(20) + sixteenths(1));
    CHECK(judge({feet(20) + sixteenths(3), feet(20)}).length == feet(20) + sixteenths(2));
    const std::vector<Length> metric = {millimetres(5000), millimetres(5003)};
    CHECK(judge_readings(metric, {TapeClass::mid_2, true}, millimetres(1)).length ==
          millimetres(5002));
}

TEST_CASE("A third reading settles it, and the one left over is named") {
    const Verdict verdict = judge({feet(20), feet(20) + inches(1), feet(20) + sixteenths(1)});
    CHECK(verdict.agreement == Agreement::agree);
    CHECK(verdict.length == feet(20) + sixteenths(1));
    REQUIRE(verdict.odd_one_out.has_value());
    CHECK(*verdict.odd_one_out == 1);
    CHECK(verdict.cause == LikelyCause::burnt_inch);
}

TEST_CASE("83, 38, 38: the first is the one in doubt, by its swapped digits") {
    for (const Length unit : {inches(1), feet(1), millimetres(100)}) {
        const Verdict verdict = judge({83 * unit, 38 * unit, 38 * unit});
        CHECK(verdict.length == 38 * unit);
        CHECK(verdict.odd_one_out == 0);
        CHECK(verdict.odd_length == 83 * unit);
        CHECK(verdict.cause == LikelyCause::swapped_digits);
    }
    CHECK(
        explain(judge({inches(83), inches(38), inches(38)})).english() ==
        "Two readings agree: they differ by 0 in, and 1/8 in is allowed; 6 ft 11 in stands apart; "
        "likely two digits were swapped.");
    CHECK(nearest_reading(std::vector{inches(83), inches(38)}, inches(39)) == 1);
    CHECK_FALSE(nearest_reading({}, inches(39)));
}

TEST_CASE("Twice one length and twice another is two against two: neither counts") {
    const Length low = feet(4) + inches(6), high = feet(6);
    const Verdict verdict = judge({low, high, low, high});
    CHECK(verdict.agreement == Agreement::disagree);
    CHECK_FALSE(verdict.length);
    REQUIRE(verdict.divided);
    CHECK(*verdict.divided == std::pair(low, high));
    CHECK(explain(verdict).english() ==
          "As many readings say 4 ft 6 in as 6 ft: stop, and read again.");
    // A fifth decides, though the two lie nearer to each other than the three.
    const Verdict decided = judge({low, high, low, high + sixteenths(1), high + sixteenths(2)});
    CHECK(decided.length == high + sixteenths(1));
    CHECK(decided.odd_one_out == 0);
    // Readings that go over into one another are not divided.
    CHECK(
        judge({high, high + sixteenths(2), high + sixteenths(4), high + sixteenths(6)}).agreement ==
        Agreement::agree);
}

TEST_CASE("Three readings of which no two agree give no length") {
    const Verdict verdict = judge({feet(20), feet(21), feet(22)});
    CHECK(verdict.agreement == Agreement::disagree);
    CHECK_FALSE(verdict.length.has_value());
    CHECK(verdict.difference == feet(1));
}

TEST_CASE("A reading between two that agree with it is refuted by nobody") {
    const Verdict verdict = judge({feet(20), feet(20) + sixteenths(3), feet(20) + sixteenths(6)});
    CHECK(verdict.agreement == Agreement::agree);
    CHECK_FALSE(verdict.odd_one_out.has_value());
}

TEST_CASE("An inch off is a burnt inch, a foot off a misread foot, a little off the hook") {
    // Common practice, no published source.
    CHECK(judge({feet(20), feet(20) + inches(1)}).cause == LikelyCause::burnt_inch);
    CHECK(judge({feet(20), feet(20) - inches(1) + sixteenths(2)}).cause == LikelyCause::burnt_inch);
    CHECK(judge({feet(20), feet(21)}).cause == LikelyCause::misread_foot);
    CHECK(judge({feet(21) - sixteenths(1), feet(20)}).cause == LikelyCause::misread_foot);
    CHECK(judge({feet(20), feet(20) + sixteenths(4)}).cause == LikelyCause::hook);
    CHECK(judge({feet(20), feet(20) + inches(5)}).cause == LikelyCause::unknown);
    CHECK(judge({feet(20), feet(20) + sixteenths(1)}).cause == LikelyCause::unknown);
    // At 90 ft a tape may be off by 1/4 in: 9/16 in is allowed, and 5/8 in is not a burnt inch.
    CHECK(judge({feet(90), feet(90) + sixteenths(10)}).cause == LikelyCause::hook);
    CHECK(judge({feet(90), feet(90) + sixteenths(13)}).cause == LikelyCause::burnt_inch);
}

TEST_CASE("The agreed length does not depend on which of two readings came first") {
    CHECK(rc::check([]() {
        const Length a = sixteenths(*rc::gen::inRange(0, 19'200));
        const Length b = a + sixteenths(*rc::gen::inRange(0, 12));
        const Verdict one = judge({a, b});
        const Verdict two = judge({b, a});
        RC_ASSERT(one.agreement == two.agreement);
        RC_ASSERT(one.length == two.length);
        RC_ASSERT(one.cause == two.cause);
        RC_ASSERT((one.agreement == Agreement::agree) == (b - a <= allowed_difference(b, tape)));
        if (one.length) {
            RC_ASSERT(*one.length >= a);
            RC_ASSERT(*one.length <= b);
        }
    }));
}

TEST_CASE("No two readings' cause depends on which came first") {
    // Every pair to 40 ft within 3/4 in: swapped millimeters are rounded, one way only.
    for (std::int64_t n = 0; n < 40 * 192; ++n) {
        for (std::int64_t apart = 1; apart <= 12; ++apart) {
            const Length a = sixteenths(n);
            const Length b = sixteenths(n + apart);
            REQUIRE_MESSAGE(judge({a, b}).cause == judge({b, a}).cause, n, " and ", n + apart);
        }
    }
}

TEST_CASE("Any readings give a verdict that holds together") {
    CHECK(rc::check([]() {
        const auto marks = *rc::gen::container<std::vector<int>>(rc::gen::inRange(3800, 4060));
        std::vector<Length> readings;
        for (const int n : marks) {
            readings.push_back(sixteenths(n));
        }
        const Verdict verdict = judge(readings);
        RC_ASSERT(verdict.length.has_value() == (verdict.agreement == Agreement::agree));
        RC_ASSERT((!verdict.odd_one_out || *verdict.odd_one_out < readings.size()));
        RC_ASSERT(!explain(verdict).empty());
        if (verdict.length) {
            RC_ASSERT(*verdict.length >= *std::min_element(readings.begin(), readings.end()));
            RC_ASSERT(*verdict.length <= *std::max_element(readings.begin(), readings.end()));
        }
    }));
}

TEST_CASE("A reading under half or over twice what is expected is doubted") {
    CHECK(doubt_about(feet(9), feet(20), tape).english().find("less than half") !=
          std::string::npos);
    CHECK(doubt_about(feet(10), feet(20), tape).empty());
    CHECK(doubt_about(feet(41), feet(20), tape).english().find("more than twice") !=
          std::string::npos);
    CHECK(doubt_about(feet(40), feet(20), tape).empty());
    CHECK(doubt_about(feet(20), Length(), tape).empty());
}

TEST_CASE("A reading an inch or a foot off what is expected is doubted within the tape's error") {
    for (const Length off : {-sixteenths(1), Length(), sixteenths(1)}) {
        CHECK(doubt_about(feet(20) + inches(1) + off, feet(20), tape).english().find("inch") !=
              std::string::npos);
        CHECK(doubt_about(feet(20) - feet(1) + off, feet(20), tape).english().find("foot") !=
              std::string::npos);
    }
    CHECK(doubt_about(feet(20) + inches(1) + sixteenths(2), feet(20), tape).empty());
    CHECK(doubt_about(feet(20) + sixteenths(2), feet(20), tape).empty());
    CHECK(doubt_about(feet(20) + inches(6), feet(20), tape).empty());
}

TEST_CASE("The hook is suspected when three edges differ a little and the same way") {
    // Common practice, no published source: a bent hook adds or takes a constant 1/16 in.
    const auto suspected = [](const std::vector<Length>& all) { return hook_suspected(all); };
    CHECK(suspected({sixteenths(1), sixteenths(1), sixteenths(1)}));
    CHECK(suspected({-sixteenths(1), Length(), -sixteenths(2), -sixteenths(1)}));
    CHECK(suspected({sixteenths(4), sixteenths(4), sixteenths(3)}));
    CHECK_FALSE(suspected({}));
    CHECK_FALSE(suspected({sixteenths(1), sixteenths(1)}));
    CHECK_FALSE(suspected({sixteenths(1), sixteenths(1), -sixteenths(1)}));
    CHECK_FALSE(suspected({Length(), Length(), Length()}));
    CHECK_FALSE(suspected({sixteenths(5), sixteenths(5), sixteenths(5)}));
    CHECK_FALSE(suspected({sixteenths(1), sixteenths(3), sixteenths(4)}));
}

TEST_CASE("A verdict is explained with its difference, what is allowed and the cause") {
    CHECK(explain(judge({feet(20), feet(20) + inches(1)})) ==
          "The readings differ by 1 in, and 3/16 in is allowed; one was likely read from the 1 in "
          "mark (burnt inch): read a third time.");
    CHECK(explain(judge({feet(20), feet(20) + sixteenths(1)})) ==
          "Two readings agree: they differ by 1/16 in, and 3/16 in is allowed.");
    CHECK(explain(judge({feet(20), feet(21), feet(20)})).english().find("21 ft stands apart") !=
          std::string::npos);
}
