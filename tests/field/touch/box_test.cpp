#include "field/touch/box.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

using namespace hemline;

TEST_CASE("Strips cut off a box and its rest cover it, whatever is asked for") {
    CHECK(rc::check([] {
        const auto side = [] { return static_cast<float>(*rc::gen::inRange(0, 2000)); };
        const Box whole{side(), side(), side(), side()};
        const float cut = static_cast<float>(*rc::gen::inRange(-100, 3000));
        Box rest = whole;
        const Box top = take_top(rest, cut);
        RC_ASSERT(top.h >= 0 && rest.h >= 0);
        RC_ASSERT(top.h + rest.h == whole.h);
        RC_ASSERT(top.y == whole.y);
        RC_ASSERT(rest.y == top.bottom());
        rest = whole;
        const Box right = take_right(rest, cut);
        RC_ASSERT(right.w + rest.w == whole.w);
        RC_ASSERT(rest.right() == right.x);
        RC_ASSERT(right.right() == whole.right());
    }));
}

TEST_CASE("Columns and rows are equal, keep their gap and end where the box ends") {
    const std::vector<Box> three = columns({10, 20, 100, 40}, 3, 5);
    REQUIRE(three.size() == 3);
    CHECK(three[0].x == 10);
    CHECK(three[0].w == 30);
    CHECK(three[1].x - three[0].right() == 5);
    CHECK(three[2].right() == 110);
    CHECK(three[2].h == 40);
    const std::vector<Box> two = rows({10, 20, 100, 40}, 2, 10);
    REQUIRE(two.size() == 2);
    CHECK(two[1].y == 45);
    CHECK(two[1].bottom() == 60);
}

TEST_CASE("An inset larger than the box leaves its middle, with no size") {
    const Box middle = inset({0, 0, 10, 4}, 6);
    CHECK(middle.x == 5);
    CHECK(middle.y == 2);
    CHECK(middle.w == 0);
    CHECK(middle.h == 0);
}

TEST_CASE("Boxes that do not meet have nothing in common") {
    const Box none = common_of({0, 0, 10, 10}, {20, 5, 10, 10});
    CHECK(none.w == 0);
    const Box corner = common_of({0, 0, 10, 10}, {6, 7, 10, 10});
    CHECK(corner.x == 6);
    CHECK(corner.w == 4);
    CHECK(corner.h == 3);
}

TEST_CASE("A line crosses a box that it passes through, ends in or touches, and no other") {
    const Box box{10, 10, 20, 10};
    CHECK(is_crossed(box, 0, 15, 50, 15));
    CHECK(is_crossed(box, 15, 0, 15, 50));
    CHECK(is_crossed(box, 0, 0, 40, 30));
    CHECK(is_crossed(box, 12, 12, 14, 14));
    CHECK(is_crossed(box, 0, 15, 12, 15));
    CHECK_FALSE(is_crossed(box, 0, 15, 8, 15));
    CHECK_FALSE(is_crossed(box, 0, 5, 50, 5));
    CHECK_FALSE(is_crossed(box, 0, 20, 10, 40));
    CHECK_FALSE(is_crossed(box, 35, 0, 35, 50));
}

TEST_CASE("Of a line the part in a box is where it comes in and goes out, and none beside it") {
    const Box box{10, 10, 20, 10};
    const auto across = part_in(box, 0, 15, 40, 15);
    REQUIRE(across.has_value());
    CHECK(across->from == 0.25F);
    CHECK(across->to == 0.75F);
    const auto inside = part_in(box, 12, 12, 14, 14);
    REQUIRE(inside.has_value());
    CHECK(inside->from == 0);
    CHECK(inside->to == 1);
    CHECK(!part_in(box, 0, 5, 40, 5).has_value());
}
