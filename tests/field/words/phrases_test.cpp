// What a language says for a text. Which entries count: GNU gettext manual, "Fuzzy Entries" and
// "The Format of PO Files".
#include "field/words/phrases.h"

#include <doctest/doctest.h>

namespace hemline {
namespace {

Phrases spanish() {
    return Phrases::read(
               "msgid \"\"\nmsgstr \"Language: es\\n\"\n\n"
               "msgid \"eave\"\nmsgstr \"alero\"\n\n"
               "msgid \"{1} longer than {2}\"\nmsgstr \"{2} es {1} más corto\"\n\n"
               "msgid \"{1} piece\"\nmsgid_plural \"{1} pieces\"\n"
               "msgstr[0] \"{1} pieza\"\nmsgstr[1] \"{1} piezas\"\n\n"
               "msgctxt \"hem\"\nmsgid \"open\"\nmsgstr \"abierto\"\n\n"
               "msgctxt \"end\"\nmsgid \"open\"\nmsgstr \"libre\"\n\n"
               "#, fuzzy\nmsgid \"ridge\"\nmsgstr \"cresta\"\n\n"
               "msgid \"hip\"\nmsgstr \"\"\n")
        .value();
}

TEST_CASE("without a catalogue every text is English") {
    CHECK(Phrases().of(say("{1} longer than {2}", "1 in", say("eave"))) == "1 in longer than eave");
    CHECK(Phrases().of(say_count("{1} piece", "{1} pieces", 2)) == "2 pieces");
}

TEST_CASE("a text and the texts in it are said in the language") {
    CHECK(spanish().of(say("{1} longer than {2}", "1 in", say("eave"))) ==
          "alero es 1 in más corto");
}

TEST_CASE("the lengths in a text are told on the reader's marks, in the language") {
    const Text text = say("{1} longer than {2}", millimetres(9650), feet(31) + sixteenths(5));
    CHECK(spanish().of(text, Marks::millimetre) == "9457 mm es 9650 mm más corto");
    CHECK(spanish().of(text, Marks::sixteenth) == "31 ft 0 5/16 in es 9650 mm más corto");
    CHECK(Phrases().of(text, Marks::millimetre) == "9650 mm longer than 9457 mm");
}

TEST_CASE("one takes the first form, any other count the second") {
    const auto pieces = [](std::int64_t count) {
        return spanish().of(say_count("{1} piece", "{1} pieces", count));
    };
    CHECK(pieces(0) == "0 piezas");
    CHECK(pieces(1) == "1 pieza");
    CHECK(pieces(21) == "21 piezas");
}

TEST_CASE("the context tells the meanings of one word apart") {
    CHECK(spanish().of(say_of("hem", "open")) == "abierto");
    CHECK(spanish().of(say_of("end", "open")) == "libre");
    CHECK(spanish().of(say("open")) == "open");
}

TEST_CASE("a guess that nobody looked at, and what is not translated, stays English") {
    CHECK(spanish().of(say("ridge")) == "ridge");
    CHECK(spanish().of(say("hip")) == "hip");
    CHECK(spanish().of(say("valley")) == "valley");
}

TEST_CASE("the header is no phrase, and what somebody typed is not looked up") {
    CHECK(spanish().of(Text()).empty());
    CHECK(spanish().of(say("")).empty());
    CHECK(spanish().of(Text("eave")) == "eave");
}

TEST_CASE("a catalogue that cannot be read says where") {
    const auto broken = Phrases::read("msgid \"eave\"\nmsgstr alero\n");
    REQUIRE_FALSE(broken.ok());
    CHECK(broken.problem().what.english().find("line 2") == 0);
}

}  // namespace
}  // namespace hemline
