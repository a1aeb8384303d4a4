// Random outlines, with a single reading of each made wrong: is it noticed, is it found, is it
// first?
#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <string>

#include "engine/words/result.h"
#include "tests/engine/roof/outline_shapes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

enum class Wrong { foot, burnt_inch, digits, turn };

/// One cell made wrong, and what it was.
struct Spoilt {
    std::vector<WalkedEdge> house;
    std::size_t row = 0;
    Length was;
    bool possible = true;
};

Spoilt spoil_digits(std::vector<WalkedEdge> house, std::size_t row) {
    const Length was = *house[row].length;
    const std::int64_t whole_feet = was.nm() / feet(1).nm();
    const std::int64_t other = whole_feet % 10 * 10 + whole_feet / 10;
    const bool possible =
        whole_feet >= 10 && whole_feet < 100 && other >= 10 && other != whole_feet;
    house[row].length = was + feet(other - whole_feet);
    return {house, row, was, possible};
}

Spoilt spoil(std::vector<WalkedEdge> house, Wrong wrong, Chance& chance) {
    const auto last = static_cast<std::int64_t>(house.size()) - 1;
    const auto row = static_cast<std::size_t>(chance.between(0, last));
    const Length was = *house[row].length;
    switch (wrong) {
        case Wrong::foot:
            house[row].length = was + feet(chance.between(0, 1) == 0 ? 1 : -1);
            return {house, row, was, *house[row].length > Length()};
        case Wrong::burnt_inch:
            house[row].length = was + inches(1);
            return {house, row, was, true};
        case Wrong::digits:
            return spoil_digits(house, row);
        case Wrong::turn:
            break;
    }
    Edge& before = house[row].edge;
    Edge& after = house[(row + 1) % house.size()].edge;
    const auto turned = [](End end) {
        return end == End::corner_out ? End::corner_in : End::corner_out;
    };
    before.right = turned(before.right);
    after.left = turned(after.left);
    if (before.corner_right) {
        before.corner_right = degrees(360) - *before.corner_right;
        after.corner_left = before.corner_right;
    }
    return {house, row, was, true};
}

bool is_it(const Suspect& suspect, const Spoilt& spoilt, Wrong wrong) {
    return suspect.edge == spoilt.house[spoilt.row].edge.id &&
           (wrong == Wrong::turn ? suspect.corner_to.has_value() : suspect.to == spoilt.was);
}

struct Tally {
    int wrong = 0, seen = 0, found = 0, first = 0, listed = 0;
};

template <class House>
Tally tally_of(House house, Wrong wrong, int houses) {
    Chance chance(2'718'281);
    Tally tally;
    while (tally.wrong < houses) {
        const Spoilt spoilt = spoil(house(chance), wrong, chance);
        if (!spoilt.possible) {
            continue;
        }
        ++tally.wrong;
        const Outline outline = trace(spoilt.house);
        if (outline.state == OutlineState::closes) {
            continue;  // smaller than what so many tapes may be off together
        }
        ++tally.seen;
        tally.listed += static_cast<int>(outline.suspects.size());
        for (std::size_t i = 0; i < outline.suspects.size(); ++i) {
            if (is_it(outline.suspects[i], spoilt, wrong)) {
                ++tally.found;
                tally.first += i == 0 ? 1 : 0;
                break;
            }
        }
    }
    return tally;
}

void report(const char* what, const Tally& tally) {
    std::printf("outline, %s: %d wrong, %d seen, %d found, %d first, %.1f listed each\n", what,
                tally.wrong, tally.seen, tally.found, tally.first,
                tally.seen == 0 ? 0.0 : static_cast<double>(tally.listed) / tally.seen);
}

}  // namespace

TEST_CASE("A thousand houses of right angles close to the nanometre") {
    Chance chance(1'414'213);
    for (int i = 0; i < 1000; ++i) {
        const auto house = square_house(chance);
        const Outline outline = trace(house);
        REQUIRE(outline.state == OutlineState::closes);
        REQUIRE(outline.miss == Length());
        REQUIRE(outline.lines.back().to == outline.lines.front().from);
    }
}

TEST_CASE("A thousand houses of any angles close within what their readings allow") {
    Chance chance(1'732'050);
    for (int i = 0; i < 1000; ++i) {
        const Outline outline = trace(skew_house(chance));
        REQUIRE(outline.state == OutlineState::closes);
        REQUIRE(outline.lines.back().to == outline.lines.front().from);
    }
}

TEST_CASE("One wrong reading of a house of right angles is always among the suspects") {
    const Tally foot = tally_of(square_house, Wrong::foot, 500);
    report("square, a foot", foot);
    CHECK(foot.seen == foot.wrong);
    CHECK(foot.found == foot.wrong);
    const Tally burnt = tally_of(square_house, Wrong::burnt_inch, 500);
    report("square, burnt inch", burnt);
    CHECK(burnt.found == burnt.seen);
    CHECK(burnt.seen >= 490);  // the rest: more tapes in a row than an inch
    const Tally digits = tally_of(square_house, Wrong::digits, 500);
    report("square, digits", digits);
    CHECK(digits.found == digits.wrong);
    const Tally turn = tally_of(square_house, Wrong::turn, 500);
    report("square, a turn", turn);
    CHECK(turn.found == turn.wrong);
}

TEST_CASE(
    "One wrong reading of a house of any angles is among the suspects, and mostly the first") {
    const Tally foot = tally_of(skew_house, Wrong::foot, 500);
    report("any angles, a foot", foot);
    CHECK(foot.found == foot.wrong);
    CHECK(foot.first * 10 >= foot.wrong * 8);
    const Tally burnt = tally_of(skew_house, Wrong::burnt_inch, 500);
    report("any angles, burnt inch", burnt);
    CHECK(burnt.found == burnt.seen);
    const Tally digits = tally_of(skew_house, Wrong::digits, 500);
    report("any angles, digits", digits);
    CHECK(digits.found == digits.wrong);
    const Tally turn = tally_of(skew_house, Wrong::turn, 500);
    report("any angles, a turn", turn);
    CHECK(turn.found == turn.wrong);
}

TEST_CASE("The drawn house is the closest to the readings: no change pulls harder than another") {
    // Lagrange: at the least sum of (change/error)², each side's change over its squared error is
    // the part of the same vector along that side.
    Chance chance(2'236'067);
    for (int i = 0; i < 200; ++i) {
        auto house = square_house(chance);
        house[1].length = *house[1].length + inches(3);
        const Outline outline = trace(house);
        double pull[2] = {0, 0};
        bool known[2] = {false, false};
        for (std::size_t k = 0; k < house.size(); ++k) {
            const OutlineLine& line = outline.lines[k];
            const Length dx = line.to.x - line.from.x;
            const Length dy = line.to.y - line.from.y;
            const bool level = absolute(dx) > absolute(dy);
            const Length along = level ? dx : dy;
            const double change = static_cast<double>((absolute(along) - *house[k].length).nm()) *
                                  (along < Length() ? -1 : 1);
            const double error =
                static_cast<double>(allowed_difference(*house[k].length, Tape()).nm()) / 2;
            const double here = change / (error * error);
            const auto axis = static_cast<std::size_t>(level ? 0 : 1);
            pull[axis] = known[axis] ? pull[axis] : here;
            known[axis] = true;
            REQUIRE(std::abs(here - pull[axis]) * error * error <=
                    10);  // nanometers of rounded ends
        }
    }
}
