// The tablet in Spanish, and in a language made up for the test whose words are 40 % longer: every
// sentence on every screen is one of the catalogue's, and none is cut short.
#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <optional>
#include <sstream>

#include "engine/record/fact_words.h"
#include "engine/words/program_version.h"
#include "engine/words/result.h"
#include "engine/work/confirm.h"
#include "field/screens/card/mark_labels.h"
#include "field/store/folders.h"
#include "field/words/po_file.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;

/// Puts accents on vowels, so that an untranslated word shows, and makes words 40 % longer.
std::string longer(const std::string& english) {
    constexpr std::string_view vowels = "aeiouAEIOU";
    constexpr const char* accented[] = {"á", "é", "í", "ó", "ú", "Á", "É", "Í", "Ó", "Ú"};
    std::string said;
    std::size_t letters = 0;
    bool in_value = false;
    for (const char c : english) {
        in_value = c == '{' || (in_value && c != '}');
        letters += !in_value && std::isalpha(static_cast<unsigned char>(c)) != 0 ? 1 : 0;
        const std::size_t vowel = in_value ? std::string_view::npos : vowels.find(c);
        said += vowel == std::string_view::npos ? std::string(1, c) : accented[vowel];
    }
    const std::size_t more = (letters * 2 + 4) / 5;
    const std::string after = more < 4 ? std::string(std::max<std::size_t>(more, 1) - 1, '~')
                                       : " " + std::string(more - 2, '~');
    return letters == 0 ? english : "~" + said + after;
}

std::string quoted(const std::string& words) {
    std::string text = "\"";
    for (const char c : words) {
        text += c == '\n'               ? "\\n"
                : c == '"' || c == '\\' ? std::string("\\") + c
                                        : std::string(1, c);
    }
    return text + "\"";
}

/// An assets folder with the longer language as a third, for as long as this lives. A count has
/// three forms in it.
class LongerLanguage {
  public:
    LongerLanguage() {
        const fs::path assets = *assets_folder();
        fs::copy(assets, folder_.path(), fs::copy_options::recursive);
        std::ifstream file(assets / "words" / "es.po", std::ios::binary);
        std::ostringstream po;
        po << file.rdbuf();
        const auto entries = read_po(po.str());
        REQUIRE(entries.ok());
        std::ofstream out(folder_.path() / "words" / "x-long.po", std::ios::binary);
        out << "msgid \"\"\nmsgstr \"Language: x-long\\nX-Language-Name: Lóngér\\n"
               "Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n>=2 && n<=4 ? 1 : 2);\\n\"\n\n";
        for (const PoEntry& entry : *entries) {
            if (entry.id.empty()) {
                continue;
            }
            if (!entry.context.empty()) {
                out << "msgctxt " << quoted(entry.context) << '\n';
            }
            out << "msgid " << quoted(entry.id) << '\n';
            if (entry.id_plural.empty()) {
                out << "msgstr " << quoted(longer(entry.id)) << "\n\n";
            } else {
                out << "msgid_plural " << quoted(entry.id_plural) << "\nmsgstr[0] "
                    << quoted(longer(entry.id)) << "\nmsgstr[1] " << quoted(longer(entry.id_plural))
                    << "\nmsgstr[2] " << quoted(longer(entry.id_plural)) << "\n\n";
            }
        }
        out.close();
        assets_.emplace("HEMLINE_ASSETS", folder_.path().string());
    }
    LongerLanguage(const LongerLanguage&) = delete;
    LongerLanguage& operator=(const LongerLanguage&) = delete;

  private:
    TemporaryFolder folder_;
    std::optional<Setting> assets_;
};

/// Names of people, of the demo job and of files are not translated.
bool is_own(const std::string& word) {
    constexpr std::string_view own[] = {"Installer", "Foreman",   "Apprentice", "Heron",
                                        "Lane",      "boathouse", "demo",       "invented",
                                        "bead",      "missing"};  // why it was sent back
    return std::find(std::begin(own), std::end(own), word) != std::end(own);
}

/// What others named or wrote, and no catalogue says: parts, licenses and their notices.
std::set<std::string> words_of_others() {
    std::set<std::string> words;
    for (const Notice& one : assets_read().notices) {
        words.insert(one.part + ' ' + one.version);
        words.insert(one.license);
        for (std::string& paragraph : paragraphs_of(one.text)) {
            words.insert(std::move(paragraph));
        }
    }
    return words;
}

/// Words of four letters and more that no catalogue said: they have a vowel without an accent.
std::string not_said(const Ui& ui, const std::set<std::string>& of_others) {
    std::string faults;
    const auto look = [&](std::string words) {
        // Names of folders come from the machine and are not translated.
        for (const char* const folder : {"\"/", "\"hemline-"}) {
            for (std::size_t at = words.find(folder); at != words.npos; at = words.find(folder)) {
                words.erase(at, words.find('"', at + 1) + 1 - at);
            }
        }
        // So is the commit that was built.
        const std::string commit(program_version().commit);
        if (const std::size_t at = commit.empty() ? words.npos : words.find(commit);
            at != words.npos) {
            words.erase(at, commit.size());
        }
        std::string word;
        for (const char c : words + " ") {
            const auto byte = static_cast<unsigned char>(c);
            if (std::isalpha(byte) != 0 || byte >= 0x80 || c == '_') {
                word += c;
                continue;
            }
            if (word.size() >= 4 && word.find_first_of("aeiouAEIOU") != word.npos &&
                !is_own(word)) {
                faults += "\"" + word + "\" in \"" + words + "\" is not in the catalogue\n";
            }
            word.clear();
        }
    };
    for (const Words& words : ui.words()) {
        if (of_others.count(words.words) == 0) {
            look(words.words);
        }
    }
    for (const Target& target : ui.targets()) {
        if (target.name != "language" && of_others.count(target.label) == 0) {
            look(target.label);
        }
    }
    return faults;
}

/// The four small pages of tablets, 7 and 8 in, lying and upright, in mm (layout_test.cpp).
constexpr Size2 small_pages_mm[] = {{150, 90}, {90, 150}, {172, 108}, {108, 172}};

/// A crew on a page that small, in the first, second or third language.
struct SmallPage {
    Journey crew;
    SmallPage(Size2 mm, int language) {
        for (int i = 0; i < language; ++i) {
            crew.tap("language");
        }
        crew.tap("demo");
        crew.read_edge("C", feet(15) + inches(8) + sixteenths(8),
                       feet(15) + inches(8) + sixteenths(7), "5");
        crew.screen->resize(mm.w * px_per_mm_unknown, mm.h * px_per_mm_unknown);
        crew.screen->frames(3);
    }
    /// Words of that height and more are in sight above the actions.
    [[nodiscard]] bool shows_whole(const std::string& words, float h) const {
        const Ui& ui = crew.screen->ui();
        const float floor = crew.screen->target("leave").y;
        return std::any_of(ui.words().begin(), ui.words().end(), [&](const Words& one) {
            const bool is_it = one.words == words || (one.words.size() > words.size() &&
                                                      one.words.find(words) != std::string::npos);
            return is_it && one.box.h >= h - 1 && one.box.bottom() <= floor;
        });
    }
};

}  // namespace

TEST_CASE("On 7 and 8 in no card can be cut before all its marks were in sight, in any language" *
          doctest::test_suite("long")) {
    const LongerLanguage language;
    for (const Size2 page : small_pages_mm) {
        for (const int spoken : {0, 1, 2}) {
            SmallPage small(page, spoken);
            Journey& crew = small.crew;
            const Ui& ui = crew.screen->ui();
            for (const int piece : {1, 2}) {
                CAPTURE(page.w);
                CAPTURE(spoken);
                crew.reach_card("C", TrimRole::main, piece);
                const auto card = card_in_hand(crew.state(), crew.where());
                REQUIRE(card.ok());
                std::set<std::string> wanted, seen;
                for (const MarkLabel& label : labels_of(*card)) {
                    wanted.insert(print_length(label.at, Marks::sixteenth));
                }
                for (int i = 0; i < 20; ++i) {
                    for (const std::string& value : wanted) {
                        if (small.shows_whole(value, ui.figure_height(Size::bold))) {
                            seen.insert(value);
                        }
                    }
                    // The tape of the outline, and what is saved.
                    CHECK(small.shows_whole(ui.in_words(say("{1} ft", 6)),
                                            ui.line_height(Size::small)));
                    CHECK(small.shows_whole(ui.in_words(crew.state().saved),
                                            ui.line_height(Size::small)));
                    CHECK(faults_of(ui) == "");
                    CHECK(crew.screen->has_target("cut") != crew.screen->has_target("below"));
                    if (crew.screen->has_target("cut")) {
                        break;
                    }
                    crew.screen->tap("below");
                }
                CHECK(crew.screen->has_target("cut"));
                CHECK(seen == wanted);
                crew.tap("cut");
            }
        }
    }
}

TEST_CASE("On 7 and 8 in what is done in one go is said done after its last line, in any language" *
          doctest::test_suite("long")) {
    const LongerLanguage language;
    for (const Size2 page : small_pages_mm) {
        for (const int spoken : {0, 1, 2}) {
            SmallPage small(page, spoken);
            Journey& crew = small.crew;
            crew.reach_card("C", TrimRole::main, 2);
            crew.tap("cut");
            CAPTURE(page.w);
            CAPTURE(spoken);
            const std::vector<Step> steps = steps_on(crew.state(), crew.work("C"));
            const std::vector<std::size_t> together =
                confirmed_with(steps, next_on(crew.state(), steps).value());
            REQUIRE(together.size() > 1);
            std::set<std::string> wanted, seen;
            for (const std::size_t row : together) {
                wanted.insert("open " + steps[row].rule->id + " " +
                              std::to_string(steps[row].piece));
            }
            for (int i = 0; i < 20; ++i) {
                for (const std::string& name : crew.screen->names()) {
                    if (wanted.count(name) > 0) {
                        seen.insert(name);
                    }
                }
                if (crew.screen->has_target("all so")) {
                    break;
                }
                crew.screen->tap("below");
            }
            CHECK(crew.screen->has_target("all so"));
            CHECK(seen == wanted);
        }
    }
}

TEST_CASE("Every screen in Spanish has room for a glove, and its words are on the page" *
          doctest::test_suite("large")) {
    Journey crew;
    crew.tap_all({"by", "tablet", "units", "leave", "language"});  // with both units on
    CHECK(crew.state().language == "es");
    Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    CHECK(inspection.seen.size() > 40);
}

TEST_SUITE_BEGIN("large");

TEST_CASE("Words 40 % longer find room on every screen, and none is missing from the catalogue") {
    const LongerLanguage language;
    Journey crew;
    crew.tap_all({"by", "tablet", "units", "leave", "language", "language"});  // with both units on
    CHECK(crew.state().language == "x-long");
    const std::set<std::string> of_others = words_of_others();
    Inspection inspection{crew, {{1280, 800}, {800, 1280}}, {}, [&](const Ui& ui) {
                              return faults_of(ui) + not_said(ui, of_others);
                          }};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    CHECK(inspection.seen.size() > 40);
}

TEST_CASE("Strips, caps and panels have room in Spanish and in words 40 % longer") {
    const LongerLanguage language;
    for (void (*walk_past)(Journey&) : {walk_meets, walk_panels}) {
        for (const bool longer : {false, true}) {
            Journey crew;
            crew.tap("language");
            std::vector<Size2> sizes{{1280, 800}, {800, 1280}};
            if (longer) {
                crew.tap("language");
            } else {
                sizes.insert(sizes.end(), {{885, 531}, {531, 885}});
            }
            Inspection inspection{crew, sizes, {}};
            crew.on_screen = [&] { inspection.look(); };
            walk_past(crew);
            CHECK(inspection.seen.size() > 30);
        }
    }
}

TEST_SUITE_END();

TEST_CASE(
    "The languages are those of the words folder, each by its name, and after the last English") {
    const LongerLanguage language;
    Journey crew;
    std::vector<std::string> offered;
    for (int i = 0; i < 3; ++i) {
        for (const Target& target : crew.screen->ui().targets()) {
            if (target.name == "language") {
                offered.push_back(target.label);
            }
        }
        crew.tap("language");
    }
    CHECK(offered == std::vector<std::string>{"Español", "Lóngér", "English"});
    CHECK(crew.state().language == "en");
}

TEST_CASE("A journal holds the same bytes whatever the tablet speaks") {
    const auto record = [](bool spanish) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap("demo");
        crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
        crew.finish_edge("C");
        std::string facts;
        for (const Event& event : crew.state().events) {
            facts += describe(event.fact).english() + "\n";
        }
        CHECK(crew.status("C") == EdgeStatus::finished);
        return facts;
    };
    CHECK(record(false) == record(true));
}

TEST_CASE("The English word stands beside the Spanish one where an edge is met, and not after") {
    Journey crew;
    crew.tap_all({"language", "demo", "edge C"});
    CHECK(shows(crew, "Alero (eave) C"));
    crew.key_in(feet(15) + inches(8));
    crew.tap("keep");
    CHECK(shows(crew, "Alero C"));
    CHECK_FALSE(shows(crew, "(eave)"));
    crew.key_in(feet(15) + inches(8));
    crew.tap("keep");
    CHECK_FALSE(shows(crew, "(eave)"));  // the pitch
    crew.tap_all({"digit 5", "keep"});
    crew.reach_card("C", TrimRole::main, 1);
    CHECK_FALSE(shows(crew, "(eave)"));
}

TEST_CASE("Installer, apprentice and foreman finish an edge in either language, each by name") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap("demo");
        crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
        crew.reach_card("C", TrimRole::main, 1);
        crew.tap_all({"cut", "leave", "person Apprentice", "edge C"});
        crew.reach_step("C", "tick");
        crew.tap_all({"leave", "person Foreman", "edge C"});
        const auto& words = crew.screen->ui().words();
        const std::string title = spanish ? "Alero (eave) C · sus valores" : "Eave C · its values";
        CHECK(std::any_of(words.begin(), words.end(),
                          [&](const Words& one) { return one.words == title; }));
        crew.tap("tick");
        CHECK(crew.status("C") == EdgeStatus::finished);
        std::set<std::string> people;
        for (const Event& event : crew.state().events) {
            people.insert(event.by);
        }
        CHECK(people == std::set<std::string>{"Apprentice", "Foreman", "Installer"});
    }
}
