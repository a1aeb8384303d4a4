// What a screen says is said in the trade's words: no key of a file, no path, no tablet's number.
#include <doctest/doctest.h>

#include <cctype>
#include <string>
#include <string_view>

#include "engine/words/program_version.h"
#include "field/state/told.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

bool is_word_letter(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

/// Whether an underscore joins letters: "bead_gap".
bool holds_key(std::string_view words) {
    for (std::size_t at = 1; at + 1 < words.size(); ++at) {
        if (words[at] == '_' && is_word_letter(words[at - 1]) && is_word_letter(words[at + 1])) {
            return true;
        }
    }
    return false;
}

/// Whether a word has two slashes, and more than figures: "/home/ada", not "1/2/3".
bool holds_path(std::string_view words) {
    while (!words.empty()) {
        const std::string_view word = words.substr(0, words.find_first_of(" \n"));
        words.remove_prefix(std::min(word.size() + 1, words.size()));
        const std::size_t first = word.find('/');
        const bool two = first != word.npos && word.find('/', first + 1) != word.npos;
        if (two && std::any_of(word.begin(), word.end(), [](char c) {
                return std::isalpha(static_cast<unsigned char>(c)) != 0;
            })) {
            return true;
        }
    }
    return false;
}

/// Whether eight and more digits of a number to base 16 stand together: "e8518a86".
bool holds_number_of_tablet(std::string words) {
    const std::string commit(program_version().commit);
    if (const std::size_t at = commit.empty() ? words.npos : words.find(commit); at != words.npos) {
        words.erase(at, commit.size());
    }
    std::size_t run = 0;
    for (const char c : words) {
        const bool is_hex =
            std::isdigit(static_cast<unsigned char>(c)) != 0 || (c >= 'a' && c <= 'f');
        run = is_hex ? run + 1 : 0;
        if (run == 8) {
            return true;
        }
    }
    return false;
}

std::string not_plain(const std::string& words) {
    return holds_key(words)                ? "a key in \"" + words + "\"\n"
           : holds_path(words)             ? "a path in \"" + words + "\"\n"
           : holds_number_of_tablet(words) ? "a tablet's number in \"" + words + "\"\n"
                                           : std::string();
}

/// Of what shows; what others wrote about their parts of the program is theirs.
std::string not_plain_on(const Journey& crew) {
    std::string faults;
    if (crew.where().screen == Screen::notices) {
        return faults;
    }
    for (const Words& words : crew.screen->ui().words()) {
        faults += not_plain(words.words);
    }
    for (const Target& target : crew.screen->ui().targets()) {
        faults += not_plain(target.label);
    }
    return faults;
}

/// The walk, with a look at every screen on the way and at the whole record after it.
void check_plain(bool spanish, void (*walk_past)(Journey&)) {
    Journey crew;
    if (spanish) {
        crew.tap("language");
    }
    int looked_at = 0;
    crew.on_screen = [&] {
        ++looked_at;
        const std::string faults = not_plain_on(crew);
        CHECK_MESSAGE(faults.empty(), "screen " << static_cast<int>(crew.where().screen) << ":\n"
                                                << faults);
    };
    walk_past(crew);
    CHECK(looked_at > 30);
    for (const Event& event : crew.state().events) {
        CHECK(not_plain(crew.screen->ui().in_words(told(crew.state(), event.fact))) == "");
    }
}

}  // namespace

TEST_CASE("Keys, paths and tablets' numbers are known where they stand") {
    CHECK(not_plain("bead_gap 6 in does not fit") != "");
    CHECK(not_plain("in /home/ada/roofs") != "");
    CHECK(not_plain("tablet e8518a86, 4 May") != "");
    for (const char* plain : {"46 ft 1/4 in, 5/12", "tear-drop", "C/2", "12345 mm", "_ft"}) {
        CHECK(not_plain(plain) == "");
    }
}

TEST_CASE("What is crossed out elsewhere, or three deep, is told without a number") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    const EventId elsewhere{0xe8518a86e8518a86U, 12};
    const auto struck = [](EventId id) { return StruckFor{id, StrikeReason::undone}; };
    CHECK(not_plain(told(crew.state(), struck(elsewhere)).english()) == "");
    for (int deep = 0; deep < 3; ++deep) {
        crew.tap_all({"leave", "history"});
        crew.tap("entry " + print_event_id(crew.state().events.back().id));
        crew.tap("undo");
        CHECK(not_plain(told(crew.state(), crew.state().events.back().fact).english()) == "");
        crew.tap("let go");
        CHECK(not_plain(told(crew.state(), struck(crew.state().events.back().id)).english()) == "");
    }
}

TEST_SUITE_BEGIN("long");

TEST_CASE("No screen on the walks past every screen shows a key, a path or a tablet's number") {
    for (const bool spanish : {false, true}) {
        check_plain(spanish, walk);
        check_plain(spanish, walk_sticks);
        check_plain(spanish, walk_hand_over);
        check_plain(spanish, walk_meets);
    }
}

TEST_SUITE_END();
