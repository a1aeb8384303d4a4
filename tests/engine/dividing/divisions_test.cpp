// Which divisions of an edge are worth a choice, by hand.
#include "engine/dividing/divisions.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace hemline {
namespace {

/// 10 ft sticks, 6 in laps, a tab of 1 in at each end.
RunRule rule_on(Length edge, Length grid) {
    return {edge, inches(1), inches(1), feet(10), inches(6), inches(24), grid};
}

TEST_CASE("Ends that the grid keeps an eighth apart are not balanced") {
    // 400 1/8 less two full sticks of 114 leaves 172 1/8 for the ends: 86 1/16 each.
    const Length edge = inches(400) + sixteenths(2);
    CHECK(can_balance(rule_on(edge, sixteenths(1)), 4));
    CHECK_FALSE(can_balance(rule_on(edge, sixteenths(2)), 4));
    CHECK(can_balance(rule_on(inches(400), sixteenths(2)), 4));
}

TEST_CASE("The menu has balanced divisions into one piece more than need be, each once") {
    const std::vector<EdgeOption> menu = divisions_menu(rule_on(inches(400), sixteenths(1)));
    CHECK(std::any_of(menu.begin(), menu.end(),
                      [](const EdgeOption& option) { return option.extra_laps == 1; }));
    CHECK(std::none_of(menu.begin(), menu.end(), [](const EdgeOption& option) {
        return option.extra_laps > 1 ||
               (option.extra_laps == 1 && option.balance != Balance::balanced);
    }));
    for (auto one = menu.begin(); one != menu.end(); ++one) {
        CHECK(std::none_of(one + 1, menu.end(),
                           [&](const EdgeOption& other) { return other.pieces == one->pieces; }));
    }
}

}  // namespace
}  // namespace hemline
