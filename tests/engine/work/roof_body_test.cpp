// A job's roof, worked out from its walk: what each edge should measure, which edges the job lacks,
// and what explains a reading that the roof does not bear out. Lengths by hand: a square hip's
// ridge is length less width, its hips are 18.00 in to a foot of run at 6 in 12 (framing square).
#include "engine/work/roof_body.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/engine/assets.h"

namespace hemline {
namespace {

Catalogue catalogue() { return Catalogue::read(asset("catalogue/trims.csv")).value(); }

SideWalked side_of(const char* id, SideKind kind, std::optional<Length> length,
                   Angle corner = degrees(90)) {
    SideWalked side;
    side.id = id;
    side.kind = kind;
    side.length = length;
    side.corner = corner;
    return side;
}

/// 40 ft by 24 ft, all eaves; the two lengths that close it are not said.
WalkedBody hip_walk() {
    return {"1",
            {},
            {side_of("A", SideKind::eave, feet(40)), side_of("B", SideKind::eave, feet(24)),
             side_of("C", SideKind::eave, {}), side_of("D", SideKind::eave, {})},
            true,
            {}};
}

struct Told {
    std::vector<Event> events;
    Job job;

    void tell(const Fact& fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {1'000, number}, "Ada", {}, fact});
        job = replay(events);
    }
    void tell(const std::vector<Fact>& facts) {
        for (const Fact& fact : facts) {
            tell(fact);
        }
    }
    [[nodiscard]] BodyOnJob roof() const { return roof_bodies(job).front(); }
};

Told hip_job() {
    Told told;
    told.tell(facts_of_walk(Job(), hip_walk(), rise_in_12(6), catalogue()));
    return told;
}

std::vector<std::string> ids_of(const Job& job) {
    std::vector<std::string> ids;
    for (const EdgeWork& work : job.edges) {
        ids.push_back(work.edge.id);
    }
    return ids;
}

TEST_CASE("A walk gives the job every edge of the roof, named along the walk and by its foot") {
    const Told told = hip_job();
    CHECK(ids_of(told.job) ==
          std::vector<std::string>{"A", "B", "C", "D", "E", "F", "G", "H", "J"});
    CHECK(told.job.find("E")->edge.kind == EdgeKind::hip);
    CHECK(told.job.find("J")->edge.kind == EdgeKind::ridge);
    CHECK(told.job.find("A")->edge.left == End::corner_out);
    for (const EdgeWork& work : told.job.edges) {
        CAPTURE(work.edge.id);
        CHECK(work.edge.pitch == rise_in_12(6));  // said once
        CHECK(work.readings.empty());
    }
    CHECK(told.job.find("J")->edge.pitch2 == rise_in_12(6));
    CHECK(told.job.find("E")->edge.corner_left == degrees(90));
}

TEST_CASE("Every edge has the length the roof says, and the job lacks none") {
    const Told told = hip_job();
    const BodyOnJob roof = told.roof();
    REQUIRE(roof.worked);
    CHECK_FALSE(roof.problem);
    CHECK(roof.without_place.empty());
    CHECK(lacking_edges(told.job, roof, catalogue()).empty());
    const auto ridge = expected_of(roof_bodies(told.job), "J");
    REQUIRE(ridge);
    CHECK(absolute(ridge->length - feet(16)) < sixteenths(1));
    const auto hip = expected_of(roof_bodies(told.job), "E");
    REQUIRE(hip);
    CHECK(absolute(hip->length - inches(12 * 18)) < sixteenths(1));
    CHECK(hip->off > Length());
    CHECK_FALSE(expected_of(roof_bodies(told.job), "Z"));
}

TEST_CASE("Readings of sides go before what the walk said, and a reading that cannot be is named") {
    Told told = hip_job();
    for (const char* edge : {"B", "D"}) {
        told.tell(ReadingTaken{edge, ReadingOf::edge, feet(25)});
    }
    BodyOnJob roof = told.roof();
    REQUIRE(roof.worked);
    CHECK_FALSE(roof.problem);
    CHECK(absolute(expected_of(roof_bodies(told.job), "J")->length - feet(15)) < sixteenths(1));
    told.tell(ReadingTaken{"D", ReadingOf::edge, feet(35)});
    roof = told.roof();
    REQUIRE(roof.problem);
    CHECK(roof.problem->what.english().find("misses by 10 ft") != std::string::npos);
    REQUIRE(roof.worked);  // as the walk said
    CHECK(absolute(expected_of(roof_bodies(told.job), "J")->length - feet(16)) < sixteenths(1));
}

TEST_CASE("An edge taken off is lacking and keeps its place; one that the roof has not is named") {
    Told told = hip_job();
    const PlaceOnBody place = *told.job.find("J")->place;
    CHECK(place == PlaceOnBody{"1", "A", "C", 0});
    told.tell(EdgeTakenOff{"J"});
    const std::vector<Fact> lacking = lacking_edges(told.job, told.roof(), catalogue());
    REQUIRE(lacking.size() == 2);
    CHECK(std::get<EdgeAdded>(lacking[0]).edge.id == "J");
    CHECK(std::get<EdgePlaced>(lacking[1]).at == place);
    told.tell(EdgePlaced{"E", {"1", "A", "C", 5}});
    CHECK(told.roof().without_place == std::vector<std::string>{"E"});
}

TEST_CASE("A gable's end is one side with a slope for each plane; the first has its name") {
    WalkedBody walk = hip_walk();
    walk.sides[1].kind = walk.sides[3].kind = SideKind::gable;
    Told told;
    told.tell(facts_of_walk(Job(), walk, rise_in_12(6), catalogue()));
    CHECK(told.job.find("B")->edge.kind == EdgeKind::gable);
    CHECK(told.job.find("B")->edge.trim == "gable_channel");
    CHECK(told.job.find("A")->edge.trim.empty());
    CHECK(told.job.edges.size() == 7);
    const auto& gable = told.job.bodies[0].sides[1];
    CHECK(gable.edges.size() == 2);
    CHECK(gable.edges.front() == "B");
    CHECK(lacking_edges(told.job, told.roof(), catalogue()).empty());
    // 12 ft of run at 13.42 in to the foot (framing square).
    CHECK(absolute(expected_of(roof_bodies(told.job), "B")->length -
                   sixteenths(12 * 16 * 1342 / 100)) < sixteenths(2));
    CHECK(told.job.find("B")->edge.pitch == rise_in_12(6));
}

TEST_CASE("An open walk is no fault: it is drawn as walked and nothing is said against it") {
    Told told;
    WalkedBody walk = hip_walk();
    walk.closed = false;
    walk.sides.resize(2);
    told.tell(BodyWalked{"1", walk.sides, false, {}});
    const BodyOnJob roof = told.roof();
    CHECK_FALSE(roof.problem);
    CHECK_FALSE(roof.worked);
    REQUIRE(roof.corners.size() == 3);
    CHECK(roof.corners[2].y == doctest::Approx(static_cast<double>(feet(24).nm())));
}

TEST_CASE("Rows that nobody walked are one body by a single wish, and keep their names") {
    Told told;
    const auto add = [&](const char* id, EdgeKind kind, End left, End right) {
        Edge edge;
        edge.id = id;
        edge.kind = kind;
        edge.left = left;
        edge.right = right;
        edge.pitch = rise_in_12(6);
        told.tell(EdgeAdded{edge});
        if (kind == EdgeKind::eave) {
            told.tell(ReadingTaken{id, ReadingOf::edge, feet(30)});
        }
    };
    add("A", EdgeKind::eave, End::gable, End::gable);
    CHECK_FALSE(body_of_rows(told.job));
    add("G", EdgeKind::gable, End::eave, End::ridge);
    add("G2", EdgeKind::gable, End::eave, End::ridge);
    add("C", EdgeKind::eave, End::gable, End::gable);
    add("K", EdgeKind::gable, End::eave, End::ridge);
    add("K2", EdgeKind::gable, End::eave, End::ridge);
    const auto rows = body_of_rows(told.job);
    REQUIRE(rows);
    REQUIRE(rows->sides.size() == 4);
    CHECK(rows->sides[1].edges == std::vector<std::string>{"G", "G2"});
    CHECK(rows->sides[1].kind == SideKind::gable);
    told.tell(facts_of_walk(told.job, *rows, {}, catalogue()));
    CHECK(told.job.bodies.size() == 1);
}

TEST_CASE("A reading outside what the roof says is questioned, with what would explain it") {
    const ExpectedLength expected{feet(17) + inches(5) + sixteenths(4), inches(1)};
    const Tape tape = Job().practice.tape;
    const auto says = [&](Length reading) { return roof_doubt(reading, expected, tape).english(); };
    CHECK(says(expected.length).empty());
    CHECK(says(expected.length + inches(1)).empty());
    CHECK_FALSE(says(expected.length + inches(2)).empty());
    CHECK(says(expected.length + feet(10)) ==
          "The roof says 17 ft 5 1/4 in, within 1 1/8 in: this is 10 ft more. Likely ten feet were "
          "misread.");
    CHECK(says(expected.length + feet(1)).find("a foot was misread") != std::string::npos);
    CHECK(says(expected.length - feet(1)).find("1 ft less") != std::string::npos);
    CHECK(says(feet(71) + inches(5)).find("digits of the feet are swapped") != std::string::npos);
    const ExpectedLength sharp{feet(17), sixteenths(2)};
    CHECK(roof_doubt(feet(17) + inches(1), sharp, tape).english().find("burnt inch") !=
          std::string::npos);
}

TEST_CASE("Letters skip I and O, and go on with AA") {
    CHECK(edge_letters(0) == "A");
    CHECK(edge_letters(8) == "J");
    CHECK(edge_letters(13) == "P");
    CHECK(edge_letters(23) == "Z");
    CHECK(edge_letters(24) == "AA");
}

// A square hip at 7 in 12 is √(2 + (7/12)²) = 1.52981 of its run of 12 ft: 18 ft 4 5/16 in.
TEST_CASE(
    "Hips that agree on another pitch than the one said name it; a single one teaches nothing") {
    Told told = hip_job();
    int read = 0;
    for (const EdgeWork& work : std::vector<EdgeWork>(told.job.edges)) {
        if (work.edge.kind != EdgeKind::hip) {
            continue;
        }
        for (int i = 0; i < 2; ++i) {
            told.tell(
                ReadingTaken{work.edge.id, ReadingOf::edge, feet(18) + inches(4) + sixteenths(5)});
        }
        ++read;
        CAPTURE(read);
        CHECK(told.roof().lesson.english().empty() == (read == 1));
    }
    CHECK(read == 4);
    // A wider house has such hips too, and a shorter ridge.
    CHECK(told.roof().lesson.english().find("side B 24 ft 5 3/4 in long") != std::string::npos);
    for (const EdgeWork& work : std::vector<EdgeWork>(told.job.edges)) {
        for (int i = 0; i < 2 && work.edge.kind == EdgeKind::ridge; ++i) {
            told.tell(ReadingTaken{work.edge.id, ReadingOf::edge, feet(16)});
        }
    }
    CHECK(told.roof().lesson.english() ==
          "E, F, G, H, J agree on a pitch of 7/12, not 6/12. Read that again.");
}

// Past bug: the pitch was said as that of the roof below, and the body above had none.
TEST_CASE("A roof that begins at a transition has the pitch that was said for it") {
    Told told;
    const WalkedBody walk = {
        "1",
        {},
        {side_of("A", SideKind::transition, feet(20)), side_of("B", SideKind::gable, feet(8)),
         side_of("C", SideKind::high_eave, {}), side_of("D", SideKind::gable, {})},
        true,
        {}};
    told.tell(facts_of_walk(Job(), walk, rise_in_12(6), catalogue()));
    REQUIRE(told.roof().worked);
    REQUIRE(told.job.find("A") != nullptr);
    CHECK(told.job.find("A")->edge.kind == EdgeKind::transition);
    CHECK(told.job.find("A")->edge.pitch2 == rise_in_12(6));
    CHECK_FALSE(told.job.find("A")->edge.pitch);  // the lower roof's is read
    // 8 ft of run at 13.42 in to the foot (framing square).
    for (const EdgeOnBody& edge : told.roof().edges) {
        if (edge.worked.kind == EdgeKind::gable) {
            CHECK(absolute(edge.expected - sixteenths(1717)) <= sixteenths(2));
        }
    }
}

}  // namespace
}  // namespace hemline
