// The tablet in Spanish, and in a language made up for the test whose words are 40 % longer: every
// sentence on every screen is one of the catalogue's, and none is cut short.
#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "field/store/folders.h"
#include "field/words/po_file.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;

constexpr std::string_view mark = "~";

/// 40 % more letters, all of them marks: one before, the others after.
std::string longer(const std::string& english) {
    std::size_t letters = 0;
    bool in_value = false;
    for (const char c : english) {
        in_value = c == '{' || (in_value && c != '}');
        letters += !in_value && std::isalpha(static_cast<unsigned char>(c)) != 0 ? 1 : 0;
    }
    if (letters == 0) {
        return english;
    }
    const std::size_t more = (letters * 2 + 4) / 5;
    const std::string after =
        more < 4 ? std::string(more - 1, '~') : " " + std::string(more - 2, '~');
    return "~" + english + after;
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

/// An assets folder whose Spanish is the longer language, for as long as this lives.
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
        std::ofstream out(folder_.path() / "words" / "es.po", std::ios::binary);
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
                    << "\n\n";
            }
        }
        out.close();
        before_ = std::getenv("HEMLINE_ASSETS");
        ::setenv("HEMLINE_ASSETS", folder_.path().c_str(), 1);
    }
    ~LongerLanguage() { ::setenv("HEMLINE_ASSETS", before_.c_str(), 1); }
    LongerLanguage(const LongerLanguage&) = delete;
    LongerLanguage& operator=(const LongerLanguage&) = delete;

  private:
    TemporaryFolder folder_;
    std::string before_;
};

/// Words with four letters and more that no catalogue said: names and paths are people's own.
std::string not_said(const Ui& ui) {
    std::string faults;
    const auto look = [&](const std::string& words) {
        std::size_t letters = 0;
        for (const char c : words) {
            letters = std::isalpha(static_cast<unsigned char>(c)) != 0 ? letters + 1 : 0;
            if (letters == 4) {
                break;
            }
        }
        // Names of people and of the demo job are their own.
        const bool is_name = words.find("Installer") != words.npos ||
                             words.find("Foreman") != words.npos ||
                             words.find("(demo, invented)") != words.npos;
        if (letters == 4 && !is_name && words.find(mark) == std::string::npos) {
            faults += "\"" + words + "\" is not in the catalogue\n";
        }
    };
    for (const Words& words : ui.words()) {
        look(words.words);
    }
    for (const Target& target : ui.targets()) {
        if (target.name != "language") {
            look(target.label);
        }
    }
    return faults;
}

}  // namespace

TEST_CASE("Every screen in Spanish has room for a glove, and its words are on the page") {
    Journey crew;
    crew.tap("language");
    CHECK(crew.state().language == Language::spanish);
    Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    CHECK(inspection.seen.size() > 40);
}

TEST_CASE("Words 40 % longer find room on every screen, and none is missing from the catalogue") {
    const LongerLanguage language;
    Journey crew;
    crew.tap("language");
    Inspection inspection{crew, {{1280, 800}, {800, 1280}}, {}, [](const Ui& ui) {
                              return faults_of(ui) + not_said(ui);
                          }};
    inspection.look();
    crew.on_screen = [&] { inspection.look(); };
    walk(crew);
    CHECK(inspection.seen.size() > 40);
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
        const std::string title = spanish ? "Alero C · sus valores" : "Eave C · its values";
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
