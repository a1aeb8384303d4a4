// No screw, bead or lap line in metal that is cut away, on any card.
#include <cmath>
#include <numbers>

#include "engine/work/fixing.h"
#include "every_card.h"

using namespace hemline_test;

namespace {

double covered(const FlatOutline& metal, const FlatOutline& shape) {
    double there = 0;
    for (const FlatOutline& part : parts_in(metal, shape)) {
        there += area_mm2(part);
    }
    return there;
}

/// A screw's head, as a polygon of 32 corners around it: 1/4 in of radius (common practice for
/// pancake heads, no published source).
FlatOutline head_at(std::int64_t x, std::int64_t y) {
    FlatOutline head;
    const double r = static_cast<double>(sixteenths(4).nm());
    for (int i = 0; i < 32; ++i) {
        const double turn = -2 * std::numbers::pi * i / 32;
        head.push_back(
            {x + std::llround(r * std::cos(turn)), y + std::llround(r * std::sin(turn))});
    }
    return head;
}

/// The hem beside a valley's leg, and how a clip lies on it: over its edge on the leg's outer bend.
bool clip_finds_hem(const CardInHand& at, std::size_t leg, Length clip) {
    const bool above = leg <= at.pattern.main_bend;
    const std::size_t hem = above ? leg - 1 : leg + 1;
    REQUIRE(at.pattern.legs.names[hem] == LegName::hem);
    const std::int64_t top = at.pattern.legs.edges[hem].nm();
    const std::int64_t low = at.pattern.legs.edges[hem + 1].nm();
    const std::int64_t x = clip.nm(), half = clip_half_width.nm(), in = sixteenths(8).nm();
    const std::int64_t y0 = above ? low - in : top, y1 = above ? low : top + in;
    REQUIRE(low - top > in);
    const FlatOutline span{{x - half, y0}, {x - half, y1}, {x + half, y1}, {x + half, y0}};
    return covered(at.pattern.panels[hem], span) > area_mm2(span) * (1 - 1e-6);
}

/// The line of the screws on a leg: near its outer edge on the roof, in the middle of a wrap or
/// cleat.
std::int64_t screws_y(const CardInHand& at, std::size_t leg) {
    const std::int64_t top = at.pattern.legs.edges[leg].nm();
    const std::int64_t low = at.pattern.legs.edges[leg + 1].nm();
    if (at.card.role != TrimRole::main || at.pattern.legs.names[leg] == LegName::kick) {
        return (top + low) / 2;
    }
    // As the trim states the leg: to the mold lines; on the blank it is a little narrower.
    Length width;
    for (const Leg& own : at.card.legs) {
        width = own.name == at.pattern.legs.names[leg] ? own.width : width;
    }
    const std::int64_t in = screw_line_of(width).nm();
    return leg <= at.pattern.main_bend ? top + in : low - in;
}

}  // namespace

TEST_CASE(
    "the whole head of each screw of every card lies in metal that is there and stays flat, and "
    "each clip on hem" *
    doctest::test_suite("long")) {
    std::int64_t heads = 0, clips = 0;
    std::map<TrimRole, int> cards;
    const auto refused = for_every_card([&](const CardInHand& at) {
        CAPTURE(at.name());
        ++cards[at.card.role];
        for (std::size_t leg = 0; leg < at.pattern.panels.size(); ++leg) {
            const auto line = std::find_if(
                at.card.screws.begin(), at.card.screws.end(),
                [&](const ScrewLine& one) { return one.leg == at.pattern.legs.names[leg]; });
            if (line == at.card.screws.end()) {
                continue;
            }
            for (const Length screw : line->at) {
                if (clips_hems(at.card)) {
                    CHECK_MESSAGE(clip_finds_hem(at, leg, screw),
                                  print_length(screw, Marks::sixteenth)
                                      << " of " << print_length(at.card.cut, Marks::sixteenth));
                    ++clips;
                    continue;
                }
                const FlatOutline head = head_at(screw.nm(), screws_y(at, leg));
                CHECK_MESSAGE(covered(at.pattern.panels[leg], head) > area_mm2(head) * (1 - 1e-6),
                              print_length(screw, Marks::sixteenth)
                                  << " of " << print_length(at.card.cut, Marks::sixteenth));
                ++heads;
            }
        }
    });
    CHECK(refused.empty());
    CHECK(heads > 20'000);
    CHECK(clips > 500);
    CHECK(cards.size() == 3);  // trims, wraps and cleats
}

TEST_CASE("each bead and lap line crosses flange and face in metal that is there" *
          doctest::test_suite("long")) {
    int lines = 0;
    const auto refused = for_every_card([&](const CardInHand& at) {
        CAPTURE(at.name());
        for (const Mark& mark : at.card.marks) {
            if (mark.kind != MarkKind::bead && mark.kind != MarkKind::lap_line) {
                continue;
            }
            const std::int64_t half = at.job.practice.bead_width.nm() / 2, x = mark.at.nm();
            for (std::size_t leg = 0; leg < at.pattern.panels.size(); ++leg) {
                const LegName name = at.pattern.legs.names[leg];
                if (name != LegName::flange && name != LegName::face) {
                    continue;
                }
                const std::int64_t top = at.pattern.legs.edges[leg].nm();
                const std::int64_t low = at.pattern.legs.edges[leg + 1].nm();
                const FlatOutline strip{
                    {x - half, top}, {x - half, low}, {x + half, low}, {x + half, top}};
                CHECK(covered(at.pattern.panels[leg], strip) > area_mm2(strip) * (1 - 1e-6));
                ++lines;
            }
        }
    });
    CHECK(refused.empty());
    CHECK(lines > 5'000);
}

TEST_CASE("a run's tally counts the screws of its cards" * doctest::test_suite("long")) {
    std::map<const Run*, std::int64_t> on_cards;
    const auto refused = for_every_card([&](const CardInHand& at) {
        std::int64_t& sum = on_cards[&at.run];
        sum = at.card.piece == 1 ? 0 : sum;
        sum += count_of(at.card.screws);
        if (at.card.piece == at.card.pieces) {
            const Trim& trim = *at.catalogue.find(at.run.trim);
            CHECK(fixing_of(at.run, at.edge, trim, at.job.practice).screws == sum);
        }
    });
    CHECK(refused.empty());
}

TEST_CASE("where no whole head finds metal there is no screw, and none is counted") {
    // Two cuts of a 4 in flange that leave it whole over less than a head.
    const FreeEnd left{{}, false, inches(6)};
    CHECK(screws_of(inches(12), left, left, {}).empty());
    const FreeEnd less{{}, false, inches(5)};
    CHECK(screws_of(inches(12), less, less, {}) == std::vector<Length>{inches(5), inches(7)});
}
