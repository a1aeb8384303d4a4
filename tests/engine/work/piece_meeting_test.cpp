// What a piece's end meets, on a 40 × 24 ft house of four eaves walked with the building on the
// left: A runs along x, and B, the next one, away from it along y, over the building.
#include "engine/work/piece_meeting.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "eave_job.h"
#include "tests/engine/trim/sections.h"

using namespace hemline_test;

namespace {

constexpr Length reach = inches(8);

double mm(Length length) { return static_cast<double>(length.nm()) / 1e6; }

struct House {
    Job job;
    Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    Sections sections = sections_of_assets();
    Plan plan;
    std::optional<RoofOutline> roof;

    explicit House(Side first = Side::left, std::size_t read = 4) {
        std::size_t n = 0;
        for (const char* id : {"A", "B", "C", "D"}) {
            const Edge edge = eave(id, End::corner_out, End::corner_out, first);
            job.edges.push_back(read_twice(edge, feet(n % 2 == 0 ? 40 : 24)));
            if (n++ >= read) {
                job.edges.back().readings.clear();
            }
        }
        plan = make_plan(job, catalogue);
        roof = outline_of(job);
        REQUIRE(roof);
    }
    [[nodiscard]] int pieces(const char* edge) const {
        const Run* const run = find_run(plan, edge, TrimRole::main);
        REQUIRE(run != nullptr);
        return static_cast<int>(run->pieces.size());
    }
    [[nodiscard]] Card card(const char* edge, int piece) const {
        const auto made = make_card(job, plan, catalogue, edge, TrimRole::main, piece);
        REQUIRE(made.ok());
        return *made;
    }
    [[nodiscard]] Result<ShownMeeting> at(const Card& card, Side side) const {
        return piece_meeting({job, plan, catalogue, sections, &*roof}, card, side, reach);
    }
};

/// The place farthest along one of the axes, and the one least far.
double most(const std::vector<Facet>& facets, double Space::*axis) {
    double found = facets.at(0).corners.at(0).*axis;
    for (const Facet& facet : facets) {
        for (const Space& corner : facet.corners) {
            found = std::max(found, corner.*axis);
        }
    }
    return found;
}
double least(const std::vector<Facet>& facets, double Space::*axis) {
    double found = facets.at(0).corners.at(0).*axis;
    for (const Facet& facet : facets) {
        for (const Space& corner : facet.corners) {
            found = std::min(found, corner.*axis);
        }
    }
    return found;
}

std::string name_of(const Result<ShownMeeting>& meeting) {
    return meeting ? meeting->other_name.english() : meeting.problem().what.english();
}

}  // namespace

TEST_CASE(
    "Round a corner the next eave on the walk comes to the right end, the one before to the left") {
    const House house;
    CHECK(house.pieces("A") == 5);  // 40 ft and a tab from sticks of 10 ft that lap
    CHECK(house.pieces("B") == 3);
    // Fitted from the left: the first piece lies at the left corner, the last at the right one.
    CHECK(name_of(house.at(house.card("A", 5), Side::right)) == "piece 1 of eave B");
    CHECK(name_of(house.at(house.card("A", 1), Side::left)) == "piece 3 of eave D");
    CHECK(name_of(house.at(house.card("D", 3), Side::right)) == "piece 1 of eave A");
    const House other_way(Side::right);
    CHECK(name_of(other_way.at(other_way.card("A", 1), Side::right)) == "piece 3 of eave B");
    CHECK(name_of(other_way.at(other_way.card("A", 5), Side::left)) == "piece 1 of eave D");
}

TEST_CASE("The eave round a square corner runs over the building, from its tab to the reach") {
    const House house;
    const Card card = house.card("A", 5);
    const auto meeting = house.at(card, Side::right);
    REQUIRE(meeting.ok());
    CHECK(meeting->faults.empty());
    const Length tab = house.job.practice.tab_corner_out;
    const double corner = mm(card.cut);  // no tab here: the side fitted first has it
    CHECK(least(meeting->own, &Space::x) == doctest::Approx(corner - mm(reach)));
    // 8 in of B are shown, the first inch of them its tab, behind A's face.
    CHECK(most(meeting->other, &Space::y) == doctest::Approx(mm(reach - tab)));
    // B's flange lies up the roof from its corner: back over A's, and A's metal ends at the corner.
    CHECK(least(meeting->other, &Space::x) < corner - 80);
    CHECK(most(meeting->own, &Space::x) == doctest::Approx(corner));
}

TEST_CASE("Seen from its own first piece, the eave round the corner lies along it, tab and all") {
    const House house;
    const Card card = house.card("A", 1), last = house.card("D", 3);
    const auto meeting = house.at(card, Side::left);
    REQUIRE(meeting.ok());
    CHECK(meeting->faults.empty());
    CHECK(least(meeting->other, &Space::x) == doctest::Approx(mm(last.cut - reach)));
    CHECK(most(meeting->own, &Space::y) ==
          doctest::Approx(mm(reach - house.job.practice.tab_corner_out)));
}

TEST_CASE("In a lap the next piece begins a lap before this one ends, fitted from either side") {
    for (const Side first : {Side::left, Side::right}) {
        const House house(first);
        const Card one = house.card("A", 1), two = house.card("A", 2);
        const Side ahead = first == Side::left ? Side::right : Side::left;
        const auto meeting = house.at(one, ahead), back = house.at(two, first);
        REQUIRE((meeting.ok() && back.ok()));
        CHECK(name_of(meeting) == "piece 2 of eave A");
        CHECK(name_of(back) == "piece 1 of eave A");
        CHECK(meeting->faults.empty());
        // The left one of the two lies from 0; the right one begins a lap before its end.
        const Card& left = first == Side::left ? one : two;
        const auto& right = first == Side::left ? meeting->other : meeting->own;
        CHECK(one.lap > Length());
        CHECK(least(right, &Space::x) == doctest::Approx(mm(left.cut - one.lap)));
    }
}

TEST_CASE("An end that meets nothing, or nothing that is read or recorded, says so") {
    const House house(Side::left, 1);
    const auto unread = house.at(house.card("A", 5), Side::right);
    REQUIRE_FALSE(unread.ok());
    CHECK(unread.problem().what.english().find("B is not read yet") != std::string::npos);
    const MeetingOf no_walk{house.job, house.plan, house.catalogue, house.sections, nullptr};
    const auto unknown = piece_meeting(no_walk, house.card("A", 5), Side::right, reach);
    REQUIRE_FALSE(unknown.ok());
    CHECK(unknown.problem().what.english().find("not recorded") != std::string::npos);
    Card square = house.card("A", 5);
    square.right = EndWork::square;
    const auto alone = house.at(square, Side::right);
    REQUIRE_FALSE(alone.ok());
    CHECK(alone.problem().what.english().find("meets no other piece") != std::string::npos);
}
