#include "engine/cutting/wide.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <initializer_list>

using namespace hemline;

TEST_CASE("Products are exact where 64 bits just suffice and where they do not") {
    constexpr std::int64_t small = (std::int64_t{1} << 31) - 1, large = std::int64_t{1} << 31;
    for (const std::int64_t a : {small, large, large * large - 1}) {
        CHECK(product_exceeds(a, a, a - 1, a + 1));  // a² > a² − 1
        CHECK(!product_exceeds(a - 1, a + 1, a, a));
        CHECK(!product_exceeds(a, a, a, a));
        CHECK(product_over(a, a, a) == a);
        CHECK(product_over(a, a - 1, a) == a - 1);
    }
    CHECK(product_exceeds(1, 0, -1, large * large));
    CHECK(!product_exceeds(-1, 1, 0, 1));
    CHECK(product_over(small, small, 2) == 2305843007066210304);  // ⌊(2^31 − 1)² / 2⌋
}
