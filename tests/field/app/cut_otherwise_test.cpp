// A piece cut to another length, and metal spoiled: the rest is planned again around it.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

const Length half_inch = sixteenths(8);

const Run& run_of(const Journey& crew, TrimRole role = TrimRole::main) {
    const Run* const run = find_run(crew.state().plan, "A", role);
    REQUIRE(run != nullptr);
    return *run;
}

Length covered(const Run& run) {
    Length sum;
    for (const PlannedPiece& piece : run.pieces) {
        sum += piece.covers;
    }
    return sum;
}

std::vector<Length> cuts(const Run& run) {
    std::vector<Length> lengths;
    for (const PlannedPiece& piece : run.pieces) {
        lengths.push_back(piece.cut);
    }
    return lengths;
}

/// New sticks of the eave's main trim that are still to be opened.
std::int64_t sticks_to_open(const Journey& crew) {
    std::int64_t sticks = 0;
    for (const Proof& proof : crew.state().plan.proofs) {
        sticks += proof.trim == run_of(crew).trim ? proof.sticks : 0;
    }
    return sticks;
}

/// Edge A read, and the card of a main piece before the crew.
struct AtCard : Journey {
    explicit AtCard(int piece) {
        tap("demo");
        read_edge("A", eave_a_length, eave_a_length, "5");
        reach_card("A", TrimRole::main, piece);
    }
};

}  // namespace

// By hand (see eave_to_the_tick_test): 112 1/8, 120, 120, 120 and 105 1/8 in.
TEST_CASE("A piece cut half an inch short leaves that half to the last piece") {
    AtCard crew(2);
    const std::int64_t opened = crew.state().job.sticks_opened;
    const std::int64_t sticks = sticks_to_open(crew);
    const std::size_t offcuts = crew.state().job.offcuts.size();
    crew.tap("differently");
    CHECK(crew.where().screen == Screen::differently);
    crew.key_in(feet(10) - half_inch);
    crew.tap("keep");

    CHECK(crew.last<PieceCut>().cut == feet(10) - half_inch);
    const Run& run = run_of(crew);
    CHECK(covered(run) == eave_a_length);
    CHECK(cuts(run) == std::vector<Length>{inches(112) + sixteenths(2), feet(10) - half_inch,
                                           feet(10), feet(10), inches(105) + sixteenths(10)});
    CHECK(run.pieces[1].is_cut);
    CHECK(run.pieces[1].covers == inches(114) - half_inch);
    CHECK(run.pieces[2].begins == run.pieces[1].begins + run.pieces[1].covers);
    CHECK(crew.state().job.sticks_opened == opened + 1);
    CHECK(sticks_to_open(crew) == sticks - 1);
    REQUIRE(crew.state().job.offcuts.size() == offcuts + 1);
    CHECK(crew.state().job.offcuts.back().length == half_inch);

    crew.reach_card("A", TrimRole::main, 3);
    const auto next = card_in_hand(crew.state(), crew.where());
    REQUIRE(next.ok());
    CHECK(next->cut == feet(10));
    CHECK(next->covers == inches(114));
    crew.finish_edge("A");
    CHECK(run_of(crew).pieces.back().cut == inches(105) + sixteenths(10));
}

TEST_CASE("A piece cut half an inch long takes that half from the last piece") {
    AtCard crew(1);
    crew.tap_all({"differently", "as planned", "field 16ths"});
    crew.tap("sixteenths 10");  // 112 1/8 in becomes 112 5/8
    crew.tap("keep");
    CHECK(crew.last<PieceCut>().cut == inches(112) + sixteenths(10));
    CHECK(covered(run_of(crew)) == eave_a_length);
    CHECK(run_of(crew).pieces.back().cut == inches(104) + sixteenths(10));
}

TEST_CASE("A cut longer than the metal that lies there is not taken") {
    AtCard crew(1);
    crew.tap("differently");
    crew.key_in(feet(10) + sixteenths(1));
    CHECK_FALSE(crew.screen->has_target("keep"));
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::card);
    CHECK(crew.where().piece == 1);
}

TEST_CASE("A whole piece spoiled costs a stick and is cut again from a new one") {
    AtCard crew(1);
    const std::vector<Length> planned = cuts(run_of(crew));
    const std::int64_t opened = crew.state().job.sticks_opened;
    const std::int64_t sticks = sticks_to_open(crew);
    crew.tap_all({"spoiled", "as planned", "keep"});

    CHECK(crew.last<PieceSpoiled>().lost == planned[0]);
    CHECK(crew.work("A").spoiled == 1);
    CHECK(crew.state().job.sticks_opened == opened + 1);
    CHECK(sticks_to_open(crew) == sticks);
    CHECK(cuts(run_of(crew)) == planned);
    CHECK(crew.where().screen == Screen::card);  // the same card, from new metal
    CHECK(crew.where().piece == 1);
    const auto card = card_in_hand(crew.state(), crew.where());
    REQUIRE(card.ok());
    CHECK(card->cut == planned[0]);
    CHECK_FALSE(card->offcut);
    crew.finish_edge("A");
}

TEST_CASE("What is left of a spoiled stick is kept and used where it is long enough") {
    AtCard crew(5);  // the last: 105 1/8 in
    const std::int64_t sticks = sticks_to_open(crew);
    crew.tap("spoiled");
    crew.key_in(inches(6));
    crew.tap("keep");
    // 114 in of that stick are left, and the piece fits.
    CHECK(sticks_to_open(crew) == sticks - 1);
    CHECK(crew.where().screen == Screen::card);
    CHECK(crew.where().piece == 5);
    const auto card = card_in_hand(crew.state(), crew.where());
    REQUIRE(card.ok());
    REQUIRE(card->offcut.has_value());
    CHECK(card->stick_length == inches(114));
    crew.tap("cut");
    CHECK(crew.last<PieceCut>().metal.offcut == card->offcut);
    CHECK(covered(run_of(crew)) == eave_a_length);
    crew.finish_edge("A");
}

TEST_CASE("A cut that is undone is to be cut again") {
    AtCard crew(1);
    const std::int64_t opened = crew.state().job.sticks_opened;
    crew.tap("cut");
    CHECK(run_of(crew).pieces[0].is_cut);
    crew.tap_all({"leave", "history", "undo", "leave", "edge A"});
    CHECK_FALSE(run_of(crew).pieces[0].is_cut);
    CHECK(crew.state().job.sticks_opened == opened);
    CHECK(crew.where().screen == Screen::card);
    CHECK(crew.where().piece == 1);
}
