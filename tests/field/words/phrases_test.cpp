// What a language says for a text. Which entries count: GNU gettext manual, "Fuzzy Entries" and
// "The Format of PO Files".
#include "field/words/phrases.h"
#include "engine/words/result.h"
#include "field/words/short_id.h"

#include <doctest/doctest.h>

namespace hemline {
namespace {

Phrases spanish() {
    return Phrases::read(
               "msgid \"\"\nmsgstr \"Language: es\\nX-Language-Name: Español\\n\"\n\n"
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

TEST_CASE("a catalogue with short names says the same as one with the English") {
    // The first published vectors of FNV-1a in 32 bits (Noll), from memory.
    CHECK(short_id("") == "811c9dc");
    CHECK(short_id("a") == "e40c292");
    CHECK(short_id("foobar") == "bf9cf96");
    const Phrases brief =
        Phrases::read(
            "msgid \"\"\nmsgstr \"Language: es\\nX-Ids: short\\nX-Language-Name: Español\\n\"\n\n"
            "msgid \"" +
            short_id("eave") +
            "\"\nmsgstr \"alero\"\n\n"
            "msgid \"" +
            short_id("{1} piece") +
            "\"\nmsgid_plural \"-\"\nmsgstr[0] \"{1} pieza\"\nmsgstr[1] \"{1} piezas\"\n\n"
            "msgctxt \"hem\"\nmsgid \"" +
            short_id("open") + "\"\nmsgstr \"abierto\"\n")
            .value();
    CHECK(brief.of(say("eave")) == "alero");
    CHECK(brief.of(say_count("{1} piece", "{1} pieces", 2)) == "2 piezas");
    CHECK(brief.of(say_of("hem", "open")) == "abierto");
    CHECK(brief.of(say("open")) == "open");
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

constexpr const char* header =
    "msgid \"\"\nmsgstr \"Language: pl\\nX-Language-Name: Polski\\n"
    "Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? "
    "1 : 2);\\n\"\n\n";

TEST_CASE(
    "a count takes the form that the header's rule gives, and the header names the language") {
    const auto polish = Phrases::read(std::string(header) +
                                      "msgid \"{1} file\"\nmsgid_plural \"{1} files\"\n"
                                      "msgstr[0] \"{1} plik\"\nmsgstr[1] \"{1} pliki\"\n"
                                      "msgstr[2] \"{1} plików\"\n");
    REQUIRE(polish.ok());
    CHECK(polish->tag() == "pl");
    CHECK(polish->name() == "Polski");
    const auto files = [&](std::int64_t count) {
        return polish->of(say_count("{1} file", "{1} files", count));
    };
    // GNU gettext manual, "Plural forms": "1 plik, 2,3,4 pliki, 5-21 plików, 22-24 pliki"
    CHECK(files(1) == "1 plik");
    CHECK(files(3) == "3 pliki");
    CHECK(files(5) == "5 plików");
    CHECK(files(21) == "21 plików");
    CHECK(files(22) == "22 pliki");
}

TEST_CASE("a catalogue with other forms than its header says names the line") {
    const auto lacking = Phrases::read(std::string(header) +
                                       "msgid \"{1} file\"\nmsgid_plural \"{1} files\"\n"
                                       "msgstr[0] \"{1} plik\"\nmsgstr[1] \"{1} pliki\"\n");
    REQUIRE_FALSE(lacking.ok());
    CHECK(lacking.problem().what ==
          "line 4 of the phrases has 2 forms for a count, its header says 3.");
}

TEST_CASE("a catalogue that does not say its language, or a tag that is none, is refused") {
    for (const char* said : {"", "X-Language-Name: Polski\\n", "Language: pl\\n",
                             "Language: ../pl\\nX-Language-Name: Polski\\n",
                             "Language: p\\nX-Language-Name: Polski\\n"}) {
        const auto read = Phrases::read("msgid \"\"\nmsgstr \"" + std::string(said) + "\"\n\n");
        REQUIRE_FALSE(read.ok());
        CHECK(read.problem().mend.english().find("X-Language-Name") != std::string::npos);
    }
    CHECK_FALSE(Phrases::read("").ok());
}

}  // namespace
}  // namespace hemline
