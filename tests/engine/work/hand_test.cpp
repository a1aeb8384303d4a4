// The folded piece against the wall and the deck, as planes in space: is it of the right hand?
#include "engine/trim/folding.h"
#include "engine/work/mark_deeds.h"

#include <cmath>

#include "every_card.h"

using namespace hemline_test;

namespace {

/// Somebody stands on the roof and faces the wall: x to the right, y into the wall, z up. The wall
/// is the plane y = 0, the roof lies at y < 0; `along` and `up` are the deck's, `up` square to it.
struct Deck {
    Space along, up;
};

/// The piece of a single stick, folded up with its deck leg on the deck and its bend at the wall.
std::vector<Face> on_deck(const FlatPattern& pattern, const Deck& deck) {
    Placing root;
    root.along = deck.along;
    root.normal = deck.up;
    root.across = cross(deck.along, deck.up);  // upper face up, the page's left at the left
    const auto bend = static_cast<double>(pattern.legs.edges[pattern.main_bend + 1].nm()) / 1e6;
    root.origin = root.across * -bend;
    return fold_up(pattern, step_of(FoldStep::finished), root);
}

/// A wall flashing of 6 ft 3 in, from an end at the eave (or gable) to one at a wall.
FlatPattern flashing(EdgeKind kind, End left, End right, bool foot_right) {
    Edge edge = eave("Y", left, right);
    edge.kind = kind;
    edge.pitch = {SlopeNotation::rise_in_12, 3'500'000};
    Job job;
    job.edges.push_back(read_twice(edge, inches(75)));
    if (foot_right) {
        put_foot_right(job.edges.front());
    }
    const Catalogue catalogue = own_catalogue();
    const Plan plan = make_plan(job, catalogue);
    const auto card = make_card(job, plan, catalogue, "Y", TrimRole::main, 1);
    REQUIRE(card.ok());
    const auto pattern = piece_pattern(*card, edge, sections_of_assets());
    REQUIRE(pattern.ok());
    return *pattern;
}

/// The deck leg lies on the roof, the wall leg flat on the wall above it.
void check_legs(const FlatPattern& pattern, const std::vector<Face>& faces, const Deck& deck) {
    int legs = 0;
    for (const Face& face : faces) {
        const LegName name = pattern.legs.names[face.leg];
        if (face.is_tab || name == LegName::hem) {
            continue;
        }
        ++legs;
        for (const Space& corner : face.corners) {
            if (name == LegName::flange) {
                CHECK(std::abs(dot(corner, deck.up)) < 1e-6);
                CHECK(corner.y < 1e-6);
            } else {
                CHECK(std::abs(corner.y) < 1e-6);
                CHECK(dot(corner, deck.up) > -1e-6);
            }
        }
    }
    CHECK(legs == 2);
}

}  // namespace

TEST_CASE("a sidewall's metal lies on deck and wall, its foot turned out, whichever hand") {
    // 3 1/2 in 12; the deck rises to the right where the foot is at the left.
    const double slope = std::atan(3.5 / 12);
    for (const Side foot : {Side::left, Side::right}) {
        CAPTURE(word_of(foot));
        const double rises = foot == Side::left ? 1 : -1;
        const Deck deck{{std::cos(slope), 0, rises * std::sin(slope)},
                        {-rises * std::sin(slope), 0, std::cos(slope)}};
        const FlatPattern pattern =
            flashing(EdgeKind::sidewall, End::eave, End::wall, foot == Side::right);
        const auto faces = on_deck(pattern, deck);
        check_legs(pattern, faces, deck);
        int kicks = 0, turns = 0;
        double foot_high = 0, top_low = 0;
        for (const Face& face : faces) {
            if (!face.is_tab) {
                continue;
            }
            double out = 0, above = 0, low = 1e9, high = -1e9;
            for (const Space& corner : face.corners) {
                out = std::min(out, corner.y);
                above = std::max(above, dot(corner, deck.up));
                low = std::min(low, corner.z);
                high = std::max(high, corner.z);
            }
            if (face.side == foot) {
                ++kicks;
                foot_high = high;
                CHECK(pattern.legs.names[face.leg] == LegName::face);
                CHECK(out < -25);  // off the wall, over the roof: 2 in at 45°
            } else if (pattern.legs.names[face.leg] == LegName::flange) {
                ++turns;
                CHECK(above == doctest::Approx(25.4));  // 1 in up from the deck
                top_low = low;
            }
        }
        CHECK(kicks == 1);
        CHECK(turns == 1);
        CHECK(top_low > foot_high + 250);  // 75 in along the wall rise 21 in, the wall leg is 8 in
    }
}

TEST_CASE("a headwall's metal lies on deck and wall") {
    const double slope = std::atan(3.5 / 12);
    const Deck deck{{1, 0, 0}, {0, -std::sin(slope), std::cos(slope)}};
    const FlatPattern pattern = flashing(EdgeKind::headwall, End::wall, End::gable, false);
    check_legs(pattern, on_deck(pattern, deck), deck);
}

TEST_CASE("an eave's flange that runs past an inside corner is folded into the other roof") {
    // Two roofs of 6 in 12 that meet at a square inside corner: the eave lies along the x axis, the
    // other roof rises away from the corner along it. Grid of the fold's places: 1/16 in.
    for (const Side corner : {Side::left, Side::right}) {
        CAPTURE(word_of(corner));
        Edge edge = eave("A", End::gable, End::gable, corner);
        (corner == Side::left ? edge.left : edge.right) = End::corner_in;
        Job job;
        job.edges.push_back(read_twice(edge, feet(8)));
        const Catalogue catalogue = own_catalogue();
        const auto card =
            make_card(job, make_plan(job, catalogue), catalogue, "A", TrimRole::main, 1);
        REQUIRE(card.ok());
        const auto pattern = piece_pattern(*card, edge, sections_of_assets());
        REQUIRE(pattern.ok());
        Length line;
        for (const Mark& mark : card->marks) {
            line = mark.kind == MarkKind::face_cut ? mark.at : line;
        }
        const double at = static_cast<double>(line.nm()) / 1e6;
        const double away = corner == Side::left ? -1 : 1;
        int on_other_roof = 0;
        for (const Face& face :
             fold_up(*pattern, step_of(FoldStep::finished), resting(*pattern, rise_in_12(6)))) {
            if (!face.is_tab || face.side != corner) {
                continue;
            }
            ++on_other_roof;
            for (const Space& p : face.corners) {
                CHECK(std::abs(p.z - (p.x - at) * away / 2) < 0.8);
            }
        }
        CHECK(on_other_roof == 1);
    }
}

TEST_CASE("what the card says lies toward you is the lowest leg of its pattern and its picture" *
          doctest::test_suite("large")) {
    const auto refused = for_every_card([](const CardInHand& at) {
        CAPTURE(at.name());
        const std::string words = leg_toward_you(at.card).english();
        if (at.card.role != TrimRole::main) {
            CHECK(words == "lower edge toward you");
            return;
        }
        const auto place = [&](const auto& legs, LegName name, auto name_of) {
            for (std::size_t i = 0; i < legs.size(); ++i) {
                if (name_of(legs[i]) == name) {
                    return i;
                }
            }
            return legs.size();
        };
        const auto in_pattern = [&](LegName name) {
            return place(at.pattern.legs.names, name, [](LegName own) { return own; });
        };
        const auto in_picture = [&](LegName name) {
            return place(at.card.legs, name, [](const Leg& own) { return own.name; });
        };
        const bool face_low = in_pattern(LegName::face) > in_pattern(LegName::flange);
        CHECK(face_low == (in_picture(LegName::face) > in_picture(LegName::flange)));
        const std::string toward = words.substr(words.find(", ") + 2);
        const std::string other_roof =
            at.card.pitches
                ? "leg on the " + joined({Text(at.card.pitches->second)}, "").english() +
                      " roof toward you"
                : "leg on the other roof toward you";
        const bool says_face =
            toward == "face toward you" || toward == "wall leg toward you" || toward == other_roof;
        const bool says_deck =
            toward == "deck leg toward you" || toward == "leg on the lower toward you";
        CHECK(says_face != says_deck);
        CHECK(says_face == face_low);
    });
    CHECK(refused.empty());
}
