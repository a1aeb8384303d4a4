// Nothing keyed is lost: by touch, what is half keyed in waits where it was keyed in, until it is
// kept, whatever is done in between: leaving the screen, turning the tablet, a kill.
#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <random>

#include "field/app/left_off_text.h"
#include "field/store/left_off_file.h"
#include "tests/field/app/journey.h"
#include "tests/field/store/home.h"

using namespace hemline;

namespace {

/// What is half keyed in where the crew is.
std::string here(const Journey& crew) {
    LeftOff left = crew.app->left_off();
    left.aside.clear();
    return print_left_off(left);
}

std::string nothing_here(const Journey& crew) {
    LeftOff left = crew.app->left_off();
    left.aside.clear();
    left.drafts = {};
    return print_left_off(left);
}

using Taps = std::vector<std::string>;

/// Keys in `half`, goes away by `away` and comes back by `back`.
void check_waits(Journey& crew, const Taps& half, const Taps& away, const Taps& back) {
    const std::size_t events = crew.state().events.size();
    crew.tap_all(half);
    const std::string keyed = here(crew);
    REQUIRE(keyed != nothing_here(crew));
    crew.tap_all(away);
    crew.tap_all(back);
    CHECK(here(crew) == keyed);
    crew.tap_all(away);
    crew.kill();
    crew.tap_all(back);
    CHECK(here(crew) == keyed);
    CHECK(crew.state().events.size() == events);  // a draft is no event
}

void read_c(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.tap("leave");
}

/// A new job, where its first edge is asked.
void start_house(Journey& crew) { crew.tap_all({"new job", "letter H", "keep name"}); }

}  // namespace

TEST_CASE("A reading half keyed waits on its edge, and counts when it is kept") {
    Journey crew;
    crew.tap("demo");
    check_waits(crew, {"edge B", "digit 3", "digit 9", "field inches", "inches 11"},
                {"leave", "edge A", "digit 7", "leave"}, {"edge B"});
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == feet(39) + inches(11));
    CHECK(here(crew) == nothing_here(crew));  // the second reading begins empty
    crew.tap_all({"leave", "edge A"});
    CHECK(shows(crew, "7"));
}

TEST_CASE("What Start again took off can be put back after the screen was left") {
    Journey crew;
    crew.tap_all({"demo", "edge B", "digit 3", "digit 9", "clear"});
    crew.kill();
    crew.tap_all({"clear", "keep"});
    CHECK(crew.last<ReadingTaken>().length == feet(39));
}

TEST_CASE("Crossing out a reading leaves the one that is being keyed in") {
    Journey crew;
    crew.tap_all({"demo", "edge B", "digit 3", "digit 9", "keep", "digit 4", "digit 1"});
    crew.tap_all({"strike one", "strike"});
    CHECK(crew.work("B").readings[0].struck);
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == feet(41));
}

TEST_CASE("A pitch, a lap and sticks on hand wait half keyed") {
    Journey crew;
    crew.tap("demo");
    crew.tap("edge C");
    for (int i = 0; i < 2; ++i) {
        crew.key_in(feet(15) + inches(8));
        crew.tap("keep");
    }
    check_waits(crew, {"digit 1", "digit 2"}, {"leave"}, {"edge C"});
    crew.tap_all({"back", "back", "digit 5", "keep", "leave"});
    check_waits(crew, {"edge C", "run", "lap", "inches 8"}, {"leave", "leave"},
                {"edge C", "run", "lap"});
    crew.tap_all({"keep", "leave"});
    CHECK(run_on(crew, "C").lap == inches(8));
    check_waits(crew, {"sticks", "on hand", "digit 7", "more"}, {"leave", "leave"},
                {"sticks", "on hand"});
    crew.tap_all({"supply", "keep"});  // which sticks are to be had is another question
    CHECK(crew.last<MetalCounted>().length == feet(7));
    CHECK(crew.last<MetalCounted>().count == 2);
}

TEST_CASE("A rule waits half keyed, and is no answer to another") {
    Journey crew;
    read_c(crew);
    check_waits(crew, {"rules", "rule lap", "inches 8"}, {"leave", "leave"}, {"rules", "rule lap"});
    crew.tap_all({"leave", "rule sliver"});
    CHECK_FALSE(crew.screen->has_target("keep"));  // it was no answer to this rule
}

TEST_CASE("The reason of a send-back waits half keyed") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_step("C", "tick");
    check_waits(crew, {"send back", "letter O"}, {"leave"}, {"send back"});
}

TEST_CASE("A bend, and how long a cut really is, wait half keyed") {
    Journey crew;
    reach_section(crew);
    check_waits(crew, {"bend 1", "digit 2"}, {}, {});
    crew.tap_all({"drop", "leave", "edge C"});
    check_waits(crew, {"differently", "digit 4"}, {"leave"}, {"differently"});
}

TEST_CASE("A step's value waits for its step, and is no answer to another") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.tap_all({"leave", "by", "way learn", "name Apprentice", "edge C"});
    for (int i = 0; i < 60 && crew.step("C").rule->asks != Asks::length; ++i) {
        crew.do_next();
    }
    REQUIRE(crew.step("C").rule->asks == Asks::length);
    const Taps half =
        crew.screen->has_target("key in") ? Taps{"key in", "inches 3"} : Taps{"inches 3"};
    check_waits(crew, half, {"leave"}, {"edge C"});
    const std::string keyed = here(crew);
    crew.tap_all({"leave", "history", "undo", "leave", "edge C"});  // the step before it is next
    CHECK(here(crew).find("inches 3") == std::string::npos);
}

TEST_CASE("An edge half described waits, and Back goes to the question before with every answer") {
    Journey crew;
    start_house(crew);
    check_waits(crew, {"kind gable", "left end eave"}, {"leave"}, {"add edge"});
    crew.tap_all({"right end wall", "ask Panels' seam", "seam mechanically seamed"});
    check_waits(crew, {}, {"leave"}, {"add edge"});
    crew.tap_all({"before", "before", "before"});
    CHECK(crew.screen->has_target("kind gable"));
    CHECK_FALSE(crew.screen->has_target("before"));
    const auto is_chosen = [&](const std::string& name) {
        const auto& all = crew.screen->ui().targets();
        return std::any_of(all.begin(), all.end(), [&](const Target& target) {
            return target.name == name && target.chosen;
        });
    };
    CHECK(is_chosen("kind gable"));
    crew.tap("kind gable");
    CHECK(is_chosen("left end eave"));
    crew.tap("left end eave");
    CHECK(is_chosen("right end wall"));
    crew.tap_all({"right end wall", "keep edge"});
    CHECK(crew.last<EdgeAdded>().edge.right == End::wall);
    CHECK(crew.last<EdgeAdded>().edge.seam == Seam::mechanical);
    crew.tap_all({"leave", "add edge"});
    CHECK(crew.screen->has_target("kind gable"));  // the next one begins with its kind
    CHECK_FALSE(crew.screen->has_target("before"));
}

TEST_CASE("No end of a new edge is said but by a touch on it, and none goes on beside Go on") {
    Journey crew;
    start_house(crew);
    crew.tap("kind eave");
    for (const char* side : {"left", "right"}) {
        CAPTURE(std::string(side));
        CHECK_FALSE(crew.screen->has_target("go on"));
        const auto& all = crew.screen->ui().targets();
        CHECK(std::none_of(all.begin(), all.end(), [](const Target& one) { return one.chosen; }));
        crew.tap(std::string(side) + " end gable");
    }
    crew.tap("keep edge");
    CHECK(crew.last<EdgeAdded>().edge.left == End::gable);
    CHECK(crew.last<EdgeAdded>().edge.right == End::gable);
}

TEST_CASE("A change of an edge waits, and one thing asked of it can be left as it is") {
    Journey crew;
    read_c(crew);
    crew.tap_all({"add edge", "change one", "before"});
    CHECK(crew.screen->has_target("change one"));
    check_waits(crew, {"change one", "change C", "ask Right end", "right end open end"}, {"leave"},
                {"add edge", "change one", "change C"});
    crew.tap_all({"ask Left end", "before", "keep edge"});
    CHECK(crew.work("C").edge.right == End::open);
}

TEST_CASE("A walk and a shape wait half keyed") {
    Journey crew;
    start_house(crew);
    check_waits(crew, {"walk", "digit 4", "digit 2", "kind gable"}, {"leave"},
                {"add edge", "walk"});
    Journey other;
    start_house(other);
    other.tap_all({"walk", "shape", "shape hip"});
    check_waits(other, {"digit 4", "digit 2"}, {}, {});
    other.kill();
    CHECK(shows(other, "42"));
}

TEST_CASE("The name of a new job and of a person wait, and are not taken for one another") {
    Journey crew;
    check_waits(crew, {"new job", "letter B", "letter A"}, {"leave"}, {"new job"});
    crew.tap_all({"leave", "by"});
    CHECK_FALSE(shows(crew, "Ba"));
    crew.tap_all({"leave", "new job", "letter R", "letter N", "keep name"});
    CHECK(crew.state().job.name == "Barn");
    crew.tap_all({"leave", "jobs", "new job"});
    CHECK_FALSE(shows(crew, "Barn"));
}

TEST_CASE("The day's answers wait for who gave them, on that day") {
    constexpr std::int64_t day_ms = 86'400'000;
    Journey crew;
    read_c(crew);
    crew.tap("edge C");
    while (crew.where().screen != Screen::gate) {
        crew.do_next();
    }
    check_waits(crew, {"yes anchors", "yes ladder"}, {"leave"}, {"edge C"});
    crew.tap_all({"watcher", "letter H", "leave", "watcher"});
    CHECK(shows(crew, "H"));
    crew.tap_all({"letter A", "send", "hospital"});
    CHECK_FALSE(crew.screen->has_target("send"));  // the watcher's letters are no street
    crew.tap("leave");
    CHECK(here(crew).find("gate.watcher Ha\n") != std::string::npos);
    SUBCASE("another day asks anew") {
        crew.wall_ms += day_ms;
        crew.kill();
    }
    SUBCASE("another person is asked anew") {
        crew.tap_all({"leave", "by", "letter H", "letter O", "keep name", "edge C"});
    }
    CHECK(crew.where().screen == Screen::gate);
    CHECK(here(crew).find("gate.found") == std::string::npos);
    CHECK(here(crew).find("gate.watcher") == std::string::npos);
}

TEST_CASE("Turned, the tablet shows what was half keyed in") {
    Journey crew;
    crew.tap_all({"demo", "edge B", "digit 3", "digit 9", "field inches", "inches 11"});
    const std::string keyed = here(crew);
    for (const auto& [w, h] : {std::pair(800.0F, 1280.0F), {1280.0F, 800.0F}, {600.0F, 1024.0F}}) {
        crew.screen->resize(w, h);
        crew.screen->frames(2);
        CHECK(here(crew) == keyed);
    }
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == feet(39) + inches(11));
}

TEST_CASE("Killed at a hundred random touches it opens as it was" * doctest::test_suite("large")) {
    Journey crew;
    crew.tap("demo");
    std::mt19937 chance(83);
    const auto below = [&](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(chance);
    };
    const auto is_key = [](const std::string& name) {
        for (const char* start : {"digit ", "inches ", "sixteenths ", "letter ", "kind ",
                                  "left end ", "right end ", "yes ", "edge ", "field "}) {
            if (name.rfind(start, 0) == 0) {
                return true;
            }
        }
        return false;
    };
    int half_keyed = 0;
    for (int kills = 0; kills < 100; ++kills) {
        for (std::size_t touches = 1 + below(6); touches > 0; --touches) {
            Taps names = crew.screen->names(), keys;
            std::copy_if(names.begin(), names.end(), std::back_inserter(keys), is_key);
            const Taps& from = keys.empty() || below(3) == 0 ? names : keys;
            REQUIRE_FALSE(from.empty());
            crew.screen->tap(from[below(from.size())]);
        }
        CAPTURE(kills);
        CAPTURE(crew.left_off);
        const std::string left = crew.left_off;
        const std::size_t events = crew.state().events.size();
        half_keyed += here(crew) == nothing_here(crew) ? 0 : 1;
        crew.kill();
        CHECK(crew.left_off == left);
        CHECK((left.find("job ") == std::string::npos || crew.state().events.size() == events));
    }
    CHECK(half_keyed >= 30);
}

namespace {

/// In the child: keys 39 ft 11 in in on edge B, says so, and waits to be killed.
[[noreturn]] void key_until_killed(const std::filesystem::path& jobs, int told) {
    Disk disk;
    LeftOffKeeper keeper([&](const std::string& text) { return write_left_off(disk, text); });
    AppOptions options;
    options.jobs_folder = jobs;
    options.device = 9;
    options.wall_ms = [] { return std::int64_t{1'760'000'000'000}; };
    options.screen.people = {{"Installer", Way::cut}};
    options.keep_left_off = [&](const std::string& text) { return keeper.keep(text); };
    App app(assets_read(), options);
    Harness screen([&](Ui& ui) { app.draw(ui); });
    screen.tap_all({"demo", "edge B", "digit 3", "digit 9", "field inches", "inches 11"});
    const bool said = ::write(told, "k", 1) == 1;
    for (int i = 0; said; ++i) {  // other drafts after it, until the end
        screen.tap_all({"leave", i % 2 == 0 ? "edge A" : "edge D", "digit 1"});
    }
    ::_exit(3);
}

/// Kills it so long after it was keyed in.
void key_and_kill(const std::filesystem::path& jobs, int after_us) {
    std::array<int, 2> ends{};
    REQUIRE(::pipe(ends.data()) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        key_until_killed(jobs, ends[1]);
    }
    ::close(ends[1]);
    char said = 0;
    CHECK(::read(ends[0], &said, 1) == 1);
    ::close(ends[0]);
    ::usleep(static_cast<useconds_t>(after_us));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
}

}  // namespace

TEST_CASE("Killed while its file is written, the program finds what was half keyed in before") {
    std::mt19937 chance(5);
    for (int round = 0; round < 5; ++round) {
        CAPTURE(round);
        const Home home;
        const TemporaryFolder jobs;
        // The last of the reading is on the disk after the rest between two writes, and one write.
        key_and_kill(jobs.path(), 500'000 + static_cast<int>(chance() % 300'000));
        const Result<std::string> text = read_left_off();
        REQUIRE(text.ok());
        CHECK(left_off_in(*text));
        AppOptions options;
        options.jobs_folder = jobs.path();
        options.device = 9;
        options.wall_ms = [] { return std::int64_t{1'760'000'100'000}; };
        options.screen.people = {{"Installer", Way::cut}};
        App app(assets_read(), options);
        Harness screen([&](Ui& ui) { app.draw(ui); });
        app.go_back_to(*text);
        screen.frames();
        while (app.state().where.screen != Screen::roof) {
            screen.tap("leave");
        }
        screen.tap_all({"edge B", "keep"});
        const Fact& kept = app.state().events.back().fact;
        REQUIRE(std::holds_alternative<ReadingTaken>(kept));
        CHECK(std::get<ReadingTaken>(kept).length == feet(39) + inches(11));
    }
}
