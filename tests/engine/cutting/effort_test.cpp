#include "engine/cutting/effort.h"

#include <doctest/doctest.h>

using namespace hemline;

TEST_CASE("A part of an effort spends the whole, and a cancel of the whole ends the part") {
    // Once a long search asked nobody whether to stop, and a time limit was overrun by seconds.
    int asked = 0;
    const CuttingEffort given{1'000'000'000, [&] { return ++asked == 5; }};
    Effort whole(given);
    Effort part(whole, 500'000'000);
    std::int64_t spent = 0;
    while (part.spend(1000)) {
        spent += 1000;
    }
    CHECK(asked == 5);
    CHECK(spent < 1'000'000);
    CHECK(part.is_spent());
    CHECK(whole.is_spent());
}

TEST_CASE("A part ends at its own steps, and the whole goes on") {
    const CuttingEffort given{10'000, {}};
    Effort whole(given);
    Effort part(whole, 4000);
    while (part.spend(1000)) {
    }
    CHECK(part.is_spent());
    CHECK(whole.left() == 6000);
    CHECK(whole.spend(1000));
}
