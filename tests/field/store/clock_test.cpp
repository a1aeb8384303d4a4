// Days of this place. America/New_York moved its clocks on 8 March and 1 November 2026 (Energy
// Policy Act of 2005: the second Sunday of March, the first of November).
#include "field/store/clock.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <ctime>

using namespace hemline;

namespace {

constexpr std::int64_t hour_ms = 3'600'000;

/// TZ while this lives.
struct Zone {
    explicit Zone(const char* name) {
        setenv("TZ", name, 1);
        tzset();
    }
    ~Zone() {
        setenv("TZ", "UTC", 1);
        tzset();
    }
    Zone(const Zone&) = delete;
    Zone& operator=(const Zone&) = delete;
};

}  // namespace

TEST_CASE("A day is from midnight to midnight, 23 or 25 hours where the clocks are moved") {
    const Zone zone("EST5EDT,M3.2.0,M11.1.0");
    const auto hours = [](const char* date) {
        const std::optional<DaySpan> day = day_named(date);
        REQUIRE(day.has_value());
        return (day->to_ms - day->from_ms) / hour_ms;
    };
    CHECK(hours("2026-05-04") == 24);
    CHECK(hours("2026-03-08") == 23);
    CHECK(hours("2026-11-01") == 25);
}

TEST_CASE("A day is found by any time in it, and the next one begins where it ends") {
    const Zone zone("EST5EDT,M3.2.0,M11.1.0");
    const DaySpan day = *day_named("2026-11-01");
    CHECK(day_around(day.from_ms) == day);
    CHECK(day_around(day.to_ms - 1) == day);
    CHECK(day_around(day.to_ms) == *day_named("2026-11-02"));
    CHECK(day_name({day.from_ms}) == "1 Nov 2026");
    CHECK(clock_time({day.from_ms + hour_ms / 2}) == "0:30");
}

TEST_CASE("What is no day is none") {
    for (const char* const date : {"", "2026-02-29", "2026-13-01", "2026-00-10", "2026-05-32",
                                   "26-05-04", "2026-5-4", "2026-05-04x", "04/05/2026", "today"}) {
        CAPTURE(date);
        CHECK_FALSE(day_named(date));
    }
    CHECK(day_named("2028-02-29"));
}
