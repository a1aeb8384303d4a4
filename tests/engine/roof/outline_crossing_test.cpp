#include <doctest/doctest.h>

#include "engine/roof/outline.h"
#include "engine/words/result.h"

using namespace hemline;

namespace {

WalkedEdge eave(const char* id, std::int64_t length, End left, End right) {
    WalkedEdge walked;
    walked.edge.id = id;
    walked.edge.left = left;
    walked.edge.right = right;
    walked.length = feet(length);
    return walked;
}

/// A U, 30 wide and 20 deep, its notch from the north as deep as said:
///
///     G ┌──┐ F D ┌──┐ C
///     H │  └──E──┘  │ B
///       └─────A─────┘
Result<Outline> with_notch(std::int64_t deep) {
    constexpr End out = End::corner_out, in = End::corner_in;
    const std::vector<WalkedEdge> edges = {eave("A", 30, out, out), eave("B", 20, out, out),
                                           eave("C", 10, out, out), eave("D", deep, out, in),
                                           eave("E", 10, in, in),   eave("F", deep, in, out),
                                           eave("G", 10, out, out), eave("H", 20, out, out)};
    return trace_outline(edges, Tape());
}

}  // namespace

// By hand: every notch comes back and turns by 360°; one of 25 ft cuts through the south side.
TEST_CASE("a walk that comes back but crosses itself does not close") {
    const auto house = with_notch(15);
    REQUIRE(house.ok());
    CHECK(house->state == OutlineState::closes);
    CHECK_FALSE(house->crossing.has_value());
    const auto crossed = with_notch(25);
    REQUIRE(crossed.ok());
    CHECK(crossed->miss == Length());
    CHECK(crossed->state == OutlineState::misses);
    CHECK(crossed->crossing == std::pair<std::size_t, std::size_t>(0, 3));
    REQUIRE(crossed->notes.size() == 1);
    CHECK(crossed->notes[0].what == "The walk comes back, and its sides cross on the way.");
}
