// Both units: what is shown on the job's tape is shown on the other tape too. 1 in is 25.4 mm
// exactly (international yard and pound agreement of 1959; NIST SP 811, appendix B.8).
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "field/screens/card/mark_labels.h"
#include "field/state/edge_view.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

bool is_said(const Journey& crew, const std::string& part) {
    const std::vector<Words>& words = crew.screen->ui().words();
    return std::any_of(words.begin(), words.end(),
                       [&](const Words& one) { return one.words.find(part) != std::string::npos; });
}

/// Neither sign of the other tape is anywhere.
bool says_other(const Journey& crew) { return is_said(crew, "≈ ") || is_said(crew, "= "); }

const Length eave_c = feet(15) + inches(8) + sixteenths(8);  // 188.5 in = 4787.9 mm

}  // namespace

TEST_CASE("A length is said on the other tape to its nearest mark, exactly where it lies on one") {
    const Tapes inch{Marks::sixteenth, true};
    CHECK(on_other_tape(feet(8) + inches(5) + sixteenths(4), inch) == "≈ 2572 mm");  // 2571.75
    CHECK(on_other_tape(inches(10), inch) == "= 254 mm");
    CHECK(on_other_tape(Length(), inch).empty());
    CHECK(on_other_tape(millimetres(2572), {Marks::millimetre, true}) == "≈ 8 ft 5 1/4 in");
    CHECK(on_other_tape(inches(10), {Marks::sixteenth, false}).empty());
    CHECK(length_on(inches(10), inch) == "10 in · = 254 mm");
}

TEST_CASE("The record of a job in mm says each reading in mm, a millimetre apart") {
    Journey crew;
    crew.tap_all({"demo", "rules", "rule cut_grid", "grid 1 mm", "leave", "edge C"});
    crew.key_in(std::int64_t{9650});
    crew.tap("keep");
    crew.key_in(std::int64_t{9651});
    crew.tap("keep");
    crew.tap_all({"leave", "history"});
    REQUIRE(crew.where().screen == Screen::history);
    CHECK(is_said(crew, "9650 mm"));
    CHECK(is_said(crew, "9651 mm"));
    CHECK_FALSE(is_said(crew, "31 ft"));
}

TEST_CASE("Both units, one touch beside the language: where a length is read, marked and cut") {
    for (const bool upright : {false, true}) {
        Journey crew(upright ? 800 : 1280, upright ? 1280 : 800);
        crew.tap_all({"by", "tablet", "units", "leave", "demo", "edge C"});
        crew.key_in(eave_c);
        CHECK(is_said(crew, "≈ 4788 mm"));  // readback
        crew.tap("keep");
        crew.key_in(eave_c);
        crew.tap_all({"keep", "digit 5", "keep"});
        crew.tap("leave");
        CHECK(is_said(crew, "≈ 4788 mm"));  // the edge's row
        crew.tap_all({"edge C", "run", "style equal"});
        for (const PlannedPiece& piece : find_run(crew.state().plan, "C", TrimRole::main)->pieces) {
            CHECK(is_said(crew, on_other_tape(piece.covers, {Marks::sixteenth, true}).english()));
        }
        crew.tap("next");
        crew.reach_card("C", TrimRole::main, 1);
        const Card card = *card_in_hand(crew.state(), crew.where());
        for (const MarkLabel& label : labels_of(card)) {
            CHECK(is_said(crew, print_length(label.at)));
            CHECK(is_said(crew, on_other_tape(label.at, {Marks::sixteenth, true}).english()));
        }
        crew.tap("differently");
        CHECK(is_said(crew, length_on(card.cut, {Marks::sixteenth, true}).english()));
        crew.tap("as planned");
        CHECK(is_said(crew, on_other_tape(card.cut, {Marks::sixteenth, true}).english()));
    }
}

TEST_CASE("A job in millimetres says feet and inches beside them") {
    Journey crew;
    crew.tap_all({"by", "tablet", "units", "leave", "demo"});
    crew.read_edge("C", eave_c, eave_c, "5");
    crew.tap_all({"leave", "rules", "rule cut_grid", "grid 1 mm", "leave", "edge C"});
    crew.reach_card("C", TrimRole::main, 1);
    const Card card = *card_in_hand(crew.state(), crew.where());
    for (const MarkLabel& label : labels_of(card)) {
        CHECK(is_said(crew, print_length(label.at, Marks::millimetre)));
        CHECK(is_said(crew, on_other_tape(label.at, {Marks::millimetre, true}).english()));
    }
}

TEST_CASE("Both units are this tablet's choice: kept over a restart, and no event") {
    Journey crew;
    crew.tap("demo");
    const std::size_t events = crew.state().events.size();
    crew.tap_all({"by", "tablet", "units", "leave"});
    CHECK(crew.state().both_units);
    CHECK(crew.state().events.size() == events);
    REQUIRE(crew.scale_kept);
    CHECK(crew.scale_kept->both_units);
    crew.start_again();
    CHECK(crew.state().both_units);
    crew.tap_all({"by", "tablet", "units", "leave"});
    CHECK_FALSE(crew.state().both_units);
    CHECK_FALSE(crew.scale_kept->both_units);
}

TEST_CASE("With one unit nothing is said of the other tape") {
    Journey crew;
    crew.on_screen = [&] { CHECK_FALSE(says_other(crew)); };
    crew.tap("demo");
    crew.read_edge("C", eave_c, eave_c, "5");
    crew.tap_all({"run", "next"});
    crew.reach_card("C", TrimRole::main, 1);
    crew.tap_all({"differently", "as planned", "leave", "cut"});
}
