#include "engine/handover/plain_names.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

Event event(std::uint32_t sequence, const Fact& fact) {
    return {{0x3f9c, sequence}, {sequence, 0}, "Ada", {}, fact};
}

}  // namespace

TEST_CASE("what was struck, picked or cut from an offcut is said by what it was, never by an id") {
    const std::vector<Event> events = {
        event(1, ReadingTaken{"A", ReadingOf::edge, feet(46)}),
        event(2, PieceCut{"A", TrimRole::main, 3, inches(90), {feet(10), {}}}),
        event(3, Struck{{0x3f9c, 1}, "picked 0000000000003f9c-2 instead"}),
        event(4, Struck{{0x3f9c, 3}, ""}), event(5, Struck{{0x3f9c, 99}, ""})};
    const Names names = plain_names(events);
    const PageWords words = without_ids({}, names);
    const auto said = [&](const Fact& fact) { return words.in_words(describe(fact, names)); };
    CHECK(said(events[2].fact) ==
          "Crossed out \"Edge A read: 46 ft\": picked \"Edge A, piece 3 cut at 7 ft 6 in from a "
          "new stick of 10 ft\" instead");
    CHECK(said(events[3].fact) == "Crossed out \"" + said(events[2].fact) + "\"");
    CHECK(said(events[4].fact) == "Crossed out \"something that is not here\"");
    CHECK(said(PieceCut{"B", TrimRole::main, 1, inches(20), {inches(30), EventId{0x3f9c, 2}}}) ==
          "Edge B, piece 1 cut at 1 ft 8 in from the drop of piece A/3");
    CHECK(said(StepDone{"A", "corner_in_slit", 2, {}, "", ""}) ==
          "Edge A, \"corner in slit 2\": done");
}

TEST_CASE("only a whole id is taken for one") {
    const PageWords words = without_ids({}, plain_names({}));
    CHECK(words.in_words(Text("0000000000003f9c")) == "0000000000003f9c");
    CHECK(words.in_words(Text("a0000000000003f9c-1")) == "a0000000000003f9c-1");
    CHECK(words.in_words(Text("see 0000000000003f9c-1.")) == "see \"something that is not here\".");
}
