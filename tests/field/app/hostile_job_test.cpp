// A job that means harm, on a tablet: whatever is touched, every word on the screen, in the mirror
// for a screen reader and on paper is shown as text.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>

#include "engine/handover/day_page.h"
#include "engine/handover/job_pages.h"
#include "engine/handover/piece_papers.h"
#include "engine/handover/svg.h"
#include "engine/work/day_sheet.h"
#include "field/shell/targets_file.h"
#include "tests/field/app/journey.h"
#include "tests/hostile_job.h"

using namespace hemline;
using test::hostile;
using test::HostileJob;
using test::not_plain;

namespace {

/// Words and labels on the screen that are not plain text, one on each line.
std::string unplain_words(const Ui& ui) {
    std::string wrong;
    for (const Words& words : ui.words()) {
        wrong += is_plain(words.words) ? "" : shown_text(words.words) + "\n";
    }
    for (const Target& target : ui.targets()) {
        wrong += shown_lines(target.label) == target.label ? "" : shown_text(target.label) + "\n";
    }
    return wrong;
}

bool shows_an_escape(const Ui& ui) {
    return std::any_of(ui.words().begin(), ui.words().end(), [](const Words& words) {
        return words.words.find("\\u001B") != std::string::npos;
    });
}

}  // namespace

TEST_CASE("Whatever is touched of a job that means harm, each screen shows its words as text" *
          doctest::test_suite("large")) {
    Journey crew;
    HostileJob().write(crew.folder.path() / hostile("house"));
    std::ofstream(crew.outside.path() / (hostile("sent") + ".hemline.zip")) << "no zip";
    std::mt19937 any(12);  // as it falls, the same each time
    std::set<Screen> looked_at, escaped;
    crew.tap_all({"by", "leave"});  // back on the jobs, which are listed again
    const std::vector<std::string> jobs = crew.screen->names();
    const auto house = std::find_if(jobs.begin(), jobs.end(), [](const std::string& name) {
        return name.find("house") != std::string::npos;
    });
    REQUIRE(house != jobs.end());
    crew.tap(*house);
    for (int touch = 0; touch < 4000; ++touch) {
        const std::vector<std::string> names = crew.screen->names();
        REQUIRE(!names.empty());
        // Back to the roof now and then: a hand that touches anything ends up where there is no way
        // on.
        const bool can_go_back = touch % 10 == 0 && crew.screen->has_target("back");
        crew.screen->tap(can_go_back ? "back" : names[any() % names.size()]);
        crew.screen->frames(2);
        const Ui& ui = crew.screen->ui();
        const Screen place = crew.where().screen;
        looked_at.insert(place);
        if (shows_an_escape(ui)) {
            escaped.insert(place);
        }
        const std::string wrong = unplain_words(ui);
        REQUIRE_MESSAGE(wrong.empty(), "screen " << static_cast<int>(place) << ":\n" << wrong);
        const std::string targets = targets_json(ui.targets(), 1);
        REQUIRE_MESSAGE(not_plain(targets).empty(), not_plain(targets));
    }
    MESSAGE(looked_at.size() << " kinds of screen, " << escaped.size()
                             << " of them with hostile words");
    CHECK(looked_at.size() >= 12);
    CHECK(escaped.size() >= 4);
}

TEST_CASE("Paper, in both languages, shows the words of a job that means harm as text") {
    const HostileJob hostile_job;
    const Assets assets = assets_read();
    const Job job = replay(hostile_job.events(), assets.practice);
    const PageWords spanish = {
        "es", [&](const Text& text) { return language_of(assets, "es").of(text); }};
    const DaySheet sheet = day_sheet(job, hostile_job.events(), {0, INT64_MAX});
    const auto clock = [](WallTime) { return std::string("08:00"); };
    for (const PageWords& words : {PageWords(), spanish}) {
        const std::string day = day_page(sheet, Text("4 May"), Paper::letter, clock, {}, words);
        CHECK(day.find("\\u001B") != std::string::npos);
        CHECK_MESSAGE(not_plain(day).empty(), not_plain(day));
        Card card;
        card.edge = HostileJob::edge();
        card.trim = hostile("trim");
        card.trim_name = Text(hostile("name"));
        card.waits_for = say("Wait for {1}.", HostileJob::edge());
        const std::string page = card_page(card, {}, Marks::sixteenth,
                                           {hostile("job"), Text("4 May")}, Paper::a4, words);
        CHECK(page.find("\\u001B") != std::string::npos);
        CHECK_MESSAGE(not_plain(page).empty(), not_plain(page));
    }
    for (const auto& made : pages_of(hostile_job.events(), assets.practice)) {
        const std::string &name = made.first, &page = made.second;  // clang 14 captures no binding
        CHECK_MESSAGE(page.find("\\u001B") != std::string::npos, name);
        std::string lines = page;
        lines.erase(std::remove(lines.begin(), lines.end(), '\r'), lines.end());
        CHECK_MESSAGE(not_plain(lines).empty(), name << ": " << not_plain(lines));
    }
    CHECK(xml_text(hostile("<b>")).find('<') == std::string::npos);
}
