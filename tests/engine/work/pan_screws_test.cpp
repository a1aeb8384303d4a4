// Screws of what stands on closures: two a pan, never on a seam.
#include "engine/work/pan_screws.h"

#include <algorithm>
#include <cmath>

#include "every_card.h"

using namespace hemline_test;

namespace {

/// How far the left end of the card's metal lies from the left end of its edge, by what the run
/// covers.
Length begins_of(const CardInHand& at) {
    const PlannedPiece& piece = at.run.pieces[static_cast<std::size_t>(at.card.piece) - 1];
    const Side first = first_fitted(at.edge);
    const Trim trim = fitted_to(*at.catalogue.find(at.run.trim), at.edge);
    Length begins = piece.begins;
    if (at.card.piece == 1) {
        begins -= end_metal(at.edge, first, trim, at.job.practice).added();
    }
    return first == Side::left ? begins : covered_by(at.run) - begins - piece.cut;
}

/// From the nearest seam, seams at k · apart from the left end of the edge and past none of its
/// ends.
double inches_from_seam(Length along, const ClosureSide& side, Length edge) {
    double nearest = 1e9;
    for (std::int64_t k = 1; side.apart * k < edge; ++k) {
        nearest = std::min(nearest,
                           std::abs(static_cast<double>((along - side.apart * k).nm())) / 25.4e6);
    }
    return nearest;
}

Card ridge_card(int piece) {
    Edge edge = eave("R", End::gable, End::gable);
    edge.kind = EdgeKind::ridge;
    edge.pitch2 = rise_in_12(6);
    Job job;
    job.edges.push_back(read_twice(edge, feet(40)));
    const Catalogue catalogue = own_catalogue();
    return make_card(job, make_plan(job, catalogue), catalogue, "R", TrimRole::main, piece).value();
}

Edge hip_between(int rise, int other_rise) {
    Edge edge = eave("H", End::eave, End::ridge);
    edge.kind = EdgeKind::hip;
    edge.pitch = rise_in_12(rise);
    edge.pitch2 = rise_in_12(other_rise);
    return edge;
}

}  // namespace

// Worked example: a 40 ft eave and ridge, gables both, pans of 16 in: of the ten screws that a leg
// of piece 3 had every 12 in, three stood within an inch of a seam (seams at 16 k in from the deck
// edge); two a pan stand 4 and 12 in from it. Common practice, no published source.
TEST_CASE("no screw of a ridge of pans of 16 in stands nearer than 4 in to a seam") {
    Length along_edge;
    for (int piece = 1; piece <= 5; ++piece) {
        const Card card = ridge_card(piece);
        REQUIRE(card.screws.size() == 2);
        CHECK(card.screws[0].at == card.screws[1].at);
        CHECK(card.screw_places == "4 in and 1 ft");
        // The first piece's end is folded down past the gable: 2 in for seams of 1 1/2 in.
        const Length begins = piece == 1 ? along_edge - inches(2) : along_edge;
        for (const Length screw : card.screws[0].at) {
            const auto past = (begins + screw).nm() % inches(16).nm();
            CHECK((past == inches(4).nm() || past == inches(12).nm()));
        }
        along_edge += card.covers;
    }
    CHECK(along_edge == feet(40));
}

TEST_CASE("a hip's legs are screwed each by its own roof's pans along it") {
    // 8/12 and 10/12: seams 28.875 and 23.100 in apart along the hip (computed).
    const Practice practice;
    const Closures closures = closures_of(hip_between(8, 10), feet(20), practice);
    CHECK(pan_places(closures.sides[0], practice).first == sixteenths(116));   // 7.219
    CHECK(pan_places(closures.sides[0], practice).second == sixteenths(346));  // 21.656
    CHECK(pan_places(closures.sides[1], practice).first == sixteenths(92));    // 5.775
    CHECK(seam_places(hip_between(8, 10), TrimRole::main, feet(20), practice) ==
          "7 1/4 in and 1 ft 9 5/8 in on the 8/12 roof, 5 3/4 in and 1 ft 5 3/8 in on the 10/12 "
          "roof");
}

TEST_CASE("no screw in a closure stands on a seam, whatever kind, ends, hand and pitch" *
          doctest::test_suite("long")) {
    std::int64_t screws = 0;
    const auto refused = for_every_card([&](const CardInHand& at) {
        if (at.card.screwed_to == ScrewedTo::deck) {
            return;
        }
        CAPTURE(at.name());
        const Length edge = covered_by(at.run);
        const Closures closures = closures_of(at.edge, edge, at.job.practice);
        REQUIRE(at.card.screws.size() == closures.sides.size());
        const Length begins = begins_of(at);
        const bool turned = at.card.edge_left == Side::right;
        for (std::size_t i = 0; i < closures.sides.size(); ++i) {
            const ClosureSide& side = closures.sides[i];
            if (side.count == 0) {
                continue;
            }
            const double clear = std::min(1.0, static_cast<double>(side.apart.nm()) / 4 / 25.4e6);
            for (const Length screw : at.card.screws[i].at) {
                const Length along = begins + (turned ? at.card.cut - screw : screw);
                CHECK(inches_from_seam(along, side, edge) >= clear - 1.0 / 16);
                ++screws;
            }
        }
    });
    CHECK(refused.empty());
    CHECK(screws > 10'000);
}

TEST_CASE("each whole pan of a long cap gets its two screws but where a lap takes one") {
    std::map<std::int64_t, int> on_pan;
    Length along_edge;
    for (int piece = 1; piece <= 5; ++piece) {
        const Card card = ridge_card(piece);
        const Length begins = piece == 1 ? along_edge - inches(2) : along_edge;
        for (const Length screw : card.screws[0].at) {
            ++on_pan[(begins + screw).nm() / inches(16).nm()];
        }
        along_edge += card.covers;
    }
    CHECK(on_pan.size() == 30);
    int short_of_two = 0;
    for (const auto& [pan, count] : on_pan) {
        CHECK(count >= 1);
        CHECK(count <= 2);
        short_of_two += count < 2 ? 1 : 0;
    }
    CHECK(short_of_two <= 4);  // as many as laps
}

TEST_CASE("a piece in which no pan's place lies is screwed once, off the seams") {
    const Practice practice;
    const Closures closures = closures_of(hip_between(6, 6), feet(20), practice);
    const ClosureSide& side = closures.sides[0];  // 24 in apart: places 6 and 18
    const auto screws =
        pan_screws(side, feet(20), inches(24) + inches(7), {inches(1), inches(9)}, practice);
    REQUIRE(screws.size() == 1);
    CHECK(screws[0] == inches(5));
    // Over a seam: in the wider part, clear of it.
    const auto over = pan_screws(side, feet(20), inches(19), {Length(), inches(8)}, practice);
    REQUIRE(over.size() == 1);
    CHECK(over[0] <= inches(4));
    CHECK(pan_screws(side, feet(20), Length(), {inches(3), inches(3)}, practice).empty());
}

// Trim face − cleat face − 1/16 in (computed): 1 7/16, 2 7/16 and 2 15/16 in.
TEST_CASE("the cleat line lies below the bend by what the faces of trim and cleat differ") {
    const Catalogue catalogue = own_catalogue();
    const Practice practice;
    const Trim& cleat = *catalogue.find("cleat");
    CHECK(cleat_line(*catalogue.find("eave_rolled"), cleat, practice) == sixteenths(23));
    CHECK(cleat_line(*catalogue.find("eave_two_part"), cleat, practice) == sixteenths(39));
    CHECK(cleat_line(*catalogue.find("gable"), cleat, practice) == sixteenths(47));
    // Over the panels the bend stands as high as the seams: from the deck it is less.
    CHECK(cleat_line(*catalogue.find("gable_channel"), cleat, practice) == sixteenths(47 - 24));
    Trim low = *catalogue.find("eave_rolled");
    low.legs[1].width = inches(2);
    CHECK(!cleat_line(low, cleat, practice));
}
