// Whose clock is wrong, judged by what each tablet had seen when it wrote.
#include "engine/record/clock_doubt.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "engine/record/job.h"
#include "tests/engine/record/crew_record.h"
#include "tests/engine/record/hours.h"

namespace hemline {
namespace {

constexpr std::int64_t year_ms = 365 * day_ms, morning_ms = 1'780'000'000'000;

/// Tablets that are carried after every event, their clocks off by what `off_ms` says.
struct Site {
    std::vector<Event> events;
    std::map<std::uint64_t, std::int64_t> off_ms;
    std::int64_t now_ms = morning_ms;

    /// Holds all that is there.
    EventId write(std::uint64_t device, std::string by = "") {
        return write_with(device, std::move(by), events);
    }
    /// Holds only so much.
    EventId write_with(std::uint64_t device, std::string by, const std::vector<Event>& held) {
        now_ms += minute_ms;
        const auto sequence = static_cast<std::uint32_t>(events.size() + 1);
        Event event{{device, sequence}, {}, std::move(by), {}, EdgeFinished{"A", ""}};
        stamp(event, held, now_ms + off_ms[device]);
        events.push_back(event);
        events = in_order(std::move(events));
        return event.id;
    }
    [[nodiscard]] std::vector<ClockDoubt> doubts() const { return clock_doubts(events); }
    [[nodiscard]] std::string said(std::uint64_t here = 0) const {
        std::string all;
        for (const ClockDoubt& doubt : doubts()) {
            all += words_on(doubt, here).english() + "\n";
        }
        return all;
    }
};

TEST_CASE("Clocks within an hour of each other are not doubted, nor those of a lone tablet") {
    Site site;
    site.off_ms = {{1, 0}, {2, 55 * minute_ms}, {3, -2 * minute_ms}};
    for (int turn = 0; turn < 30; ++turn) {
        site.write(static_cast<std::uint64_t>(1 + turn % 3));
    }
    CHECK(site.said().empty());
    Site alone;
    alone.write(1);
    alone.off_ms[1] = -year_ms;
    alone.write(1);
    alone.off_ms[1] = year_ms;
    alone.write(1);
    CHECK(alone.said().empty());
}

TEST_CASE("One tablet of three that is ahead, or behind, is named with how far, and the mend") {
    Site ahead;
    ahead.off_ms[3] = 10 * year_ms + day_ms;
    for (const std::uint64_t device : {1U, 2U, 3U, 1U, 2U}) {
        ahead.write(device, device == 3 ? "Hal" : "Ada");
    }
    CHECK(ahead.said() ==
          "The clock of Hal's tablet is 10 years or more ahead of the others. Set that "
          "tablet's clock: days and papers go by it.\n");
    CHECK(ahead.said(3) ==
          "This tablet's clock is 10 years or more ahead of the others. Set the tablet's clock: "
          "days and papers go by it.\n");
    REQUIRE(ahead.doubts().size() == 1);
    CHECK(is_about(ahead.doubts()[0], 3));
    CHECK_FALSE(is_about(ahead.doubts()[0], 1));

    Site behind;
    behind.off_ms[2] = -(3 * hour_ms + 30 * minute_ms);
    for (const std::uint64_t device : {1U, 2U, 3U, 2U}) {
        behind.write(device, "");
    }
    CHECK(behind.said() ==
          "The clock of a tablet that nobody is named on is 3 hours or more behind the others. Set "
          "that tablet's "
          "clock: days and papers go by it.\n");
    CHECK(behind.said(2) ==
          "This tablet's clock is 3 hours or more behind the others. Set the tablet's clock: days "
          "and papers go by it.\n");
}

TEST_CASE("Of two tablets that one person holds it is told which, by first use on the job") {
    Site site;
    site.off_ms[7] = 10 * year_ms + day_ms;
    for (const std::uint64_t device : {9U, 7U, 2U, 9U, 2U}) {  // no order of their numbers
        site.write(device, device == 2 ? "Ben" : "Ana");
    }
    CHECK(site.said().find("The clock of Ana's second tablet on this job is 10 years") == 0);
    Site two;
    two.off_ms[5] = day_ms * 3;
    for (const std::uint64_t device : {8U, 5U, 8U, 5U}) {
        two.write(device, "Ana");
    }
    CHECK(two.said().find("Ana's first tablet on this job") != std::string::npos);
    CHECK(two.said().find("Ana's second tablet on this job") != std::string::npos);
    CHECK(two.said(5).find("This tablet's clock and that of Ana's first tablet") == 0);
}

TEST_CASE("Of two tablets nothing tells which is wrong: both are told to look") {
    Site site;
    site.off_ms[2] = 2 * day_ms;
    site.write(2, "Ben");
    site.write(1, "Ada");
    REQUIRE(site.doubts().size() == 1);
    CHECK(is_about(site.doubts()[0], 1));
    CHECK(is_about(site.doubts()[0], 2));
    CHECK(site.said(1) ==
          "This tablet's clock and that of Ben's tablet are 47 hours or more apart. Look "
          "at both, and set the tablet's clock that is wrong: days and papers go by it.\n");
    CHECK(site.said(2).find("that of Ada's tablet") != std::string::npos);
    CHECK(site.said().find("The clocks of Ben's tablet and Ada's tablet") == 0);
}

TEST_CASE("Work apart for days, and journals that come late, put no clock in doubt") {
    Site site;
    site.write(1);
    const std::vector<Event> monday = site.events;
    std::vector<Event> ada = monday, ben = monday;
    for (int day = 0; day < 5; ++day) {
        site.write_with(1, "Ada", ada);
        ada.push_back(site.events.back());
        site.now_ms += day_ms;
        site.write_with(2, "Ben", ben);
        ben.push_back(site.events.back());
    }
    site.write(3);
    CHECK(site.said().empty());
}

TEST_CASE("A clock that was set right is doubted no more, though its old times stay in the order") {
    Site site;
    site.off_ms[3] = 10 * year_ms;
    for (const std::uint64_t device : {1U, 2U, 3U, 1U, 2U, 3U}) {
        site.write(device);
    }
    REQUIRE(site.doubts().size() == 1);
    site.off_ms[3] = 0;
    site.write(3);
    CHECK(site.said().empty());
    for (const std::uint64_t device : {1U, 2U, 3U, 1U, 2U, 3U}) {
        site.write(device);
    }
    CHECK(site.said().empty());
    // With the order's time ten years ahead, another that falls behind is still found.
    site.off_ms[2] = -5 * hour_ms;
    for (const std::uint64_t device : {1U, 2U, 3U, 2U, 1U}) {
        site.write(device);
    }
    REQUIRE(site.doubts().size() == 1);
    CHECK(site.doubts()[0].tablet.device == 2);
    CHECK(site.doubts()[0].is == ClockIs::behind);
    site.off_ms[2] = 0;
    for (const std::uint64_t device : {1U, 2U}) {
        site.write(device);
    }
    CHECK(site.said().empty());
}

TEST_CASE("A tablet with an older program that is ahead is found by those that take it in") {
    Site site;
    for (const std::uint64_t device : {1U, 2U}) {
        site.write(device);
    }
    Event old{{3, 100}, {site.now_ms + year_ms, 0}, "Hal", {}, EdgeFinished{"A", ""}};
    site.events.push_back(old);
    for (const std::uint64_t device : {1U, 2U}) {
        site.write(device);
    }
    REQUIRE(site.doubts().size() == 1);
    CHECK(site.doubts()[0].tablet.by == "Hal");
    CHECK(site.doubts()[0].is == ClockIs::ahead);
}

TEST_CASE("Whatever a crew's clocks say, right ones among them are never named the wrong one") {
    CHECK(rc::check([] {
        Site site;
        const std::uint64_t wrong = static_cast<std::uint64_t>(1 + few(4));
        site.off_ms[wrong] = *rc::gen::inRange<std::int64_t>(-10 * year_ms, 10 * year_ms);
        for (int turn = few(40); turn > 0; --turn) {
            const auto device = static_cast<std::uint64_t>(1 + few(4));
            std::vector<Event> held = site.events;
            held.resize(static_cast<std::size_t>(few(static_cast<int>(held.size()) + 1)));
            for (const Event& event : site.events) {
                if (event.id.device == device) {  // a tablet holds what it wrote
                    held.push_back(event);
                }
            }
            site.write_with(device, "", in_order(held));
        }
        for (const ClockDoubt& doubt : site.doubts()) {
            RC_ASSERT(is_about(doubt, wrong));
            RC_ASSERT(doubt.off_ms <= std::abs(site.off_ms[wrong]) + hour_ms);
            RC_ASSERT(doubt.is == ClockIs::apart || doubt.tablet.device == wrong);
        }
    }));
}

TEST_CASE("A hundred thousand events of as many tablets are gone through at once" *
          doctest::test_suite("long")) {
    std::vector<Event> events;
    for (std::uint32_t i = 0; i < 100'000; ++i) {
        Event event{{i + 1, 1}, {morning_ms + i, 0}, "", {}, EdgeFinished{"A", ""}};
        event.moment = Moment{{morning_ms + i - (i % 2 == 0 ? day_ms : 0)}, {}};
        if (i > 0) {
            event.moment->after = EventId{i, 1};
        }
        events.push_back(event);
    }
    CHECK(clock_doubts(events).size() <= events.size());
}

}  // namespace
}  // namespace hemline
