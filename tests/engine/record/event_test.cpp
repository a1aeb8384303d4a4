#include "engine/record/event.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "engine/record/fact_words.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {
namespace {

TEST_CASE("An event id is sixteen hex digits, a dash and a number, and is read back") {
    CHECK(print_event_id({0x3f9c0000a0b1c2d3U, 12}) == "3f9c0000a0b1c2d3-12");
    CHECK(print_event_id({1, 1}) == "0000000000000001-1");
    CHECK(rc::check([](std::uint64_t device) {
        const EventId id{device, *rc::gen::inRange<std::uint32_t>(1, 0xFFFF'FFFFU)};
        RC_ASSERT(parse_event_id(print_event_id(id)) == id);
    }));
    CHECK(parse_event_id("ffffffffffffffff-4294967295") == EventId{UINT64_MAX, UINT32_MAX});
}

TEST_CASE("A text that print_event_id does not write is no event id") {
    for (const char* text :
         {"", "-", "3f9c0000a0b1c2d3", "3f9c0000a0b1c2d3-", "3f9c0000a0b1c2d3-0",
          "3f9c0000a0b1c2d3-01", "3f9c0000a0b1c2d3-+1", "3f9c0000a0b1c2d3--1",
          "3f9c0000a0b1c2d3-1 ", "3f9c0000a0b1c2d3-4294967296", "3f9c0000a0b1c2d3-99999999999",
          "3F9C0000A0B1C2D3-1", "3f9c0000a0b1c2dg-1", "3f9c0000a0b1c2d3 1", "f9c0000a0b1c2d3-12"}) {
        CAPTURE(text);
        CHECK_FALSE(parse_event_id(text));
    }
    CHECK_FALSE(parse_device("3f9c0000a0b1c2d"));
    CHECK(parse_device("00000000000000ff") == 255U);
}

TEST_CASE("Every fact is described on one line with its values") {
    CHECK(describe(ReadingTaken{"A", ReadingOf::edge, feet(31) + inches(7) + sixteenths(10)}) ==
          "Edge A read: 31 ft 7 5/8 in");
    CHECK(describe(PieceSpoiled{"B", TrimRole::cleat, 2, inches(40), {feet(10), {}}}) ==
          "Edge B, cleat piece 2 spoiled: 3 ft 4 in lost from a new stick of 10 ft");
    CHECK(describe(PieceCut{"B", TrimRole::main, 2, inches(40), {feet(5), EventId{1, 2}}}) ==
          "Edge B, piece 2 cut at 3 ft 4 in from the drop of 0000000000000001-2");
    CHECK(describe(Struck{{1, 2}, "burnt inch"}) == "Crossed out 0000000000000001-2: burnt inch");
    for (const Event& event : eave_record()) {
        CHECK_FALSE(describe(event.fact).empty());
    }
}

TEST_CASE("What an event knows by its id is called what the crew calls it") {
    Names names;
    names.step = [](const StepSaid& done) {
        return Text("Hook piece " + std::to_string(done.piece));
    };
    names.trim = [](const std::string&) { return Text("ridge cap"); };
    names.rule = [](const std::string&) { return Text("screw to screw"); };
    const Fact read = ReadingTaken{"A", ReadingOf::edge, feet(1)};
    names.event = [&](EventId) { return &read; };
    names.offcut = [](EventId) { return Text("piece A/2"); };
    CHECK(describe(Struck{{1, 2}, "burnt inch"}, names) ==
          "Crossed out \"Edge A read: 1 ft\": burnt inch");
    CHECK(describe(RuleSet{"screw_spacing", "8 in"}, names) ==
          "Practice: screw to screw set to 8 in");
    CHECK(describe(SectionChosen{"ridge_cap", {}}, names) ==
          "section of ridge cap as the catalogue has it");
    CHECK(describe(PieceCut{"B", TrimRole::main, 2, inches(40), {feet(5), EventId{1, 2}}}, names) ==
          "Edge B, piece 2 cut at 3 ft 4 in from the drop of piece A/2");
    const StepDone done{"A", "hook", 1, {AnswerKind::count, {}, 3, ""}, "", ""};
    CHECK(describe(done, names) == "Edge A, \"Hook piece 1\": 3");
    CHECK(describe(done) == "Edge A, piece 1, step hook: 3");
}

TEST_CASE("A line break or a terminal's control code in a text does not leave its line") {
    const Text words = describe(EdgeFinished{"A", "done\nEdge B finished\x1b[2J\x7f"});
    CHECK(words.english() == "Edge A finished: done\\u000AEdge B finished\\u001B[2J\\u007F");
}

}  // namespace
}  // namespace hemline
