// Readings that cannot both be right: questioned, read again, struck, undone, and never lost.
#include <doctest/doctest.h>

#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

const Length true_length = feet(46) + sixteenths(4);

std::size_t events(const Journey& crew) { return crew.state().events.size(); }

/// Once more where it is questioned.
void keep_all_the_same(Journey& crew, Length reading) {
    const std::size_t before = events(crew);
    crew.key_in(reading);
    crew.tap("keep");
    if (events(crew) == before) {
        crew.tap("keep");
    }
}

bool is_chosen(const Journey& crew, const std::string& target) {
    const auto& targets = crew.screen->ui().targets();
    return std::any_of(targets.begin(), targets.end(),
                       [&](const Target& one) { return one.name == target && one.chosen; });
}

}  // namespace

// A burnt inch: the tape is held at its 1 in mark and the inch is not taken off. Common practice,
// no published source.
TEST_CASE("A reading an inch off its pair is questioned, and kept when it is kept again") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(true_length);
    crew.tap("keep");
    const std::size_t before = events(crew);
    crew.key_in(true_length + inches(1));
    crew.tap("keep");
    CHECK(events(crew) == before);
    CHECK(crew.where().screen == Screen::reading);
    crew.tap("keep");
    REQUIRE(events(crew) == before + 1);
    CHECK(crew.last<ReadingTaken>().length == true_length + inches(1));

    const Verdict verdict = crew.work("A").verdict(crew.state().job.practice);
    CHECK(verdict.agreement == Agreement::third);
    CHECK(verdict.cause == LikelyCause::burnt_inch);
    CHECK(explain(verdict).english().find("burnt inch") != std::string::npos);
    CHECK(crew.where().screen == Screen::reading);  // a third is asked for
    CHECK(crew.status("A") == EdgeStatus::readings_disagree);

    crew.key_in(true_length - sixteenths(1));
    crew.tap("keep");
    CHECK(crew.where().screen == Screen::pitch);
    CHECK(crew.work("A").readings.size() == 3);
    CHECK(crew.work("A").verdict(crew.state().job.practice).odd_one_out == std::size_t{1});
    CHECK(crew.work("A").length(crew.state().job.practice) == true_length);
}

TEST_CASE("A questioned reading that is keyed in anew is judged anew") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(true_length);
    crew.tap("keep");
    const std::size_t before = events(crew);
    crew.key_in(true_length + inches(1));
    crew.tap("keep");
    // Mended to a foot off: that is another doubt, and the first was not an answer to it.
    crew.tap_all({"field feet", "back", "digit 7", "field inches", "inches 0"});
    crew.tap("keep");
    CHECK(events(crew) == before);
    crew.tap("clear");
    crew.key_in(true_length);
    crew.tap("keep");
    CHECK(events(crew) == before + 1);
    CHECK(crew.where().screen == Screen::pitch);
}

TEST_CASE("Half and twice the length are questioned before they count") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(true_length);
    crew.tap("keep");
    const std::size_t before = events(crew);
    crew.key_in(feet(4) + inches(6));
    crew.tap("keep");
    CHECK(events(crew) == before);
    crew.tap("clear");
    crew.key_in(feet(460));
    crew.tap("keep");
    CHECK(events(crew) == before);
    CHECK(crew.where().screen == Screen::reading);
}

TEST_CASE("Of three readings the one in doubt is offered to be crossed out, and any can be") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    for (const Length reading : {true_length + feet(1), true_length, true_length}) {
        keep_all_the_same(crew, reading);
    }
    REQUIRE(crew.work("A").readings.size() == 3);
    crew.tap("digit 6");
    crew.tap("keep");
    crew.tap_all({"leave", "edge A", "run", "read", "strike one"});
    CHECK(is_chosen(crew, "reading 1"));
    crew.tap("reading 2");
    CHECK(is_chosen(crew, "reading 2"));
    CHECK_FALSE(is_chosen(crew, "reading 1"));
    crew.tap("strike");
    CHECK_FALSE(crew.work("A").readings[0].struck);
    CHECK(crew.work("A").readings[1].struck);
}

TEST_CASE("A struck reading no longer counts and stays in the record") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(true_length + inches(1));
    crew.tap("keep");
    crew.tap_all({"strike one", "stays"});
    CHECK(crew.status("A") == EdgeStatus::one_reading);
    crew.tap_all({"strike one", "strike"});
    CHECK(crew.where().screen == Screen::reading);
    CHECK(crew.status("A") == EdgeStatus::no_reading);
    CHECK_FALSE(crew.screen->has_target("strike one"));
    crew.key_in(true_length);
    crew.tap("keep");
    CHECK(crew.status("A") == EdgeStatus::one_reading);

    REQUIRE(crew.work("A").readings.size() == 2);
    CHECK(crew.work("A").readings[0].struck);
    CHECK(crew.work("A").readings[0].length == true_length + inches(1));
    CHECK_FALSE(crew.work("A").readings[1].struck);
    const auto record = read_job_folder(crew.job());
    REQUIRE(record.ok());
    CHECK(record->events.size() == events(crew));
}

TEST_CASE("Undo takes back one event at a time, and each stays in the record as struck") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("A", true_length, true_length, "5");
    crew.tap_all({"leave", "history"});
    const std::size_t before = events(crew);
    crew.tap("undo");
    CHECK_FALSE(crew.work("A").edge.pitch);
    CHECK(crew.where().screen == Screen::history);
    crew.tap("undo");
    CHECK(crew.status("A") == EdgeStatus::one_reading);
    crew.tap("undo");
    CHECK(crew.status("A") == EdgeStatus::no_reading);
    CHECK(events(crew) == before + 3);
    CHECK(crew.state().job.struck.size() == 3);
    REQUIRE(crew.work("A").readings.size() == 2);
    CHECK(crew.work("A").readings[0].struck);
    CHECK(crew.work("A").readings[1].struck);

    crew.start_again();
    CHECK(crew.state().job.struck.size() == 3);
    CHECK(crew.status("A") == EdgeStatus::no_reading);
}

TEST_CASE("Undo goes back to the very beginning of a job and then is not offered") {
    Journey crew;
    crew.tap_all({"demo", "history"});
    const std::size_t begun = crew.state().events.size();  // the job's start, edges, walks
    for (std::size_t i = 0; i < begun; ++i) {
        crew.tap("undo");
    }
    CHECK(crew.state().job.edges.empty());
    CHECK_FALSE(crew.screen->has_target("undo"));
    CHECK(events(crew) == 2 * begun);
    crew.tap("leave");
}

TEST_CASE("A length that a laser types is kept as if keyed in, and nonsense is refused") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.screen->type("46-0-1/4x\n");
    CHECK_FALSE(crew.screen->has_target("keep"));
    crew.screen->type("46-0-1/4\n");
    crew.tap("keep");
    CHECK(crew.last<ReadingTaken>().length == true_length);
}

TEST_CASE(
    "A reading shows where the tape is hooked and where it is read, by what stands at the ends") {
    const auto x_of = [](const Journey& crew, const char* said) {
        for (const Words& words : crew.screen->ui().words()) {
            if (words.words == said) {
                return words.box.x;
            }
        }
        FAIL(said << " is not there");
        return 0.0F;
    };
    Journey crew;
    crew.tap_all({"demo", "edge C"});  // from a gable to an inside corner
    CHECK(x_of(crew, "Hook the tape here") < x_of(crew, "Read here"));
    crew.tap_all({"leave", "edge Z"});  // a wall at its left: nothing to hook on
    CHECK(x_of(crew, "Hook the tape here") > x_of(crew, "Read here"));
    crew.tap_all({"leave", "edge R"});  // between hips
    CHECK(x_of(crew, "Hold the tape here") < x_of(crew, "Read here"));
    crew.tap("leave");
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    for (int i = 0; i < 90 && crew.where().screen != Screen::reading; ++i) {
        crew.do_next();
    }
    REQUIRE(crew.where().reading_of == ReadingOf::remainder);
    CHECK(shows(crew, "end of the fixed piece"));
    crew.screen->resize(885, 531);  // 7 in: the values, and no drawing
    crew.screen->frames(2);
    CHECK(crew.screen->has_target("field feet"));
    CHECK_FALSE(shows(crew, "Read here"));
}
