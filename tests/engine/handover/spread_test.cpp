#include "engine/handover/spread.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

using namespace hemline;

TEST_CASE("labels that have room stay where they are wanted") {
    CHECK(spread_out({{0, 4}, {10, 4}, {20, 6}}, 0, 0) == std::vector<std::int64_t>{0, 10, 20});
}

TEST_CASE("labels wanted at one place stand about it, and between their limits") {
    CHECK(spread_out({{100, 10}, {100, 10}, {100, 10}}, 0, 0) ==
          std::vector<std::int64_t>{90, 100, 110});
    CHECK(spread_out({{0, 10}, {0, 10}}, 0, 100) == std::vector<std::int64_t>{5, 15});
    CHECK(spread_out({{100, 10}, {100, 10}}, 0, 100) == std::vector<std::int64_t>{85, 95});
}

TEST_CASE("no two labels overlap, and none leaves its limits where there is room") {
    const bool holds = rc::check("spread_out", [] {
        const auto places = *rc::gen::container<std::vector<std::int64_t>>(
            12, rc::gen::inRange<std::int64_t>(0, 200));
        std::vector<Spread> labels;
        for (const std::int64_t at : places) {
            labels.push_back({at, 2 + at % 7});
        }
        std::sort(labels.begin(), labels.end(),
                  [](const Spread& a, const Spread& b) { return a.at < b.at; });
        const auto middles = spread_out(labels, 0, 200);
        RC_ASSERT(middles.size() == labels.size());
        for (std::size_t i = 0; i < labels.size(); ++i) {
            RC_ASSERT(middles[i] - labels[i].wide / 2 >= 0);
            RC_ASSERT(middles[i] - labels[i].wide / 2 + labels[i].wide <= 200);
            if (i > 0) {
                RC_ASSERT(middles[i] - labels[i].wide / 2 >=
                          middles[i - 1] - labels[i - 1].wide / 2 + labels[i - 1].wide);
            }
        }
    });
    CHECK(holds);
}
