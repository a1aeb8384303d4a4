// What comes out of a printer: the command line's pages through Chromium to a PDF, read back with
// poppler's pdftotext and pdfinfo.
#include <doctest/doctest.h>

#include <ctime>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

const std::string house =
    "edge,kind,trim,length,left,right,pitch,pitch2,corner_left\n"
    "A,eave,,46 ft 3 7/8 in,gable,gable,5/12,,\n"
    "H,hip,,23 ft 7 15/16 in,eave,ridge,8/12,10/12,90\n"
    "G,gable,,12 ft 1/16 in,eave,ridge,5/12,,\n";

/// A page of a printed file, as its words stand on the paper.
struct Printed {
    std::vector<std::string> pages;
    std::string path;

    [[nodiscard]] std::string all() const {
        std::string text;
        for (const std::string& page : pages) {
            text += page;
        }
        return text;
    }
};

Printed print_page(const Desk& desk, const std::string& html) {
    Printed printed;
    printed.path = (desk.folder() / (html + ".pdf")).string();
    printed_by("HOME='" + desk.folder().string() +
               "' chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer "
               "--print-to-pdf='" +
               printed.path + "' 'file://" + (desk.folder() / html).string() + "' 2>/dev/null");
    std::stringstream text(printed_by("pdftotext -layout '" + printed.path + "' -"));
    for (std::string page; std::getline(text, page, '\f');) {
        printed.pages.push_back(page);
    }
    const std::string info = printed_by("pdfinfo '" + printed.path + "'");
    CHECK(info.find("Pages:           " + std::to_string(printed.pages.size()) + "\n") !=
          std::string::npos);
    return printed;
}

/// "29 Nov 2026", as the program writes today.
std::string today_written() {
    const std::time_t now = std::time(nullptr);
    char text[32];
    std::strftime(text, sizeof text, "%e %b %Y", std::localtime(&now));
    return text[0] == ' ' ? text + 1 : text;
}

/// Job, day, edge and "page n of m" on each sheet, and something below them.
void check_heads(const Printed& printed, const std::string& job, const std::string& day,
                 const std::string& about) {
    REQUIRE(!printed.pages.empty());
    for (std::size_t i = 0; i < printed.pages.size(); ++i) {
        const std::string& page = printed.pages[i];
        INFO(page);
        CHECK(has(page, job));
        CHECK(has(page, day));
        CHECK(has(page, about));
        CHECK(has(page,
                  "page " + std::to_string(i + 1) + " of " + std::to_string(printed.pages.size())));
        CHECK(page.size() > 200);
    }
}

/// The boxes of a page's words, by poppler.
struct Word {
    double x0, y0, x1, y1;
    std::string text;
};

/// No word overlaps another by more than a point, which letters may.
void check_nothing_overprints(const Printed& printed) {
    const std::string xml = printed_by("pdftotext -bbox '" + printed.path + "' -");
    std::vector<Word> words;
    const std::regex line(
        "(<page )|<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" "
        "yMax=\"([-0-9.]+)\">(.*?)</word>");
    std::size_t compared = 0;
    for (std::sregex_iterator it(xml.begin(), xml.end(), line), end; it != end; ++it) {
        if ((*it)[1].matched) {
            words.clear();
            continue;
        }
        const Word word{std::stod((*it)[2]), std::stod((*it)[3]), std::stod((*it)[4]),
                        std::stod((*it)[5]), (*it)[6]};
        for (const Word& other : words) {
            const double wide = std::min(word.x1, other.x1) - std::max(word.x0, other.x0);
            const double tall = std::min(word.y1, other.y1) - std::max(word.y0, other.y0);
            CHECK_MESSAGE(!(wide > 1 && tall > 2),
                          word.text << " on " << other.text << " in " << printed.path);
            ++compared;
        }
        words.push_back(word);
    }
    CHECK(compared > 100);
}

const std::regex an_id("[0-9a-f]{16}");

}  // namespace

// A newcomer need not have a browser: tools/test all runs these.
TEST_SUITE_BEGIN("full");

TEST_CASE("a printed card is one sheet with its head, whole lengths and waste only where cut") {
    const Desk desk;
    const std::string file = desk.write("heron lane.csv", house);
    for (const char* edge : {"A", "H", "G"}) {
        REQUIRE(desk.run({"card", file, edge, "1", "--html", "card.html"}).exit == 0);
        const Printed card = print_page(desk, "card.html");
        CHECK(card.pages.size() == 1);
        check_heads(card, "heron lane", today_written(), std::string("Edge ") + edge);
        check_nothing_overprints(card);
        CHECK(has(card.all(), "none"));
        std::istringstream lines(card.all());
        for (std::string line; std::getline(lines, line);) {
            const bool seen = has(line, "lap line") || has(line, "bead line") ||
                              has(line, "tab fold") || has(line, "corner point");
            CHECK_MESSAGE(!(seen && (has(line, "to the left") || has(line, "to the right"))), line);
            CHECK_MESSAGE(!(has(line, "lap line") && !has(line, "none")), line);
        }
        CHECK_FALSE(has(card.all(), "_"));
    }
}

TEST_CASE("no length on a printed card is broken, on either paper") {
    const Desk desk;
    const std::string file = desk.write("a.csv", house);
    for (const char* paper : {"letter", "a4"}) {
        const Ran ran = desk.run({"card", file, "A", "1", "--json"});
        REQUIRE(desk.run({"card", file, "A", "1", "--html", "card.html", "--paper", paper}).exit ==
                0);
        const std::string text = print_page(desk, "card.html").all();
        const nlohmann::json card = ran.json();
        for (const auto& mark : card["marks"]) {
            CHECK(has(text, mark["at"].get<std::string>()));
        }
        CHECK(has(text, "Cut " + card["cut"].get<std::string>()));
        // All of the screws', wherever their line is broken.
        std::size_t whole = 0;
        const std::regex screw("([0-9]+ ft )?[0-9]+( [0-9]+/[0-9]+)? in[,.]");
        for (std::sregex_iterator it(text.begin(), text.end(), screw), end; it != end; ++it) {
            ++whole;
        }
        CHECK(whole == ran.json()["screws_nm"].size());
    }
}

TEST_CASE("printed templates are numbered through, none is empty and no number lies on another") {
    const Desk desk;
    const std::string file = desk.write("heron lane.csv", house);
    for (const char* edge : {"A", "H", "G"}) {
        for (const char* paper : {"letter", "a4"}) {
            REQUIRE(desk.run({"pattern", file, edge, "1", "--html", "ends.html", "--paper", paper})
                        .exit == 0);
            const Printed ends = print_page(desk, "ends.html");
            check_heads(ends, "heron lane", today_written(), std::string("Edge ") + edge);
            check_nothing_overprints(ends);
            CHECK_FALSE(has(ends.all(), "eave_rolled"));
        }
    }
}

TEST_CASE("a printed day of many lines has its head on every sheet and no id on any") {
    const Desk desk;
    const std::string file = desk.write("roof.csv", house);
    REQUIRE(desk.run({"new", "Heron Lane", "--by", "Ada", "--from", file}).exit == 0);
    for (int i = 0; i < 45; ++i) {
        const std::string name = "Worker with a long name number " + std::to_string(i);
        REQUIRE(desk.run({"take", "Heron Lane", "A", "46 ft 3 7/8 in", "--by", name}).exit == 0);
    }
    const std::time_t now = std::time(nullptr);
    char day[16];
    std::strftime(day, sizeof day, "%Y-%m-%d", std::localtime(&now));
    REQUIRE(desk.run({"day", "Heron Lane", day, "--html", "day.html"}).exit == 0);
    const Printed sheet = print_page(desk, "day.html");
    CHECK(sheet.pages.size() >= 2);
    check_heads(sheet, "Heron Lane", today_written(), "Day sheet");
    check_nothing_overprints(sheet);
    CHECK_FALSE(std::regex_search(sheet.all(), an_id));
}

TEST_CASE("a packed job's page prints with its head on every sheet, whole lengths and no ids") {
    const Desk desk;
    const std::string file = desk.write("roof.csv", house);
    REQUIRE(desk.run({"new", "Heron Lane", "--by", "Ada", "--from", file}).exit == 0);
    for (int i = 0; i < 45; ++i) {
        REQUIRE(desk.run({"take", "Heron Lane", "A", "46 ft 3 7/8 in", "--by", "Ben"}).exit == 0);
    }
    REQUIRE(desk.run({"pack", "Heron Lane", "job.zip"}).exit == 0);
    const std::string folder = desk.folder().string();
    printed_by("cd '" + folder + "' && unzip -oq job.zip job.html");
    const Printed page = print_page(desk, "job.html");
    CHECK(page.pages.size() >= 3);
    check_heads(page, "Heron Lane", "as of 20", "");
    check_nothing_overprints(page);
    CHECK_FALSE(std::regex_search(page.all(), an_id));
    std::size_t lengths = 0;
    const std::string text = page.all(), length = "46 ft 3 7/8 in";
    for (std::size_t at = text.find(length); at != std::string::npos;
         at = text.find(length, at + 1)) {
        ++lengths;
    }
    CHECK(lengths >= 2 * 46);  // each reading, and each event of it
}

TEST_SUITE_END();
