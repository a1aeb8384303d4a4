// The crew's words where the trade has several. Genders: limatesa, limahoya, cumbrera and lima are
// feminine, valle and caballete masculine (Real Academia Española, Diccionario de la lengua
// española; from memory); hip and rake are said as masculine (common practice, no published
// source).
#include "field/words/crew_words.h"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <sstream>

#include "engine/words/result.h"
#include "field/store/folders.h"
#include "field/words/english_beside.h"
#include "field/words/phrases.h"
#include "field/words/po_file.h"
#include "field/words/short_path.h"

using namespace hemline;

namespace {

/// How many words Spanish crews have for it.
int words_of(std::string_view name) {
    for (const CrewThing& thing : crew_things) {
        if (thing.language == "es" && thing.thing == name) {
            return thing.words[2].empty() ? 2 : 3;
        }
    }
    return 1;
}

/// For every thing of the language the word at that place, or its last.
CrewWords all_said(std::string_view language, std::size_t place) {
    CrewWords said;
    for (const CrewThing& thing : crew_things) {
        if (thing.language == language) {
            const std::size_t last = thing.words[2].empty() ? 1 : 2;
            choose_word(said, thing, std::string(thing.words[std::min(place, last)]));
        }
    }
    return said;
}

/// Every phrase of the Spanish catalogue.
std::vector<std::string> spanish_phrases() {
    std::ifstream file(*assets_folder() / "words" / "es.po", std::ios::binary);
    std::ostringstream po;
    po << file.rdbuf();
    const auto entries = read_po(po.str());
    REQUIRE(entries.ok());
    std::vector<std::string> phrases;
    for (const PoEntry& entry : *entries) {
        if (!entry.id.empty()) {
            phrases.insert(phrases.end(), entry.strings.begin(), entry.strings.end());
        }
    }
    return phrases;
}

std::string english(std::string phrase, const CrewWords& words) {
    return in_crew_words(std::move(phrase), "en", words);
}

}  // namespace

TEST_CASE("An English crew's word stands for every whole word, its plural and its possessive") {
    const CrewWords words = all_said("en", 1);
    CHECK(english("Gables and eaves", words) == "Rakes and eaves");
    CHECK(english("gable", words) == "rake");
    CHECK(english("a gable's tab, a hip's foot", words) == "a rake's tab, a hip's foot");
    CHECK(english("on the high eave", words) == "on the peak");
    CHECK(english("gabled, {gable_x} and gablet", words).find("rake") == std::string::npos);
}

TEST_CASE("The English article goes with the word that is said") {
    const CrewWords words = all_said("en", 1);
    CHECK(english("a headwall of {1}", words) == "an endwall of {1}");
    CHECK(english("A headwall, the headwall's metal", words) == "An endwall, the endwall's metal");
    CHECK(english("A high eave's bend", words) == "A peak's bend");
    CHECK(english("via headwall", words) == "via endwall");
}

TEST_CASE("A roof's shape stays what it is, whatever the edge is called") {
    CHECK(english("Gable", all_said("en", 1)) == "Gable");
    CHECK(english("Across the gable", all_said("en", 1)) == "Across the gable");
}

TEST_CASE("Where none was chosen, or what is no word of the thing, the first is said") {
    CHECK(english("gable", {}) == "gable");
    CHECK(english("gable", {{"en gable", "ridge"}}) == "gable");
    CHECK(in_crew_words("[valley|la limahoya|el valle] abierta", "es", {}) ==
          "la limahoya abierta");
    for (const char* other : {"[sic] y [valley|limahoya", "[a|b]", "]|[", "["}) {
        CHECK(in_crew_words(other, "es", {}) == other);
    }
}

TEST_CASE("Each form in the Spanish phrases stands for one of the thing's words") {
    const std::regex group(R"(\[([a-z ]+)\|([^\]]*)\])");
    std::set<std::string> met;
    for (const std::string& phrase : spanish_phrases()) {
        for (std::sregex_iterator at(phrase.begin(), phrase.end(), group), end; at != end; ++at) {
            const std::string thing = (*at)[1], forms = (*at)[2];
            CHECK_MESSAGE(std::count(forms.begin(), forms.end(), '|') + 1 == words_of(thing),
                          phrase);
            met.insert(thing);
        }
    }
    CHECK(met == std::set<std::string>{"eave", "gable", "headwall", "high eave", "hip", "ridge",
                                       "sidewall", "transition", "valley"});
}

TEST_CASE("Whatever words are said, each Spanish article and participle has its noun's gender") {
    const std::regex he_before_her(
        R"(\b([Ee]l|[Uu]n|[Dd]el|[Aa]l|[Ee]ste) (limahoya|limatesa|cumbrera|lima)\b)");
    const std::regex she_before_him(
        R"(\b([Ll]a|[Uu]na|[Ee]sta) (valle|hip|caballete|rake|hastial)\b)");
    const std::regex her_participle(
        R"(\b([Ee]l|[Uu]n) (valle|hip|caballete|rake|hastial)( está| queda menos)? (abierta|angosta|doblada|inclinada|puesta|volteada)\b)");
    for (const std::size_t place : {0U, 1U, 2U}) {
        const CrewWords words = all_said("es", place);
        for (const std::string& phrase : spanish_phrases()) {
            const std::string said = in_crew_words(phrase, "es", words);
            CHECK_MESSAGE(!std::regex_search(said, std::regex(R"(\[[a-z ]+\|)")), said);
            CHECK_MESSAGE(!std::regex_search(said, he_before_her), said);
            CHECK_MESSAGE(!std::regex_search(said, she_before_him), said);
            CHECK_MESSAGE(!std::regex_search(said, her_participle), said);
        }
    }
}

TEST_CASE("A Spanish crew that says it otherwise never reads the usual word of an edge") {
    const std::regex usual(R"(\b(limahoya|limatesa|cumbrera|hastial)(s|es)?\b)", std::regex::icase);
    const std::set<std::string> of_walls = {"Dos aguas con hastiales", "A lo ancho del hastial"};
    for (const std::string& phrase : spanish_phrases()) {
        const std::string said = in_crew_words(phrase, "es", all_said("es", 1));
        CHECK_MESSAGE((of_walls.count(said) == 1 || !std::regex_search(said, usual)), said);
    }
}

TEST_CASE("A text is said in the crew's words, and what somebody typed stays as it is") {
    const Phrases words;
    CHECK(words.of(say("Gable {1}", "gable shed"), {}, all_said("en", 1)) == "Rake gable shed");
    CHECK(words.of(Text("gable"), {}, all_said("en", 1)) == "gable");
}

TEST_CASE(
    "The English word stands beside the Spanish one at its first use, unless it is the same") {
    CHECK(english_beside("[valley|Limahoya|Valle] {1}") ==
          "[valley|Limahoya (valley)|Valle (valley)] {1}");
    CHECK(english_beside("[hip|la limatesa|el hip|la lima] y [hip|limatesa|hip|lima]") ==
          "[hip|la limatesa (hip)|el hip|la lima (hip)] y [hip|limatesa|hip|lima]");
    CHECK(english_beside("[gable|Hastial|Rake]") == "[gable|Hastial (gable)|Rake]");
    CHECK(english_beside("[sic] a ]|[") == "[sic] a ]|[");
    CHECK(english_beside("") == "");
}

TEST_CASE("A path is told by its last names, without what only machines are named by") {
    CHECK(short_path("/home/ada/roofs/House") == "roofs ▸ House");
    CHECK(short_path("/home/ada/roofs/House/e8518a86c0ffee01.journal") == "roofs ▸ House");
    CHECK(short_path("/home/ada/.local/House/e8518a86c0ffee01-2.journal") == "ada ▸ House");
    CHECK(short_path("/media/STICK/") == "media ▸ STICK");
    CHECK(short_path("House") == "House");
    CHECK(short_path("/") == "/");
    CHECK(short_path("") == "");
}
