// What is left to lay after something went wrong, by hand.
#include "engine/panels/relaid.h"

#include <doctest/doctest.h>

#include <map>
#include <random>

#include "engine/panels/most_weight_matching.h"
#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

struct Planned {
    PlaneAsked asked;
    PanelLayout planned;
};

Planned planned(const DeckPlane& plane, const PanelJob& job = {},
                const std::vector<Penetration>& through = {}) {
    return {{plane, job, through}, laid(plane, job, through)};
}

Relaid again(const Planned& plane, const LaidSoFar& so_far) {
    const Result<Relaid> result = relaid(plane.asked, plane.planned, so_far);
    REQUIRE(result.ok());
    return *result;
}

std::vector<int> up_to(int last, int first = 1) {
    std::vector<int> pans;
    for (int pan = first; pan <= last; ++pan) {
        pans.push_back(pan);
    }
    return pans;
}

Length at(double inches) { return in_feet(inches / 12); }

std::optional<std::pair<int, int>> from_for(const Relaid& relaid, int pan) {
    for (const PanFrom& one : relaid.to_lay) {
        if (one.pan == std::pair(pan, 0)) {
            return one.from;
        }
    }
    FAIL("it lies already");
    return {};
}

}  // namespace

TEST_CASE("Nothing went wrong: all that does not lie is laid as it was planned") {
    const Planned plane = planned(said_plane(gable_roof(480, 30)));
    const Relaid relaid = again(plane, {up_to(5), {}, {}});
    CHECK(relaid.to_lay.size() == 25);
    CHECK(relaid.to_order.empty());
    CHECK(relaid.left_over.empty());
    CHECK(relaid.layout.doubts.empty());
    for (const PanFrom& one : relaid.to_lay) {
        CHECK(one.from == one.pan);
    }
}

TEST_CASE("A seam 1/8 in too far: those beyond go on from it, the end pan takes the difference") {
    const Planned plane = planned(said_plane(gable_roof(480, 30)));
    const Relaid relaid = again(plane, {up_to(5), {{5, at(80.125)}}, {}});
    REQUIRE(relaid.layout.seams.size() == 29);
    CHECK(relaid.layout.seams[3].at == inches(64));
    CHECK(relaid.layout.seams[4].at == at(80.125));
    CHECK(relaid.layout.seams[28].at == at(464.125));
    CHECK(relaid.layout.pans[4].width == at(16.125));
    CHECK(relaid.layout.pans[29].width == at(15.625));
    CHECK(relaid.to_order.empty());
}

TEST_CASE("A seam 1/2 in short: the end pan would be wider than the module, so there is one more") {
    const Planned plane = planned(said_plane(gable_roof(480, 30)));
    const Relaid relaid = again(plane, {up_to(5), {{5, at(79.5)}}, {}});
    // The last seam lies at 463 1/2, another at 479 1/2: 1/4 in is left to the turn-up at 479 3/4.
    REQUIRE(relaid.layout.pans.size() == 31);
    CHECK(relaid.layout.pans[30].width == at(0.25));
    CHECK(relaid.to_order == std::vector<Length>{at(203.75)});
    CHECK_FALSE(from_for(relaid, 31).has_value());
    CHECK(relaid.layout.doubts.front().problem.what.english() ==
          "Pan 31 is 1/4 in wide: too narrow to form.");
}

TEST_CASE("Laid from the right, seams go on to the left") {
    const Planned plane = planned(said_plane(gable_roof(480, 30)));
    const Relaid relaid = again(plane, {up_to(30, 29), {{29, at(463.875)}}, {}});
    CHECK(relaid.layout.seams[28].at == at(463.875));
    CHECK(relaid.layout.seams[0].at == at(15.875));
    CHECK(relaid.layout.pans[0].width == at(15.625));
    CHECK(relaid.to_lay.size() == 28);
    CHECK(relaid.to_order.empty());
    // A pan more comes at the left: the others keep what they were ordered for.
    const Relaid more = again(plane, {up_to(30, 29), {{29, at(464.5)}}, {}});
    REQUIRE(more.layout.pans.size() == 31);
    CHECK(more.layout.pans[0].width == at(0.25));
    CHECK(more.to_lay.size() == 29);
    CHECK(more.to_order.size() == 1);
    CHECK(from_for(more, 29) == std::pair(28, 0));
}

TEST_CASE("A pipe that the seams now come near to is said") {
    // Seams on 16 i; the pipe at 232 keeps 5 3/4 in off: 2 1/4 in to spare on either side.
    const DeckPlane deck = said_plane(gable_roof(480, 30));
    const std::vector<Penetration> pipe = {
        {Penetration::Kind::pipe, inches(232), inches(60), inches(9)}};
    const Planned plane = planned(deck, {}, pipe);
    CHECK(again(plane, {up_to(5), {{5, at(80.25)}}, {}}).layout.doubts.empty());
    const Relaid relaid = again(plane, {up_to(5), {{5, at(83)}}, {}});
    CHECK(relaid.layout.doubts.front().problem.what.english() ==
          "A seam lies 5 in from the pipe at 19 ft 4 in; 5 3/4 in is asked.");
}

TEST_CASE("A spoiled pan is ordered; one cut short goes where a shorter one is asked, or is lost") {
    // Hip roof: pan 8 to order 146 in, pan 9 163 3/4, pan 10 163 1/2.
    const Planned plane = planned(said_plane(hip_roof(480, 24)));
    CHECK(plane.planned.pans[7].length == at(146));
    const Relaid spoiled = again(plane, {up_to(3), {}, {{{9, 0}, {}}}});
    CHECK(spoiled.to_order == std::vector<Length>{at(163.75)});
    CHECK_FALSE(from_for(spoiled, 9).has_value());
    CHECK(spoiled.left_over.empty());
    // Every shorter place has its own pan: what is left of pan 10 is lost.
    const Relaid lost = again(plane, {up_to(3), {}, {{{10, 0}, at(150)}}});
    CHECK(lost.to_order == std::vector<Length>{at(163.5)});
    CHECK(lost.left_over == std::vector<std::pair<int, int>>{{10, 0}});
    // With pan 8 spoiled it serves there.
    const Relaid serves = again(plane, {up_to(3), {}, {{{10, 0}, at(150)}, {{8, 0}, {}}}});
    CHECK(serves.to_order == std::vector<Length>{at(163.5)});
    CHECK(from_for(serves, 8) == std::pair(10, 0));
    CHECK(serves.left_over.empty());
    // Pan 9, the longest by 1/4 in, spoiled: a full pan is 1/4 in short, and not taken.
    CHECK(from_for(spoiled, 10) == std::pair(10, 0));
}

TEST_CASE("What the plane has not is refused") {
    const Planned plane = planned(said_plane(gable_roof(480, 30)));
    for (const LaidSoFar& wrong :
         {LaidSoFar{{31}, {}, {}}, LaidSoFar{{}, {{30, at(470)}}, {}},
          LaidSoFar{{}, {}, {{{4, 1}, {}}}}, LaidSoFar{up_to(5), {{5, at(60)}}, {}}}) {
        CHECK_FALSE(relaid(plane.asked, plane.planned, wrong).ok());
    }
}

TEST_CASE("What is ordered anew is as short as it can be, on 300 spoilings by chance") {
    // A matching of most weight between places and pans says what need not be ordered.
    std::mt19937 random(7);
    const Planned plane = planned(said_plane(hip_roof(300, 20)));
    int orders = 0;
    for (int i = 0; i < 300; ++i) {
        LaidSoFar so_far{up_to(static_cast<int>(within(random, 0, 4))), {}, {}};
        for (const LaidPan& pan : plane.planned.pans) {
            if (random() % 3 == 0) {
                so_far.spoiled.push_back({pan.name(), {}});
                if (random() % 3 > 0) {
                    so_far.spoiled.back().left =
                        sixteenths(within(random, 0, pan.length.nm() / sixteenths(1).nm()));
                }
            }
        }
        const Relaid relaid = again(plane, so_far);
        std::vector<Match> matches;
        std::vector<Length> places, lengths;
        for (const LaidPan& pan : plane.planned.pans) {
            Length length = pan.length;
            for (const SpoiledPan& spoiled : so_far.spoiled) {
                length = spoiled.pan == pan.name() ? spoiled.left.value_or(Length()) : length;
            }
            const bool lies = pan.number <= static_cast<int>(so_far.lying.size());
            places.push_back(lies ? Length() : pan.exact);
            lengths.push_back(lies ? Length() : length);
        }
        Length all;
        for (std::size_t place = 0; place < places.size(); ++place) {
            all += places[place] > Length() ? plane.planned.pans[place].length : Length();
            for (std::size_t pan = 0; pan < lengths.size(); ++pan) {
                if (places[place] > Length() && lengths[pan] >= places[place]) {
                    matches.push_back(
                        {place, places.size() + pan, plane.planned.pans[place].length.nm()});
                }
            }
        }
        const auto mates = most_weight_matching(places.size() * 2, matches);
        for (std::size_t place = 0; place < places.size(); ++place) {
            all -= mates[place] ? plane.planned.pans[place].length : Length();
        }
        Length ordered;
        for (const Length length : relaid.to_order) {
            ordered += length;
        }
        CHECK(ordered == all);
        orders += ordered > Length() ? 1 : 0;
        // Each pan serves once.
        std::map<std::pair<int, int>, int> times;
        for (const PanFrom& one : relaid.to_lay) {
            if (one.from) {
                CHECK(++times[*one.from] == 1);
            }
        }
    }
    CHECK(orders > 200);
}
