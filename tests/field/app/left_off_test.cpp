// Where the program was left outlives the program, with what was half keyed in; a text that is torn
// or hostile loses nothing that was recorded.
#include "field/app/left_off_text.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cstdio>
#include <random>

#include "engine/record/bytes.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// Half a reading of edge B.
void key_half(Journey& crew) {
    crew.tap_all({"demo", "edge B", "digit 3", "digit 9", "field inches", "inches 11"});
}

void start_with(Journey& crew, const std::string& text) {
    crew.left_off = text;
    crew.kill();
}

/// As the program prints it, with lines of one's own.
std::string with_sum(const std::string& lines) {
    const std::string text = "format 2\n" + lines;
    const auto* const bytes = reinterpret_cast<const std::uint8_t*>(text.data());
    char sum[16];
    std::snprintf(sum, sizeof sum, "sum %08x\n",
                  static_cast<unsigned>(crc32_of({bytes, text.size()})));
    return text + sum;
}

}  // namespace

TEST_CASE("The job opens where it was left, with what was half keyed in") {
    Journey crew;
    key_half(crew);
    crew.kill();
    CHECK(crew.where().screen == Screen::reading);
    CHECK(crew.where().edge == "B");
    CHECK(crew.work("B").readings.empty());  // a draft is no reading
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == feet(39) + inches(11));
    crew.kill();
    CHECK(crew.work("B").readings.size() == 1);
    CHECK_FALSE(crew.screen->has_target("keep"));  // nothing is keyed in for the second reading
}

TEST_CASE("A job left for days opens there too; one that is gone leaves the list of jobs") {
    constexpr std::int64_t day_ms = 86'400'000;
    Journey crew;
    key_half(crew);
    crew.wall_ms += 3 * day_ms;
    crew.kill();
    CHECK(crew.where().screen == Screen::reading);
    const std::filesystem::path job = crew.job();
    crew.screen.reset();
    crew.app.reset();
    std::filesystem::remove_all(job);
    crew.kill();
    CHECK(crew.where().screen == Screen::jobs);
    CHECK(crew.state().jobs.empty());
    CHECK(left_off_in(crew.left_off)->job.empty());  // and is forgotten
    crew.tap_all({"demo", "edge B"});                // a new job under the same name
    CHECK_FALSE(crew.screen->has_target("keep"));
}

TEST_CASE("An edge that was withdrawn opens the roof, and what waited there is forgotten") {
    Journey crew;
    key_half(crew);
    const std::string at_it = crew.left_off;
    crew.tap_all({"leave", "edge A"});
    const std::string elsewhere = crew.left_off;
    REQUIRE(elsewhere.find("edge_at B") != std::string::npos);
    crew.tap_all({"leave", "add edge", "change one", "change B", "take off"});
    start_with(crew, elsewhere);
    CHECK(crew.where().edge == "A");
    CHECK(crew.left_off.find("edge_at B") == std::string::npos);
    start_with(crew, at_it);
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.left_off.find("edge_at B") == std::string::npos);
}

TEST_CASE("A job asked for by name is opened, and what was left in another waits there") {
    Journey crew;
    key_half(crew);
    crew.tap_all({"leave", "jobs", "new job", "letter H", "keep name", "kind eave"});
    const std::string left = crew.left_off;
    const auto jobs = crew.state().jobs;
    crew.screen.reset();
    crew.app.reset();
    const auto demo = std::find_if(jobs.begin(), jobs.end(),
                                   [](const auto& job) { return job.filename().string() != "H"; });
    REQUIRE(demo != jobs.end());
    crew.open_job(*demo);
    crew.app->go_back_to(left);
    crew.screen->frames();
    CHECK(crew.where().screen == Screen::roof);
    crew.tap_all({"edge B", "keep"});
    CHECK(crew.last<ReadingTaken>().length == feet(39) + inches(11));
    crew.tap_all({"leave", "jobs", "job H", "add edge"});
    CHECK(crew.screen->has_target("left end gable"));  // its kind was said
}

TEST_CASE("What was left is read again as it was printed, and other texts are nothing") {
    CHECK(rc::check([] {
        LeftOff left;
        left.job = "/jobs/A roof 2";
        left.where = {Screen::steps,        "B",
                      TrimRole::wrap,       *rc::gen::inRange(0, 99),
                      ReadingOf::remainder, *rc::gen::inRange(0, 99)};
        left.drafts.step.length.feet = std::to_string(*rc::gen::inRange(0, 999));
        left.drafts.step.length.inches = *rc::gen::inRange(0, 12);
        left.drafts.reading.length.typed = "31-7-5/8";
        left.aside.assign(*rc::gen::inRange<std::size_t>(0, aside_most + 1), left);
        const std::optional<LeftOff> back = left_off_in(print_left_off(left));
        RC_ASSERT(back.has_value());
        RC_ASSERT(back->aside.size() == left.aside.size());
        RC_ASSERT(print_left_off(*back) == print_left_off(left));
    }));
    CHECK(rc::check([](const std::string& text) { RC_ASSERT(!left_off_in(text)); }));
    CHECK(left_off_in(with_sum("place 1\n")));
    for (const char* const text : {"place 999\n", "place -1\n", "role 9\n"}) {
        CHECK_FALSE(left_off_in(with_sum(text)));
    }
    CHECK_FALSE(left_off_in("format 1\nplace 1\nrole 0\nreading_of 0\nnotation 0\n"));
}

TEST_CASE("Torn at any length, or with any byte otherwise, it is nothing, and that is said") {
    Journey crew;
    key_half(crew);
    const std::string text = crew.left_off;
    const std::size_t events = crew.state().events.size();
    for (std::size_t size = 0; size < text.size(); ++size) {
        CAPTURE(size);
        CHECK_FALSE(left_off_in(text.substr(0, size)));
        std::string other = text;
        other[size] = static_cast<char>(other[size] ^ 1);
        CHECK_FALSE(left_off_in(other));
    }
    start_with(crew, text.substr(0, text.size() / 2));
    CHECK(crew.where().screen == Screen::jobs);
    CHECK(crew.state().notice.english().find("cannot be read back") != std::string::npos);
    crew.tap("job " + crew.job().filename().string());
    CHECK(crew.state().events.size() == events);
}

TEST_CASE("A hostile text shows some screen of the job, and writes nothing") {
    Journey crew;
    crew.tap("demo");
    const std::size_t events = crew.state().events.size();
    const std::string job = "job " + crew.job().string() + "\n";
    std::mt19937 chance(17);
    const auto below = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(chance); };
    std::vector<std::string> keys;
    for (const char* key :
         {"piece",        "stick_at",     "reading.feet",    "reading.inches", "reading.which",
          "step.of",      "step.count",   "step.singly",     "folded.step",    "section.leg",
          "section.bend", "section.hem",  "section.degrees", "on_hand.sticks", "on_hand.corrects",
          "edge",         "edge.asked",   "edge.answered",   "edge.choosing",  "walk.asks",
          "walk.host",    "walk.runs_in", "walk.degrees",    "shape.shape",    "shape.asked",
          "rule.key",     "rule.feet",    "day.ms",          "gate.found",     "gate.page",
          "apart.chosen", "pitch.number", "tilt.first",      "person.letters"}) {
        keys.push_back(key);
    }
    const std::vector<std::string> values = {
        "0",  "1",   "-1", "3",    "999",  "99999999999999",
        "zz", "1.5", "B",  "1-17", "sill", "yyyyyyyyyyyyyyyyyyy"};
    for (int i = 0; i < 300; ++i) {
        std::string lines = below(3) == 0 ? "" : job;
        lines += "place " + std::to_string(below(40)) + "\n";
        lines += "edge_at " + std::string(1, static_cast<char>('A' + below(16))) + "\n";
        for (int k = 0; k < 6; ++k) {
            lines += keys[static_cast<std::size_t>(below(static_cast<int>(keys.size())))] + " " +
                     values[static_cast<std::size_t>(below(static_cast<int>(values.size())))] +
                     "\n";
        }
        CAPTURE(lines);
        crew.app->go_back_to(with_sum(lines));
        crew.screen->frames(2);
        REQUIRE(crew.state().events.size() == events);
    }
}

TEST_CASE("A bend, a hem, a tilt and a half described edge are kept as they were keyed in") {
    LeftOff left;
    left.job = "A roof";
    Drafts& drafts = left.drafts;
    drafts.section.bend = 2;
    drafts.section.degrees = "13.5";
    drafts.section.hem_kind = Hem::tear_drop;
    drafts.tilt.first = {{1.5, -0.25}, {1.75, 0.5}};
    drafts.edge.edge.id = "C2";
    drafts.edge.edge.kind = EdgeKind::gable;
    drafts.edge.edge.left = End::corner_out;
    drafts.edge.edge.corner_left = Angle::of_microdegrees(91'500'000);
    drafts.edge.asked = EdgeField::right;
    drafts.edge.name.letters = "Dormer";
    drafts.send_back.reason.letters = "bead missing";
    drafts.on_hand.corrects = EventId{7, 12};
    drafts.on_hand.sticks = 4;
    drafts.folded.end = Side::right;
    const std::optional<LeftOff> back = left_off_in(print_left_off(left));
    REQUIRE(back);
    CHECK(back->drafts.section.bend == 2);
    CHECK(back->drafts.section.degrees == "13.5");
    CHECK(back->drafts.section.hem_kind == Hem::tear_drop);
    REQUIRE(back->drafts.tilt.first.size() == 2);
    CHECK(back->drafts.tilt.first[0].gamma == -0.25);
    CHECK(back->drafts.edge.edge == drafts.edge.edge);
    CHECK(back->drafts.edge.asked == EdgeField::right);
    CHECK(back->drafts.edge.name.letters == "Dormer");
    CHECK(back->drafts.send_back.reason.letters == "bead missing");
    CHECK(back->drafts.on_hand.corrects == EventId{7, 12});
    CHECK(back->drafts.on_hand.sticks == 4);
    CHECK(back->drafts.folded.end == Side::right);
}

TEST_CASE("A draft that says what no section or edge has is as if nothing were keyed in") {
    const std::optional<LeftOff> left = left_off_in(with_sum(
        "place 23\nsection.leg 65\nsection.hem_kind 9\nedge zz\nedge.asked 99\ntilt.first x\n"));
    REQUIRE(left);
    CHECK(left->drafts.section.leg == -1);
    CHECK_FALSE(left->drafts.section.hem_kind);
    CHECK(left->drafts.edge.edge == Edge());
    CHECK(left->drafts.tilt.first.empty());
}
