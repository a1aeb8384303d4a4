// Which strikes count: those that were struck, and those that the device that wrote them took back.
#include "engine/record/old_picks.h"

#include <doctest/doctest.h>

namespace hemline {
namespace {

Event strike(EventId id, EventId target) { return {id, {}, "", {}, Struck{target, ""}}; }

constexpr EventId ada(std::uint32_t sequence) { return {0xada, sequence}; }
constexpr EventId ben(std::uint32_t sequence) { return {0xbe4, sequence}; }

TEST_CASE("A strike counts though another device strikes it") {
    const Event events[] = {strike(ada(2), ada(1)), strike(ben(1), ada(2))};
    CHECK(strikes_in(events).struck == std::set<EventId>{ada(1), ada(2)});
}

TEST_CASE("A strike that its own device struck later is taken back, in whatever order they stand") {
    const Event events[] = {strike(ada(3), ada(2)), strike(ada(2), ada(1))};
    CHECK(strikes_in(events).struck == std::set<EventId>{ada(2)});
    const Event again[] = {strike(ada(2), ada(1)), strike(ada(3), ada(2)), strike(ada(4), ada(3))};
    CHECK(strikes_in(again).struck == std::set<EventId>{ada(1), ada(3)});
}

TEST_CASE("Strikes of themselves and of one another have an answer, the same each time") {
    const Event self[] = {strike(ada(1), ada(1))};
    CHECK(strikes_in(self).struck == std::set<EventId>{ada(1)});
    const Event one_another[] = {strike(ada(1), ben(1)), strike(ben(1), ada(1))};
    CHECK(strikes_in(one_another).struck == std::set<EventId>{ada(1), ben(1)});
    const Event own[] = {strike(ada(1), ada(2)), strike(ada(2), ada(1))};
    CHECK(strikes_in(own).struck == std::set<EventId>{ada(1)});
}

}  // namespace
}  // namespace hemline
