// Labels in rows below a tape: whatever marks there are, and wherever they lie.
#include "field/screens/card/label_rows.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <vector>

using namespace hemline;

namespace {

constexpr float mm = 5.9F;
constexpr Box page{40, 300, 1000, 0};

/// Marks in the order of the tape, the left half's first, with labels of 10 to 60 mm.
std::vector<LabelWanted> any_labels() {
    const auto count = static_cast<std::size_t>(*rc::gen::inRange(1, 10));
    auto at = *rc::gen::container<std::vector<int>>(count, rc::gen::inRange(0, 1000));
    std::sort(at.begin(), at.end());
    std::vector<LabelWanted> labels;
    for (const int x : at) {
        const auto w = static_cast<float>(*rc::gen::inRange(10, 61));
        const auto h = static_cast<float>(*rc::gen::inRange(10, 24));
        labels.push_back(
            {page.x + static_cast<float>(x), w * mm, h * mm, x < 500 ? Side::left : Side::right});
    }
    return labels;
}

float side_of(Spot a, Spot b, Spot p) {
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

/// Whether two straight lines cross, with a point of each at both sides of the other.
bool cross(Spot a, Spot b, Spot c, Spot d) {
    return side_of(a, b, c) * side_of(a, b, d) < 0 && side_of(c, d, a) * side_of(c, d, b) < 0;
}

bool cross(const LabelPlaced& one, const LabelPlaced& other) {
    for (std::size_t i = 1; i < one.leader.size(); ++i) {
        for (std::size_t j = 1; j < other.leader.size(); ++j) {
            if (cross(one.leader[i - 1], one.leader[i], other.leader[j - 1], other.leader[j])) {
                return true;
            }
        }
    }
    return false;
}

bool crosses(const LabelPlaced& one, Box box) {
    for (std::size_t i = 1; i < one.leader.size(); ++i) {
        if (is_crossed(inset(box, 1), one.leader[i - 1].x, one.leader[i - 1].y, one.leader[i].x,
                       one.leader[i].y)) {
            return true;
        }
    }
    return false;
}

}  // namespace

TEST_CASE("No label lies on another, and no leader crosses a label or a leader") {
    CHECK(rc::check([] {
        const std::vector<LabelWanted> wanted = any_labels();
        const LabelRows rows = rows_of(wanted, page, mm);
        RC_ASSERT(rows.labels.size() == wanted.size());
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            const LabelPlaced& one = rows.labels[i];
            RC_ASSERT(one.box.x >= page.x - 0.5F);
            RC_ASSERT(one.box.right() <= page.right() + 0.5F);
            RC_ASSERT(one.box.bottom() <= page.y + rows.height);
            RC_ASSERT(one.leader.front().x == wanted[i].at);
            RC_ASSERT(one.leader.back().y == one.box.y);
            RC_ASSERT(one.leader.back().x >= one.box.x - 0.5F);
            RC_ASSERT(one.leader.back().x <= one.box.right() + 0.5F);
            for (std::size_t j = 0; j < wanted.size(); ++j) {
                if (i == j) {
                    continue;
                }
                const Box both = common_of(one.box, rows.labels[j].box);
                RC_ASSERT((both.w <= 0 || both.h <= 0));
                RC_ASSERT_FALSE(crosses(one, rows.labels[j].box));
                RC_ASSERT_FALSE(cross(one, rows.labels[j]));
            }
        }
    }));
}

TEST_CASE("In each half the labels stand in the order of the tape, row by row") {
    CHECK(rc::check([] {
        const std::vector<LabelWanted> wanted = any_labels();
        const LabelRows rows = rows_of(wanted, page, mm);
        for (std::size_t i = 1; i < wanted.size(); ++i) {
            if (wanted[i].half != wanted[i - 1].half) {
                continue;
            }
            const Box before = rows.labels[i - 1].box;
            const Box now = rows.labels[i].box;
            RC_ASSERT((now.y > before.y || (now.y == before.y && now.x > before.x)));
        }
    }));
}

TEST_CASE("Few labels stand in one row, straight below their marks where they have room") {
    const LabelRows rows =
        rows_of({{140, 100, 60, Side::left}, {800, 120, 60, Side::right}}, page, mm);
    CHECK(rows.bent == 0);
    CHECK(rows.labels[0].box.y == rows.labels[1].box.y);
    CHECK(rows.labels[1].box.mid_x() == doctest::Approx(800));
}
