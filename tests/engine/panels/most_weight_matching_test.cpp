#include "engine/panels/most_weight_matching.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

using namespace hemline;

namespace {

using Worths = std::vector<std::vector<std::int64_t>>;

/// Every pairing of those from `one` on that are free yet.
std::int64_t best_of_all(const Worths& worth, std::uint32_t taken, std::size_t one) {
    if (one == worth.size()) {
        return 0;
    }
    std::int64_t best = best_of_all(worth, taken, one + 1);
    if ((taken >> one & 1U) != 0) {
        return best;
    }
    for (std::size_t other = one + 1; other < worth.size(); ++other) {
        if (worth[one][other] > 0 && (taken >> other & 1U) == 0) {
            best = std::max(best,
                            worth[one][other] + best_of_all(worth, taken | 1U << other, one + 1));
        }
    }
    return best;
}

/// What the pairing is worth; -1 where it is none.
std::int64_t worth_of(const Worths& worth, const std::vector<std::optional<std::size_t>>& mates) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < mates.size(); ++i) {
        if (!mates[i]) {
            continue;
        }
        const std::size_t mate = *mates[i];
        if (mates[mate] != i || worth[i][mate] <= 0) {
            return -1;
        }
        sum += i < mate ? worth[i][mate] : 0;
    }
    return sum;
}

std::vector<Match> matches_of(const Worths& worth) {
    std::vector<Match> matches;
    for (std::size_t i = 0; i < worth.size(); ++i) {
        for (std::size_t k = i + 1; k < worth.size(); ++k) {
            if (worth[i][k] > 0) {
                matches.push_back({i, k, worth[i][k]});
            }
        }
    }
    return matches;
}

}  // namespace

TEST_CASE("Nobody, one and two are paired as they can be") {
    CHECK(most_weight_matching(0, {}).empty());
    CHECK_FALSE(most_weight_matching(1, {})[0].has_value());
    const std::vector<Match> one = {{0, 1, 5}};
    CHECK(most_weight_matching(2, one)[0] == 1);
}

TEST_CASE("A chain whose middle is worth most keeps its two ends") {
    const std::vector<Match> chain = {{0, 1, 8}, {1, 2, 10}, {2, 3, 8}};
    CHECK(most_weight_matching(4, chain)[1] == 0);
    const std::vector<Match> steep = {{0, 1, 4}, {1, 2, 10}, {2, 3, 4}};
    CHECK(most_weight_matching(4, steep)[1] == 2);
}

TEST_CASE("The pairing is worth as much as the best of all, on 4,000 graphs of up to 12") {
    std::mt19937 random(7);
    for (int graph = 0; graph < 4000; ++graph) {
        const std::size_t count = 1 + random() % 12;
        const std::size_t dense = 1 + random() % 10;
        const std::int64_t most = random() % 2 == 0 ? 4 : 1000;
        Worths worth(count, std::vector<std::int64_t>(count));
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t k = i + 1; k < count; ++k) {
                if (random() % 10 < dense) {
                    worth[i][k] = worth[k][i] = 1 + static_cast<std::int64_t>(random()) % most;
                }
            }
        }
        const auto mates = most_weight_matching(count, matches_of(worth));
        CHECK(worth_of(worth, mates) == best_of_all(worth, 0, 0));
    }
}
