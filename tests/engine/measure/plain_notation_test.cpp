#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>

#include "engine/measure/plain_notation.h"

using namespace hemline;

TEST_CASE("Signs of a typographer become the plain ones, and say where they stood") {
    const PlainNotation plain = plain_notation("7½″");
    CHECK(plain.text == "7 1/2 \"");
    CHECK(plain.from == std::vector<int>{0, 1, 1, 1, 1, 3, 3, 6});
    CHECK(plain_notation("22°").text == "22deg");
    CHECK(plain_notation("31’‑7⁄8").text == "31'-7/8");
}

TEST_CASE("A ready-made fraction never joins the digits beside it") {
    CHECK(plain_notation("1½2").text == "1 1/2 2");
    CHECK(plain_notation("½½").text == "1/2 1/2 ");
}

TEST_CASE("Bytes that are no UTF-8 stay where they are") {
    CHECK(plain_notation("7\xE2\x80").text == "7\xE2\x80");
    CHECK(rc::check([](const std::string& text) {
        const PlainNotation plain = plain_notation(text);
        RC_ASSERT(plain.from.size() == plain.text.size() + 1);
        for (std::size_t i = 1; i < plain.from.size(); ++i) {
            RC_ASSERT(plain.from[i - 1] <= plain.from[i]);
        }
        RC_ASSERT(plain.from.back() == static_cast<int>(text.size()));
    }));
}
