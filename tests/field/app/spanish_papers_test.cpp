// Nothing of English is left where a crew reads Spanish: the record, the day sheet, a cut card.
#include <doctest/doctest.h>

#include <cctype>
#include <regex>
#include <set>
#include <string>

#include "engine/handover/day_page.h"
#include "engine/handover/piece_papers.h"
#include "field/state/told.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

/// Words of English crews and of English at large that Spanish does not have (from memory). Those
/// that Spanish crews say too, such as clip and rake, are not among them.
const std::set<std::string> english_only = {
    "edge",    "eave",    "gable",    "ridge",    "valley",   "headwall", "sidewall", "pitch",
    "cleat",   "wrap",    "piece",    "pieces",   "stick",    "sticks",   "drop",     "lap",
    "laps",    "screw",   "screws",   "seam",     "seams",    "hem",      "flange",   "trim",
    "read",    "reading", "cut",      "bend",     "fold",     "hook",     "panels",   "roof",
    "left",    "right",   "first",    "last",     "finished", "sent",     "back",     "spoiled",
    "crossed", "struck",  "undone",   "practice", "set",      "taken",    "started",  "noted",
    "signed",  "checked", "accepted", "the",      "and",      "of",       "with",     "from",
    "is",      "at",      "by",       "not",      "down",     "missing",  "tablet",   "step",
    "steps",   "length",  "wind",     "bead",     "screwed",  "tie",      "off",      "equal",
    "feet",    "inches",  "mph",      "none",     "yes"};

/// Without markup and what it says to machines.
std::string shown_of(const std::string& html) {
    std::string text;
    bool inside = false;
    std::string rest = html.substr(std::min(html.find("<body"), html.size()));
    for (const char c : rest) {
        inside = (inside || c == '<') && c != '>';
        text += inside || c == '>' ? ' ' : c;
    }
    return text;
}

std::string english_in(const std::string& words) {
    std::string faults, word;
    for (const char c : words + " ") {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isalpha(byte) != 0 || byte >= 0x80) {
            word += static_cast<char>(std::tolower(byte));
            continue;
        }
        if (english_only.count(word) == 1) {
            faults += "\"" + word + "\" in \"" + words.substr(0, 300) + "\"\n";
        }
        word.clear();
    }
    return faults;
}

PageWords spanish_words(const Journey& crew) {
    return {"es", [&crew](const Text& text) { return crew.app->in_words(text); }};
}

}  // namespace

TEST_CASE("English words are known among Spanish ones") {
    CHECK(english_in("Borde A devuelto: bead missing") != "");
    CHECK(english_in("El alero A: se midió, 46 ft 1/4 in") == "");
}

TEST_SUITE_BEGIN("long");

TEST_CASE("In Spanish the whole record, every entry signed, has no English word") {
    for (void (*walk_past)(Journey&) : {walk, walk_sticks, walk_meets}) {
        Journey crew;
        crew.tap("language");
        walk_past(crew);
        CHECK(crew.state().events.size() > 20);
        for (const Event& event : crew.state().events) {
            const std::string told_as = crew.app->in_words(told(crew.state(), event.fact));
            const std::string faults = english_in(told_as);
            CHECK_MESSAGE(faults.empty(), faults);
        }
    }
}

TEST_CASE("In Spanish the day sheet and a cut card on paper have no English word") {
    Journey crew;
    crew.tap("language");
    walk(crew);
    const State& state = crew.state();
    const PageWords words = spanish_words(crew);
    const auto clock = [](WallTime) { return std::string("08:00"); };
    const DaySheet day = day_sheet(state.job, state.events, {0, INT64_MAX});
    const std::string sheet =
        shown_of(day_page(day, Text("4 de mayo"), Paper::letter, clock, names_on(state), words));
    CHECK(sheet.size() > 500);
    CHECK_MESSAGE(english_in(sheet).empty(), english_in(sheet));
    for (const TrimRole role : {TrimRole::wrap, TrimRole::cleat, TrimRole::main}) {
        const Result<Card> card = make_card(state.job, state.plan, state.catalogue, "A", role, 1);
        REQUIRE(card.ok());
        const std::string page = shown_of(card_page(
            *card, {}, state.marks, {state.job.name, Text("4 de mayo")}, Paper::a4, words));
        CHECK_MESSAGE(english_in(page).empty(), english_in(page));
    }
}

TEST_CASE("In Spanish no screen on the walks shows an English word") {
    for (void (*walk_past)(Journey&) : {walk, walk_meets}) {
        Journey crew;
        crew.tap("language");
        // The crew's English word beside the Spanish one in a title.
        const std::regex beside(
            R"(\((eave|high eave|gable|ridge|hip|valley|sidewall|headwall|transition)\))");
        std::string faults;
        crew.on_screen = [&] {
            if (crew.where().screen == Screen::notices) {
                return;  // licenses are as their owners wrote them
            }
            for (const Words& one : crew.screen->ui().words()) {
                faults += english_in(std::regex_replace(one.words, beside, ""));
            }
        };
        walk_past(crew);
        CHECK_MESSAGE(faults.empty(), faults);
    }
}

TEST_SUITE_END();
