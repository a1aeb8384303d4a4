// Sentences for people and the values in them. The rules are this project's: no published source.
#include "engine/words/text.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <map>
#include <optional>

#include "engine/words/shown_text.h"

namespace hemline {
namespace {

/// A language of a few words; what it lacks is in English.
Lookup language(const std::map<std::string, std::string>& words) {
    return [words](const Text& text) {
        const auto found = words.find(text.key);
        return found == words.end() ? text.key : found->second;
    };
}

TEST_CASE("a sentence takes its values in its own order") {
    const Text text = say("{1} longer than {2}", "1 in", "the first");
    CHECK(text == "1 in longer than the first");
    CHECK(text.english() == "1 in longer than the first");
    CHECK(fill(text, language({{"{1} longer than {2}", "{2} es {1} más corta"}})) ==
          "the first es 1 in más corta");
}

TEST_CASE("a number is said in figures") {
    CHECK(say("piece {1} of {2}", 3, std::size_t{12}) == "piece 3 of 12");
}

// 1 in is 25.4 mm exactly (international yard and pound agreement of 1959; NIST SP 811, B.8).
TEST_CASE("a length in a sentence becomes letters where it is shown, in the reader's unit") {
    const Text read = say("Edge {1} read: {2}", "A", inches(10));
    CHECK(read == "Edge A read: 10 in");
    CHECK(read.english(Marks::millimetre) == "Edge A read: 254 mm");
    CHECK(read == say("Edge {1} read: {2}", "A", millimetres(254)));
    CHECK(fill(read, language({{"Edge {1} read: {2}", "Borde {1}, lectura: {2}"}}),
               Marks::millimetre) == "Borde A, lectura: 254 mm");
    CHECK(joined({Text(), Text(inches(1)), say("long")}, " ") == "1 in long");
    CHECK(say("pitch {1}", rise_in_12(5)) == "pitch 5/12");
}

TEST_CASE("two lengths a mark apart never read the same in feet and inches") {
    using Reader = std::optional<Marks>;
    for (const Reader reader : {Reader(), Reader(Marks::sixteenth), Reader(Marks::thirty_second)}) {
        CHECK(Text(millimetres(9650)).english(reader) == "9650 mm");
        CHECK(Text(millimetres(9651)).english(reader) == "9651 mm");
        CHECK(Text(feet(6) + thirty_seconds(1)).english(reader) == "6 ft 0 1/32 in");
        CHECK(Text(feet(6) + sixteenths(1)).english(reader) == "6 ft 0 1/16 in");
    }
    CHECK(Text(millimetres(9650)).english(Marks::millimetre) == "9650 mm");
    CHECK(Text(millimetres(9651)).english(Marks::millimetre) == "9651 mm");
}

TEST_CASE("what was worked out to less than a mark is told to the reader's mark") {
    const Length worked = inches(7) + nanometres(2'300'000);  // 1.45 of 1/16 in; 180.1 mm
    CHECK(Text(worked).english(Marks::sixteenth) == "7 1/16 in");
    CHECK(Text(worked) == "7 3/32 in");
    CHECK(Text(worked).english(Marks::millimetre) == "180 mm");
    // The first brake mark of a rolled eave at 5/12: by way of 1/16 in it came out as 102 mm.
    CHECK(Text(nanometres(101'261'164)).english(Marks::millimetre) == "101 mm");
    const CloseLength close{nanometres(2'300'000)};
    CHECK(Text(close).english(Marks::sixteenth) == "3/32 in");
    CHECK(Text(close).english(Marks::millimetre) == "2 mm");
}

TEST_CASE("a text in a text is said in the same language") {
    const Text text = say("Finish {1} first.", joined({say("eave"), Text("A")}, " "));
    CHECK(text == "Finish eave A first.");
    CHECK(fill(text, language({{"eave", "alero"}, {"Finish {1} first.", "Primero acabe {1}."}})) ==
          "Primero acabe alero A.");
}

TEST_CASE("what somebody typed is no key and is shown as it is") {
    const Lookup shouting = [](const Text& text) { return "<" + text.key + ">"; };
    CHECK(fill(Text("wall"), shouting) == "wall");
    CHECK(fill(say("wall"), shouting) == "<wall>");
    CHECK(fill(say("Fix: {1}", "wall"), shouting) == "<Fix: wall>");
}

TEST_CASE("braces in a value are no value's place") {
    CHECK(say("Fix: {1}, {2}", "{2}", "oil") == "Fix: {2}, oil");
    CHECK(Text("{1}") == "{1}");
}

TEST_CASE("a place without a value stays, and so does a brace that does not pair") {
    CHECK(say("{1} and {3} and {}", "a", "b") == "a and {3} and {}");
    CHECK(say("{1} { {1", "a") == "a { {1");
    CHECK(say("} {1}", "a") == "} a");
}

TEST_CASE("values may have names") {
    Text text = say("Cut piece {piece}: {cut}.");
    text.names = {"piece", "cut"};
    text.values = {Text("2"), Text("9 ft")};
    CHECK(text == "Cut piece 2: 9 ft.");
}

TEST_CASE("one and many are two sentences") {
    const auto pieces = [](std::int64_t count) {
        return say_count("{1} piece of {2}", "{1} pieces of {2}", count, "A");
    };
    CHECK(pieces(0) == "0 pieces of A");
    CHECK(pieces(1) == "1 piece of A");
    CHECK(pieces(2) == "2 pieces of A");
}

TEST_CASE("the same word in two meanings is two texts") {
    CHECK(say_of("hem", "open") == "open");
    CHECK_FALSE(say_of("hem", "open") == say_of("end", "open"));
    CHECK_FALSE(say("open") == Text("open"));
}

TEST_CASE("texts one after another leave empty ones out") {
    CHECK(joined({Text("a"), Text(""), Text("b"), Text()}, ", ") == "a, b");
    CHECK(joined({}, ", ").empty());
}

TEST_CASE("texts side by side keep their order and are said in their language") {
    const Text text = glued("A", " · ", say("eave"), 2);
    CHECK(text == "A · eave2");
    CHECK(fill(text, language({{"eave", "alero"}})) == "A · alero2");
}

TEST_CASE("a list names its last with its own word") {
    const Text last = say("{1} or {2}");
    CHECK(listed({}, last).empty());
    CHECK(listed({Text("a")}, last) == "a");
    CHECK(listed({Text("a"), Text("b")}, last) == "a or b");
    CHECK(listed({Text("a"), Text("b"), Text("c")}, last) == "a, b or c");
    CHECK(fill(listed({Text("a"), Text("b"), Text("c")}, last),
               language({{"{1} or {2}", "{1} o {2}"}})) == "a, b o c");
}

TEST_CASE("words kept in English are said again in another language") {
    const auto again = [](std::string_view words) {
        return fill(recalled(words, {"{1} is under the least, {2}. {3}", "done"}),
                    language({{"{1} is under the least, {2}. {3}", "{1}, menos que {2}: {3}"},
                              {"done", "hecho"},
                              {"It leaks.", "Gotea."}}));
    };
    CHECK(again("1 in is under the least, 1.5 mm. It leaks.") == "1 in, menos que 1.5 mm: Gotea.");
    CHECK(again("done") == "hecho");
    CHECK(again("done it") == "done it");
    CHECK(again("1 in is under") == "1 in is under");
    CHECK(again("{1} is under the least, {2}. {4}") == "{1}, menos que {2}: {4}");
    CHECK(again("") == "");
}

TEST_CASE("any text as a value comes out whole, as it is shown") {
    const bool whole = rc::check([](const std::string& a, const std::string& b) {
        RC_ASSERT(say("{2}-{1}", a, b).english() == shown_text(b) + "-" + shown_text(a));
    });
    CHECK(whole);
}

}  // namespace
}  // namespace hemline
